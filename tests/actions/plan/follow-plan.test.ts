import { signal } from '@preact/signals';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { followPlan } from '../../../src/actions/plan/follow-plan';
import type { OpenShop } from '../../../src/actions/shop';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import {
  correct,
  DAY_1_MS,
  entry,
  fillJar,
  id,
  layCoat,
  MINUTE_MS,
  PIECE,
  startPiece,
} from '../../logbook/entries';
import { anOutlook } from '../../parts/an-outlook';
import { clock } from '../../planner/a-bench';

beforeEach(() => void vi.stubGlobal('localStorage', undefined));

// The shop lives on UTC and is open from 07:00 to 20:00 on every day; it is 08:00.
const HOURS: EntryBody = {
  kind: 'hours-set',
  week: Array.from({ length: 7 }, () => ({ work: [{ open: '07:00', close: '20:00' }] })),
};
const [FIRST, WAIT, SECOND] = [id(0x21), id(0x22), id(0x23)];
const NAMES: Record<string, string> = { [FIRST]: 'first', [WAIT]: 'wait', [SECOND]: 'second' };
const sand = (stepId: string, minutes: number) =>
  ({ kind: 'work', id: stepId, task: 'other', place: 'bench', minutes }) as const;
const coat = (stepId: string) =>
  ({ kind: 'work', id: stepId, task: 'coat', place: 'booth', minutes: 10, isCoat: true }) as const;
const recoat = {
  kind: 'wait',
  id: WAIT,
  until: 'recoat',
  minutes: { earliest: 60, likely: 60, late: 60 },
} as const;
const plan = (...steps: readonly unknown[]): EntryBody =>
  ({ kind: 'piece-planned', piece: PIECE, coatsADay: 3, steps }) as unknown as EntryBody;
const nothing: EntryBody = { kind: 'settings-changed', patch: { units: 'us' } } as EntryBody;

/** A shop that is open, with what was logged before; gives what logs more, and the clock. */
function opened(...bodies: readonly EntryBody[]) {
  const entries: Entry[] = [HOURS, startPiece(), fillJar(), ...bodies].map((body, n) =>
    entry(n + 1, body, DAY_1_MS),
  );
  const shop = signal(fold(entries));
  const outlooks: ReadonlyMap<string, Outlook> = new Map();
  const settled = signal({ shop: shop.value, outlooks });
  const nowMs = signal(DAY_1_MS);
  const [needs, isWhole] = [{ zone: () => 'UTC' }, signal(true)];
  const open = { which: 'own', shop, settled, nowMs, needs, isWhole } as unknown as OpenShop;
  const followed = followPlan(open);
  const log = (body: EntryBody, atMs = DAY_1_MS): void => {
    entries.push(entry(entries.length + 1, body, atMs));
    shop.value = fold(entries);
    settled.value = { ...settled.value, shop: shop.value };
  };
  const estimated = (outlook: Outlook): void => {
    settled.value = { ...settled.value, outlooks: new Map([[PIECE, outlook]]) };
  };
  const said = (): string[] | undefined =>
    followed.moved.value?.moved.map(({ stepId, to }) => `${NAMES[stepId]} ${clock(to)}`);
  const pass = (minutes: number): void => {
    nowMs.value += minutes * MINUTE_MS;
  };
  return { open, followed, log, estimated, said, pass };
}

test('a shop that is open has one plan, made anew with the minute and not before', () => {
  const { open, followed, pass } = opened(plan(sand(FIRST, 60)));
  expect(followPlan(open)).toBe(followed);
  const before = followed.planned.value;
  pass(0.9);
  expect(followed.planned.value).toBe(before);
  pass(0.1);
  expect(followed.planned.value.bench.now).toBe(before.bench.now + 1);
});

describe('what the last entry moved', () => {
  test.each([
    { first: 64, said: undefined, by: undefined },
    { first: 65, said: ['second 09:05'], by: [5] },
    { first: 56, said: undefined, by: undefined },
    { first: 55, said: ['second 08:55'], by: [-5] },
  ])('is said from five minutes on: a first step of $first minutes in place of 60', (row) => {
    const { followed, log, said } = opened(plan(sand(FIRST, 60), sand(SECOND, 30)));
    log(plan(sand(FIRST, row.first), sand(SECOND, 30)));
    expect(said()).toEqual(row.said);
    expect(followed.moved.value?.pieces.map(({ minutes }) => minutes)).toEqual(row.by);
  });

  test('is said of the end of a piece, where none of its steps begins later', () => {
    const { followed, log, said } = opened(plan(sand(FIRST, 60)));
    log(plan(sand(FIRST, 90)));
    expect(said()).toEqual([]);
    expect(followed.moved.value?.pieces).toEqual([{ pieceId: PIECE, minutes: 30 }]);
  });

  test('is not what was done, but what follows from it', () => {
    const { log, said, pass } = opened(plan(coat(FIRST), recoat, coat(SECOND)), layCoat());
    pass(10);
    log(correct(id(5), { at: new Date(DAY_1_MS - 30 * MINUTE_MS).toISOString() }));
    expect(said()).toEqual(['wait 07:30', 'second 08:30']);
  });

  test('is not that a piece was planned that had nothing planned any more', () => {
    const done: EntryBody = { kind: 'step-marked', piece: PIECE, step: FIRST, as: 'done' };
    const { followed, log, pass } = opened(plan(sand(FIRST, 60)), done);
    pass(10);
    log(plan(sand(FIRST, 60), sand(SECOND, 60)));
    expect(followed.moved.value).toBeUndefined();
  });

  test('is not that time goes by', () => {
    const { followed, log, pass } = opened(plan(sand(FIRST, 60), sand(SECOND, 30)));
    log(nothing);
    pass(5);
    expect(followed.moved.value).toBeUndefined();
  });

  test.each([
    { after: 5, said: 'second 10:00' },
    { after: 5.1, said: 'second 09:00' },
  ])('is what its estimate moved too, when that comes in $after minutes', ({ after, said: is }) => {
    // Usual: an hour after the coat. Worked out: two.
    const { log, said, pass, estimated } = opened(plan(coat(FIRST), recoat, coat(SECOND)));
    log(layCoat());
    expect(said()).toContain('second 09:00');
    pass(after);
    estimated(anOutlook());
    expect(said()).toContain(is);
  });

  test('is gone once it was seen, and no later estimate brings it back', () => {
    const { followed, log, estimated } = opened(plan(coat(FIRST), recoat, coat(SECOND)));
    log(layCoat());
    followed.seen();
    expect(followed.moved.value).toBeUndefined();
    estimated(anOutlook());
    expect(followed.moved.value).toBeUndefined();
  });

  test('is held against the last plan that could be made', () => {
    const { followed, log, said } = opened(plan(sand(FIRST, 60), sand(SECOND, 30)));
    log(plan(sand(FIRST, 900), sand(SECOND, 30))); // longer than any day
    expect(followed.planned.value.plan.ok).toBe(false);
    expect(said()).toBeUndefined();
    log(plan(sand(FIRST, 90), sand(SECOND, 30)));
    expect(said()).toEqual(['second 09:30']);
  });
});
