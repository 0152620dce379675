import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import type { CardOutlooks } from '../../../src/actions/outlook/card-outlook';
import { followCards } from '../../../src/actions/outlook/follow-cards';
import type { CardReading, CardRequest } from '../../../src/estimator/card/card';
import type { Estimator } from '../../../src/estimator/run/client';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { correct, DAY_1_MS, entry, fillJar, id, JAR, MINUTE_MS, strike } from '../../logbook/entries';

const HOUR_MS = 60 * MINUTE_MS;
const [CARD, OTHER] = [id(0xc1), id(0xc2)];
const g = (text: string) => ({ text, unit: 'g' }) as const;
const made = (card = CARD): EntryBody => ({
  kind: 'card-made',
  card,
  area: { text: '200', unit: 'cm2' },
  faces: 1,
  bare: g('1'),
  division: g('0.001'),
});
const coated = (card = CARD, jar = JAR): EntryBody => ({
  kind: 'card-coated',
  card,
  jar,
  how: 'spray',
  film: { by: 'wet', wetFilm: { text: '85', unit: 'um' } },
});
const weighed: EntryBody = { kind: 'card-weighed', card: CARD, mass: g('1.3') };
const AIR: EntryBody = {
  kind: 'air-read',
  temperature: { text: '20', unit: 'C' },
  humidity: { text: '50', unit: '%' },
  movement: 'still',
};

/** A shop with cards, and a worker that answers when it is told. */
function following(...bodies: readonly EntryBody[]) {
  const entries: Entry[] = [fillJar(), ...bodies].map((body, n) =>
    entry(n + 1, body, DAY_1_MS + n * MINUTE_MS),
  );
  const shop = signal(fold(entries));
  const nowMs = signal(DAY_1_MS + HOUR_MS);
  const cards = signal<CardOutlooks>(new Map());
  const asked: {
    readonly request: CardRequest;
    answer(gain?: number): Promise<void>;
    fail(): Promise<void>;
  }[] = [];
  let reads = 0;
  const weigh: Estimator['weigh'] = (request) => {
    let settle: { resolve(reading: CardReading): void; reject(why: Error): void } | undefined;
    const result = new Promise<CardReading>((resolve, reject) => {
      settle = { resolve, reject };
    });
    const soon = () => new Promise<void>((resolve) => setTimeout(resolve));
    asked.push({
      request,
      answer(gain = 1) {
        settle?.resolve({ warmGain: gain } as CardReading);
        return soon();
      },
      fail() {
        settle?.reject(new Error('lost'));
        return soon();
      },
    });
    return { result, cancel: () => undefined };
  };
  const look = followCards({
    shop,
    nowMs,
    cards,
    estimator: { weigh } as unknown as Estimator,
    onRead: () => void reads++,
  });
  const log = (body: EntryBody): void => {
    entries.push(entry(entries.length + 1, body, DAY_1_MS + entries.length * MINUTE_MS));
    shop.value = fold(entries);
    look();
  };
  const gainOf = (card = CARD) => {
    const outlook = cards.value.get(card);
    return outlook?.state === 'ready' ? outlook.reading.warmGain : outlook?.state;
  };
  look();
  return { asked, cards, gainOf, log, look, nowMs, reads: () => reads };
}

describe('what a test card says', () => {
  test('is read anew when a line of it is corrected', () => {
    const { asked, log } = following(AIR, made(), coated(), weighed);
    const before = asked.length;
    log(correct(id(5), { mass: g('1.03') }));
    expect(asked).toHaveLength(before + 1);
    log(correct(id(4), { film: { by: 'wet', wetFilm: { text: '40', unit: 'um' } } }));
    expect(asked).toHaveLength(before + 2);
  });

  test('is worked out once, and told from the time of its first coat', async () => {
    const { asked, cards, look, reads } = following(made(), coated(), weighed);
    expect(cards.value.get(CARD)).toEqual({ state: 'computing' });
    look();
    expect(asked).toHaveLength(1);
    await asked[0]?.answer();
    expect(cards.value.get(CARD)).toMatchObject({ state: 'ready', startMs: DAY_1_MS + 2 * MINUTE_MS });
    expect(reads()).toBe(1);
  });

  test('is worked out again by the hour while the card is open, and not once it is ended', async () => {
    const { asked, look, nowMs, log, gainOf } = following(made(), coated(), weighed);
    await asked[0]?.answer();
    nowMs.value += HOUR_MS - MINUTE_MS;
    look();
    expect(asked).toHaveLength(1);
    nowMs.value += MINUTE_MS;
    look();
    expect(gainOf()).toBe(1); // what was known stands meanwhile
    expect(asked).toHaveLength(2);
    log({ kind: 'card-ended', card: CARD });
    expect(asked).toHaveLength(3);
    nowMs.value += 5 * HOUR_MS;
    look();
    expect(asked).toHaveLength(3);
  });

  test('is worked out again after a weighing, and an answer from before it is worth nothing', async () => {
    const { asked, log, gainOf, reads } = following(made(), coated());
    log(weighed);
    expect(asked.map(({ request }) => request.card.weighings.length)).toEqual([0, 1]);
    await asked[0]?.answer(7);
    expect([gainOf(), reads()]).toEqual(['computing', 0]);
    await asked[1]?.answer(8);
    expect([gainOf(), reads()]).toEqual([8, 1]);
  });

  test('is a guess of the air where nobody read it at a weighing', async () => {
    const isGuessed = async (...bodies: readonly EntryBody[]) => {
      const { asked, cards } = following(...bodies);
      await asked[0]?.answer();
      const outlook = cards.value.get(CARD);
      return outlook?.state === 'ready' && outlook.isGuessed;
    };
    expect(await isGuessed(made(), coated(), weighed)).toBe(true);
    expect(await isGuessed(AIR, made(), coated(), weighed)).toBe(false);
    expect(await isGuessed(made(), coated(), weighed, AIR, weighed)).toBe(true); // one of two
  });

  test('fails with its reason, each card for itself', async () => {
    const { asked, cards } = following(made(), coated(), made(OTHER), coated(OTHER, id(0xb9)));
    await asked[0]?.fail();
    expect(cards.value.get(CARD)).toEqual({ state: 'failed', why: 'unsolvable' });
    expect(cards.value.get(OTHER)).toMatchObject({ state: 'failed', why: expect.stringContaining('jar') });
    expect(asked).toHaveLength(1);
  });

  test('is gone with a card that was undone, and no other', async () => {
    const { asked, cards, log } = following(made(), coated(), made(OTHER), coated(OTHER));
    for (const { answer } of asked) await answer();
    log(strike(id(4)));
    expect([...cards.value.keys()]).toEqual([CARD]);
  });
});
