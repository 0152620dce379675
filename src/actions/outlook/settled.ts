import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Shop } from '../../logbook/fold/fold';
import type { Outlook, PieceId } from './outlook';

/** What the plan and the reminders are made from. */
export interface Settled {
  readonly shop: Shop;
  readonly outlooks: ReadonlyMap<PieceId, Outlook>;
}

export interface SettledNeeds {
  readonly shop: ReadonlySignal<Shop>;
  readonly outlooks: ReadonlySignal<ReadonlyMap<PieceId, Outlook>>;
  /** Calls back once the screen has been drawn. */
  readonly afterPaint: (job: () => void) => void;
}

/**
 * The shop and its outlooks, a moment behind: a plan is made anew with every entry, and nobody waits for that to see that a coat is logged.
 * Gives with it the function that ends the following.
 */
export function settle({ shop, outlooks, afterPaint }: SettledNeeds) {
  const now = (): Settled => ({ shop: shop.value, outlooks: outlooks.value });
  const settled = signal(now());
  let isWaiting = false;
  const follow = (): void => {
    isWaiting = false;
    settled.value = now();
  };
  const stopSettling = effect(() => {
    const { shop, outlooks } = now();
    const isSame = settled.peek().shop === shop && settled.peek().outlooks === outlooks;
    if (isWaiting || isSame) return;
    isWaiting = true;
    afterPaint(follow);
  });
  return { settled: settled as ReadonlySignal<Settled>, stopSettling };
}
