import { expect, test } from 'vitest';
import { difference } from '../../src/planner/difference';
import type { Bound, Plan } from '../../src/planner/plan';
import { planBench } from '../../src/planner/plan-bench';
import { absorbedWords, boundWords, whyWords } from '../../src/planner/say';
import type { Piece, WorkStep } from '../../src/planner/step';
import { bench, coat, piece, utc, wait, working } from './a-bench';

const NOW = utc('2026-03-02 09:00');
const names = { step: (id: string) => `step ${id}`, piece: (id: string) => `piece ${id}` };

function planned(pieces: readonly Piece[], now = NOW, closed = 0): Plan {
  const closures = [{ from: NOW + 60, to: NOW + 60 + closed, closes: 'spraying' } as const];
  const plan = planBench({ now, working: working(9, 17, { closures }), pieces });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return plan.value;
}
const two = (recoat: number, done?: { from: number; to: number }): Piece =>
  piece('a', [coat('1', done ? { done } : {}), wait('w', recoat), coat('2')]);

const ROWS = [
  {
    what: 'a wait that got longer',
    after: planned([two(90)]),
    moved: [['2', 30, 'step w takes 30 min longer']],
    pieces: 30,
  },
  {
    what: 'a wait that got shorter',
    after: planned([two(45)]),
    moved: [['2', -15, 'step w takes 15 min less']],
    pieces: -15,
  },
  {
    what: 'a coat that ended late',
    after: planned([two(60, { from: NOW, to: NOW + 25 })], NOW + 30),
    moved: [
      ['w', 15, 'step 1 ended 15 min later'],
      ['2', 15, 'step 1 ended 15 min later'],
    ],
    pieces: 15,
  },
  {
    what: 'a coat that was not begun',
    after: planned([two(60)], NOW + 20),
    moved: [
      ['1', 20, 'as soon as you like'],
      ['w', 20, 'as soon as you like'],
      ['2', 20, 'as soon as you like'],
    ],
    pieces: 20,
  },
  {
    what: 'a closure',
    after: planned([two(60)], NOW, 60),
    moved: [['2', 50, 'when the shop is open again']],
    pieces: 50,
  },
] as const;

test.each(ROWS)('says what moved and why after $what', ({ after, moved, pieces }) => {
  const found = difference(planned([two(60)]), after);
  expect(found.moved.map(({ stepId, from, to, why }) => [stepId, to - from, whyWords(why, names)])).toEqual(
    moved,
  );
  expect(found.pieces).toEqual([{ pieceId: 'a', minutes: pieces }]);
});

const work = (id: string, minutes: number, more: Partial<WorkStep> = {}) =>
  piece(`p${id}`, [bench(id, minutes, more)]);
const WAS = [work('1', 30), work('2', 40), work('3', 60)];
test.each<{ what: string; after: readonly Piece[]; moved: readonly unknown[] }>([
  {
    what: 'another piece that takes longer',
    after: [work('1', 35), ...WAS.slice(1)],
    moved: [
      ['2', 5, 'step 1 takes 5 min longer'],
      ['3', 5, 'step 1 takes 5 min longer'],
    ],
  },
  {
    what: 'two that take longer: of the nearer one',
    after: [work('1', 35), work('2', 45), ...WAS.slice(2)],
    moved: [
      ['2', 5, 'step 1 takes 5 min longer'],
      ['3', 10, 'step 2 takes 5 min longer'],
    ],
  },
  {
    what: 'another piece that is gone',
    after: WAS.slice(1),
    moved: [
      ['2', -30, 'the order of the work changed'],
      ['3', -30, 'the order of the work changed'],
    ],
  },
  {
    what: 'a promise that puts another first',
    after: [...WAS.slice(0, 2), piece('p3', [bench('3', 60)], { promised: NOW + 60 })],
    moved: [
      ['3', -70, 'the order of the work changed'],
      ['1', 60, 'the order of the work changed'],
      ['2', 60, 'the order of the work changed'],
    ],
  },
  {
    what: 'a date that was set',
    after: [...WAS.slice(0, 2), work('3', 60, { notBefore: NOW + 100 })],
    moved: [['3', 30, 'not before the day set']],
  },
])('says what moved and why after $what', ({ after, moved }) => {
  const found = difference(planned(WAS), planned(after));
  expect(found.moved.map(({ stepId, from, to, why }) => [stepId, to - from, whyWords(why, names)])).toEqual(
    moved,
  );
});

test('behind a work that has not moved itself it is the order that changed', () => {
  const dated = piece('p2', [bench('2', 20, { notBefore: NOW + 10 })], { promised: NOW + 30 });
  const found = difference(
    planned([work('1', 10), dated]),
    planned([work('1', 10, { notBefore: NOW + 5 }), dated]),
  );
  expect(found.moved.map(({ stepId, to, why }) => [stepId, to - NOW, whyWords(why, names)])).toEqual([
    ['1', 30, 'the order of the work changed'],
  ]);
});

test('a piece that came in has not moved', () => {
  const found = difference(planned(WAS.slice(0, 2)), planned(WAS));
  expect(found).toMatchObject({ added: ['3'], removed: [], moved: [], pieces: [] });
});

test('names steps that came in and fell away', () => {
  const other = piece('a', [coat('1'), wait('w', 60), coat('3')]);
  const found = difference(planned([two(60)]), planned([other]));
  expect(found).toMatchObject({ moved: [], added: ['3'], removed: ['2'], pieces: [] });
});

test('says that a step came in when it holds up the others', () => {
  const longer = piece('a', [coat('1'), wait('w', 60), coat('new'), wait('w2', 60), coat('2')]);
  const found = difference(planned([two(60)]), planned([longer]));
  expect(found.moved.map(({ stepId, why }) => [stepId, whyWords(why, names)])).toEqual([
    ['2', 'step w2 was added'],
  ]);
});

test('finds nothing between a plan and itself', () => {
  const plan = planned([two(60)]);
  expect(difference(plan, plan)).toEqual({ moved: [], added: [], removed: [], pieces: [] });
});

test('says why a step begins when it does', () => {
  const { steps } = planned([two(60), piece('b', [coat('3')])]);
  const words = Object.fromEntries(steps.map(({ stepId, bound }) => [stepId, boundWords(bound, names)]));
  expect(words).toMatchObject({
    '1': 'as soon as you like',
    '2': 'after step w',
    '3': 'after step 1 of piece a: one pair of hands, one gun',
  });
});

const BOUNDS: { bound: Bound; begins: RegExp; absorbs: RegExp }[] = [
  { bound: { by: 'now' }, begins: /soon as you like/, absorbs: /something else/ },
  { bound: { by: 'hold', against: 'damp' }, begins: /air is drier/, absorbs: /air is not right/ },
  { bound: { by: 'hold', against: 'cold' }, begins: /warmer/, absorbs: /air is not right/ },
  { bound: { by: 'coats-a-day', coatsADay: 1 }, begins: /next day: 1 coat a day/, absorbs: /next day/ },
  { bound: { by: 'coats-a-day', coatsADay: 3 }, begins: /next day: 3 coats a day/, absorbs: /next day/ },
  { bound: { by: 'window' }, begins: /falls into its window/, absorbs: /waits for its window/ },
];

test.each(BOUNDS)(
  'says of $bound when a step begins, and what takes up a day more',
  ({ bound, begins, absorbs }) => {
    expect(boundWords(bound, names)).toMatch(begins);
    expect(absorbedWords(bound)).toMatch(absorbs);
  },
);

test('what takes up a day more has a name where nothing is known of it', () => {
  expect(absorbedWords(undefined)).toMatch(/something else/);
});
