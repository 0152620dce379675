import { describe, expect, test } from 'vitest';
import { groundWaits } from '../../../src/actions/plan/ground-waits';
import { factsOf } from '../../../src/actions/verdicts/facts-of';
import type { EntryBody } from '../../../src/logbook/entry';
import type { Ground } from '../../../src/logbook/fold/piece/pieces';
import type { PlanStep } from '../../../src/logbook/kinds/shop/plan';
import { planSteps } from '../../../src/shop/plan/plan-steps';
import { groundsOn } from '../../../src/shop/stack/grounds';
import { standingOf } from '../../../src/verdicts/standing';
import { id, layCoat } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';

const HOUR_MS = 3_600_000;
const PIECE = (layCoat() as { piece: string }).piece;
const laid = (ground: Ground['ground'], more: object = {}): EntryBody =>
  ({ kind: 'ground-laid', piece: PIECE, ground, ...more }) as EntryBody;
const waitingHours = (...bodies: readonly EntryBody[]) => {
  const { shop, piece } = aShop(...bodies.map((body) => ({ hour: 1, body })));
  return groundsOn(piece, shop).map(({ atMs, until: { earliestMs, likelyMs, lateMs } }) =>
    [earliestMs, likelyMs, lateMs].map((ms) => (ms - atMs) / HOUR_MS),
  );
};

// Common practice, no source: filler 24 to 72 h by its sheet, paste an hour or so, glue overnight to a day in the clamps.
test.each([
  { ground: 'pore-filler', hours: [24, 48, 72] },
  { ground: 'filler-paste', hours: [0.75, 1, 1.5] },
  { ground: 'grain-sealer', hours: [1, 2, 4] },
  { ground: 'glue', hours: [12, 24, 24] },
] as const)('$ground waits $hours h', ({ ground, hours }) => {
  expect(waitingHours(laid(ground))).toEqual([hours]);
});

test('what its own sheet says outranks what is usual', () => {
  expect(waitingHours(laid('pore-filler', { waits: { text: '3', unit: 'd' } }))).toEqual([[72, 72, 72]]);
});

const WORK: PlanStep = { kind: 'work', id: id(0x71), task: 'pore-fill', place: 'bench', minutes: 30 };
const DRIES: PlanStep = {
  kind: 'wait',
  id: id(0x72),
  until: 'filler-dry',
  minutes: { earliest: 1440, likely: 2880, late: 4320 },
};
const COAT: PlanStep = {
  kind: 'work',
  id: id(0x73),
  task: 'coat',
  place: 'booth',
  minutes: 10,
  isCoat: true,
};
const planned = (...steps: readonly PlanStep[]): EntryBody => ({
  kind: 'piece-planned',
  piece: PIECE,
  coatsADay: 3,
  steps: [...steps],
});

describe('in the plan', () => {
  const endsOf = (steps: readonly PlanStep[], ...bodies: readonly EntryBody[]) => {
    const { shop, piece } = aShop(
      { hour: 0, body: planned(...steps) },
      ...bodies.map((body) => ({ hour: 1, body })),
    );
    const plan = shop.plans.get(PIECE);
    const grounds = groundsOn(piece, shop);
    const nowMs = (grounds[0]?.atMs ?? 0) + HOUR_MS;
    const all = plan ? groundWaits(planSteps(plan, piece, shop), grounds, nowMs) : [];
    return all.flatMap((step) =>
      step.kind === 'wait' && step.ends
        ? [[step.id, step.ends.likely * 60_000 - (grounds[0]?.atMs ?? 0)] as const]
        : [],
    );
  };

  test('the wait of the plan ends when the filler is dry, counted from when it went on', () => {
    const sheet = { waits: { text: '30', unit: 'h' } };
    expect(endsOf([WORK, DRIES, COAT], laid('pore-filler', sheet))).toEqual([[DRIES.id, 30 * HOUR_MS]]);
  });

  test('a wait that the plan lacks is put in before what comes next', () => {
    expect(endsOf([COAT], laid('glue')).map(([, ms]) => ms)).toEqual([24 * HOUR_MS]);
  });

  test('a step marked as done waits as one logged, and by the wait the person set there', () => {
    const own = { ...DRIES, isOwn: true, minutes: { earliest: 600, likely: 600, late: 600 } } as PlanStep;
    const mark: EntryBody = { kind: 'step-marked', piece: PIECE, step: WORK.id, as: 'done' };
    expect(endsOf([WORK, own, COAT], mark)).toEqual([[DRIES.id, 10 * HOUR_MS]]);
  });
});

test('only a step of filling, sealing or gluing that is marked as done is one', () => {
  const marked = (step: PlanStep, as: 'done' | 'not-passed', id = step.id) => {
    const mark: EntryBody = { kind: 'step-marked', piece: PIECE, step: id, as };
    const { shop, piece } = aShop({ hour: 0, body: planned(step) }, { hour: 1, body: mark });
    return groundsOn(piece, shop).map(({ ground, logged }) => [ground, logged]);
  };
  expect(marked(WORK, 'done')).toEqual([['pore-filler', undefined]]);
  expect(marked(WORK, 'not-passed')).toEqual([]);
  expect(marked(COAT, 'done')).toEqual([]);
  expect(marked(DRIES, 'done')).toEqual([]);
  expect(marked(WORK, 'done', id(0x79))).toEqual([]); // a step that the plan has no more
});

test('a piece with wet filler waits, and is ready for its first coat when the wait is over', () => {
  const { shop, piece } = aShop({ hour: 1, body: laid('pore-filler') });
  const atMs = piece.grounds[0]?.atMs ?? 0;
  const word = (hours: number) =>
    standingOf(factsOf({ shop, piece, outlook: undefined, nowMs: atMs + hours * HOUR_MS })).verdict?.word;
  expect([1, 23, 25, 47, 49].map(word)).toEqual(['wait', 'wait', 'perhaps', 'perhaps', 'ready']);
});
