import type { ReadonlySignal } from '@preact/signals';
import { BottomBar } from './parts/bottom-bar';
import { Lazy, type LoadScreen } from './parts/lazy';
import { type Place, route } from './parts/route';
import { ToastRegion } from './parts/toast';
import { UpdateBar } from './parts/update-bar';
import { SKIP } from './words/app';

/** Each place is fetched when it is first shown; the service worker has them all for later. */
const SCREENS: Record<Place, LoadScreen> = {
  bench: async () => (await import('./screens/bench')).Bench,
  piece: async () => (await import('./screens/piece')).Piece,
  lay: async () => (await import('./screens/lay')).Lay,
  mix: async () => (await import('./screens/mix')).Mix,
  match: async () => (await import('./screens/match')).Match,
  air: async () => (await import('./screens/air')).Air,
  more: async () => (await import('./screens/more')).More,
};

export interface AppProps {
  /** Brings in the new version; undefined while there is none. */
  readonly newVersion: ReadonlySignal<(() => void) | undefined>;
}

/** The frame: the place shown, the bar under the thumb, and the lines that speak up. */
export function App({ newVersion }: AppProps) {
  const { place, rest } = route.value;
  return (
    <>
      <button type="button" class="skip" onClick={() => document.getElementById('main')?.focus()}>
        {SKIP}
      </button>
      <UpdateBar onReload={newVersion.value} />
      <main id="main" tabIndex={-1}>
        <Lazy key={[place, ...rest].join('/')} load={SCREENS[place]} />
      </main>
      <ToastRegion />
      <BottomBar place={place} />
    </>
  );
}
