import type { ReadonlySignal, Signal } from '@preact/signals';
import type { Estimator } from '../../estimator/run/client';
import type { Shop } from '../../logbook/fold/fold';
import { asPiece, cardsOf, type TestCard } from '../../shop/card/cards';
import { cardRequest } from '../../shop/card/request';
import { HOUR_MS } from '../../units';
import type { CardOutlook, CardOutlooks } from './card-outlook';
import { asItStands, inputsOf } from './inputs';

interface CardsNeeds {
  readonly shop: ReadonlySignal<Shop>;
  readonly nowMs: ReadonlySignal<number>;
  readonly cards: Signal<CardOutlooks>;
  readonly estimator: Estimator;
  /** Called when a card has said something new. */
  readonly onRead: () => void;
}

/** Works out what the test cards say whenever an entry changes one, and hourly while one is open. Gives what looks them through. */
export function followCards({ shop, nowMs, cards, estimator, onRead }: CardsNeeds): () => void {
  const asked = new Map<string, string>();

  const show = (id: string, outlook: CardOutlook): void => {
    cards.value = new Map(cards.value).set(id, outlook);
  };

  async function work(card: TestCard, inputs: string): Promise<void> {
    const request = cardRequest(card, shop.value, nowMs.value);
    if (!request.ok) {
      show(card.id, { state: 'failed', why: request.failure.kind });
      return;
    }
    const { startMs, card: plain } = request.value;
    const isGuessed = plain.weighings.some(({ humiditySpread }) => humiditySpread !== undefined);
    const outlook = await estimator.weigh({ card: plain }).result.then(
      (reading): CardOutlook => ({ state: 'ready', reading, startMs, isGuessed }),
      (): CardOutlook => ({ state: 'failed', why: 'unsolvable' }),
    );
    if (asked.get(card.id) !== inputs) return; // an entry has made it worthless meanwhile
    show(card.id, outlook);
    onRead();
  }

  return () => {
    const open = cardsOf(shop.value);
    const gone = [...cards.value.keys()].filter((id) => !open.has(id));
    if (gone.length > 0) cards.value = new Map([...cards.value].filter(([id]) => open.has(id)));
    for (const card of open.values()) {
      const inputs = inputsOfCard(card, shop.value, nowMs.value);
      if (asked.get(card.id) === inputs) continue;
      asked.set(card.id, inputs);
      if (!cards.value.has(card.id)) show(card.id, { state: 'computing' });
      void work(card, inputs);
    }
  };
}

/** A text that changes with everything that a card's reading is worked out from. */
function inputsOfCard(card: TestCard, shop: Shop, nowMs: number): string {
  const { entry, weighings, withCoats, endedMs } = card;
  const hour = endedMs === undefined ? Math.floor(nowMs / HOUR_MS) : 0;
  const film = inputsOf(asPiece(card), shop, { diffusivity: undefined, law: undefined });
  const lines = [entry, ...weighings.map(({ id }) => id)].map((id) => asItStands(id, shop));
  return JSON.stringify([lines, [...withCoats], hour, film]);
}
