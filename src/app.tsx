import type { ReadonlySignal } from '@preact/signals';
import { Button } from './parts/blocks/button';
import { ReminderRegion } from './parts/due/reminder-region';
import { BesideContext, isWide } from './parts/frame/beside';
import { BottomBar } from './parts/frame/bottom-bar';
import { Lazy, type LoadScreen } from './parts/frame/lazy';
import { type Place, type Route, route } from './parts/frame/route';
import { ShopContext, type ShopDoor } from './parts/frame/shop-context';
import { ToastRegion } from './parts/frame/toast';
import { UpdateBar } from './parts/frame/update-bar';
import { StorageNotice } from './parts/kept/storage-notice';
import { Bench } from './screens/bench';
import { useFirstOfBench } from './screens/bench/held-order';
import { DEMO_BAR } from './words/bench';
import { LAZY } from './words/common';
import { HELD_MARK, SKIP } from './words/frame/app';

/** Each place is fetched when it is first shown; the service worker has them all for later. */
const SCREENS: Record<Place, LoadScreen> = {
  bench: async () => () => <Bench />,
  piece: async () => (await import('./screens/piece')).Piece,
  lay: async () => (await import('./screens/lay')).Lay,
  mix: async () => (await import('./screens/mix')).Mix,
  match: async () => (await import('./screens/match')).Match,
  air: async () => (await import('./screens/air')).Air,
  more: async () => (await import('./screens/more')).More,
  plan: async () => (await import('./screens/plan')).Plan,
  board: async () => (await import('./screens/board')).Board,
};

const loadNotSecure: LoadScreen = async () => (await import('./parts/kept/not-secure')).NotSecure;

/** Whether a place can be shown: some need no more than the first page of a long logbook, the others wait for the rest of it. */
function isReady({ isWhole, shop }: ShopDoor['open'], { place, rest: [id = ''] }: Route): boolean {
  if (isWhole.value || ['bench', 'lay', 'board'].includes(place)) return true;
  return place === 'piece' && (id === 'new' || shop.value.pieces.has(id));
}

const hasPieces = (shop: ShopDoor | undefined): boolean => (shop?.open.shop.value.pieces.size ?? 0) > 0;

/** The bench at the left, and at its right a piece: the one of the address, or the first of the list. */
function Panes() {
  const { place, rest } = route.value;
  const isBench = place === 'bench';
  const first = useFirstOfBench();
  const here = isBench ? first : rest[0];
  return (
    <>
      <div class="pane-list">
        <BesideContext.Provider value={isBench ? undefined : {}}>
          <Bench here={here} />
        </BesideContext.Provider>
      </div>
      <div class="pane">
        <BesideContext.Provider value={isBench ? { piece: here } : undefined}>
          {here && <Lazy key={[here, ...rest].join('/')} load={SCREENS.piece} />}
        </BesideContext.Provider>
      </div>
    </>
  );
}

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
  const isHeld = shop?.open.held.value !== undefined; // a reload would lose what is in memory only
  const isWhole = shop?.open.isWhole.value === true;
  const isPair =
    isWide.value && (place === 'bench' ? hasPieces(shop) : place === 'piece' && rest[0] !== 'new');
  return (
    <ShopContext.Provider value={shop}>
      <button type="button" class="skip" onClick={() => document.getElementById('main')?.focus()}>
        {SKIP}
      </button>
      <UpdateBar onReload={isHeld ? undefined : newVersion.value} />
      {shop?.name === 'demo' && <DemoBar onLeave={() => shop.enter('own')} />}
      {isWhole && place !== 'board' && <ReminderRegion key={shop?.name} />}
      <main id="main" tabIndex={-1} class={isPair ? 'panes' : undefined}>
        {shop && isReady(shop.open, route.value) ? (
          <>
            {!isSecureContext && <Lazy load={loadNotSecure} />}
            <StorageNotice />
            {isPair ? (
              <Panes key={shop.name} />
            ) : (
              <Lazy key={[shop.name, place, ...rest].join('/')} load={SCREENS[place]} />
            )}
          </>
        ) : (
          <p class={shop ? 'quiet' : 'heard'}>{LAZY.loading}</p>
        )}
      </main>
      <ToastRegion caveat={isHeld ? HELD_MARK : undefined} />
      {place !== 'board' && <BottomBar place={place} />}
    </ShopContext.Provider>
  );
}

/** Says on every screen that this shop is invented, and leads out of it with one tap. */
function DemoBar({ onLeave }: { readonly onLeave: () => void }) {
  return (
    <aside class="demo-line" aria-label={DEMO_BAR.label}>
      <p>
        <strong>{DEMO_BAR.label}.</strong> {DEMO_BAR.text}
      </p>
      <Button onClick={onLeave}>{DEMO_BAR.leave}</Button>
    </aside>
  );
}
