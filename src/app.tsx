import type { ReadonlySignal } from '@preact/signals';
import { BottomBar } from './parts/bottom-bar';
import { DemoBar } from './parts/demo-bar';
import { Lazy, type LoadScreen } from './parts/lazy';
import { type Place, route } from './parts/route';
import { ShopContext, type ShopDoor } from './parts/shop-context';
import { StorageNotice } from './parts/storage-notice';
import { ToastRegion } from './parts/toast';
import { UpdateBar } from './parts/update-bar';
import { SKIP } from './words/app';
import { LAZY } from './words/common';

/** Each place is fetched when it is first shown; the service worker has them all for later. */
const SCREENS: Record<Place, LoadScreen> = {
  bench: async () => (await import('./screens/bench')).Bench,
  piece: async () => (await import('./screens/piece')).Piece,
  lay: async () => (await import('./screens/lay')).Lay,
  mix: async () => (await import('./screens/mix')).Mix,
  match: async () => (await import('./screens/match')).Match,
  air: async () => (await import('./screens/air')).Air,
  more: async () => (await import('./screens/more')).More,
  board: async () => (await import('./screens/board')).Board,
};

export interface AppProps {
  /** Brings in the new version; undefined while there is none. */
  readonly newVersion: ReadonlySignal<(() => void) | undefined>;
  /** The shop on screen; undefined while it is opened. */
  readonly door: ReadonlySignal<ShopDoor | undefined>;
}

/** The frame: the place shown, the bar under the thumb, and the lines that speak up. */
export function App({ newVersion, door }: AppProps) {
  const { place, rest } = route.value;
  const shop = door.value;
  return (
    <ShopContext.Provider value={shop}>
      <button type="button" class="skip" onClick={() => document.getElementById('main')?.focus()}>
        {SKIP}
      </button>
      <UpdateBar onReload={newVersion.value} />
      {shop?.name === 'demo' && <DemoBar onLeave={() => shop.enter('own')} />}
      <main id="main" tabIndex={-1}>
        {shop ? (
          <>
            <StorageNotice open={shop.open} />
            <Lazy key={[shop.name, place, ...rest].join('/')} load={SCREENS[place]} />
          </>
        ) : (
          <p class="heard">{LAZY.loading}</p>
        )}
      </main>
      <ToastRegion />
      {place !== 'board' && <BottomBar place={place} />}
    </ShopContext.Provider>
  );
}
