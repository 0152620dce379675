import { describe, expect, test } from 'vitest';
import { planBench } from '../../src/planner/plan-bench';
import { checkPromise } from '../../src/planner/promise';
import { faultSentence } from '../../src/planner/say';
import type { Piece, Step } from '../../src/planner/step';
import { bench, coat, dateTime, piece, utc, wait, window, working } from './a-bench';

const DAY = 1440;
const NOW = utc('2026-03-02 09:00');
const OPEN = working(9, 17);

function summary(asked: Piece, now = NOW) {
  const plan = planBench({ now, working: OPEN, pieces: [asked] });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return plan.value.pieces[0] as NonNullable<(typeof plan.value.pieces)[0]>;
}

const check: Step = {
  id: 'g',
  kind: 'gate',
  check: 'powders',
  minutes: 2,
  againAfterMinutes: 12 * DAY,
  failedAt: [],
  mostFailures: 7,
};

// What each wait may run over, as the sides of right-angled triangles: 3, 4, 5 and 5, 12, 13.
describe('held back so that a promise is kept', () => {
  const waits = [wait('v', DAY, DAY, 4 * DAY), wait('w', DAY, DAY, 5 * DAY)];

  test('is the root of the sum of squares of what waits may run over, a check that fails among them', () => {
    expect(summary(piece('a', [coat('c'), ...waits])).reserveMinutes).toBe(5 * DAY);
    expect(summary(piece('a', [coat('c'), ...waits, check])).reserveMinutes).toBe(13 * DAY);
    expect(summary(piece('a', [coat('c'), bench('b', 30)])).reserveMinutes).toBe(0);
    expect(summary(piece('a', [coat('c'), wait('w', 60, 60, 61)])).reserveMinutes).toBe(1);
  });

  test('counts nothing of what is done', () => {
    const done = { from: NOW - 2 * DAY, to: NOW - DAY };
    const steps = [coat('c'), { ...wait('v', DAY, DAY, 4 * DAY), done }, wait('w', DAY, DAY, 5 * DAY)];
    expect(summary(piece('a', steps)).reserveMinutes).toBe(4 * DAY);
  });

  test('is added to the likely end; the soonest end has every wait as short as it may be', () => {
    const found = summary(piece('a', [coat('c'), wait('w', 2 * DAY, DAY, 4 * DAY), bench('b', 30)]));
    expect(dateTime(found.likely)).toBe('2026-03-04 09:40');
    expect(dateTime(found.earliest)).toBe('2026-03-03 09:40');
    expect(dateTime(found.promise)).toBe('2026-03-06 09:40');
  });
});

test('where the shortest wait would miss its window, the likely end is the soonest that is known', () => {
  // Likely the window is open from ten to half past ten; after the shortest wait it would be while the booth is shut.
  const steps = [
    coat('1', { done: { from: NOW - 10, to: NOW } }),
    wait('w', 60, 10, 60),
    window('v', 0, 30),
    coat('2'),
  ];
  const closures = [{ from: NOW + 5, to: NOW + 50, closes: 'spraying' } as const];
  const plan = planBench({ now: NOW, working: { ...OPEN, closures }, pieces: [piece('a', steps)] });
  expect(plan.ok && plan.value.pieces[0]).toMatchObject({ earliest: NOW + 70, likely: NOW + 70 });
});

// Likely on the 4th, 09:40, and two days held back.
test.each([
  { promised: undefined, is: 'none' },
  { promised: '2026-03-02 08:59', is: 'past' },
  { promised: '2026-03-02 09:00', is: 'missed' },
  { promised: '2026-03-04 09:39', is: 'missed' },
  { promised: '2026-03-04 09:40', is: 'tight' },
  { promised: '2026-03-06 09:39', is: 'tight' },
  { promised: '2026-03-06 09:40', is: 'kept' },
])('promised for $promised is $is', ({ promised, is }) => {
  const steps = (task: 'pad' | 'other') => [
    bench('c', 10, { task }),
    wait('w', 2 * DAY, DAY, 4 * DAY),
    bench('b', 30),
  ];
  const more = promised ? { promised: utc(promised) } : {};
  expect(summary(piece('a', steps('other'), more)).promiseState).toBe(is);
  // A padded film is soft until its rest is over at the latest.
  expect(summary(piece('a', steps('pad'), more)).promiseState).toBe(is === 'tight' ? 'soft' : is);
  expect(summary(piece('a', steps('pad'), { ...more, isHeld: true }))).toMatchObject({
    promiseState: promised ? 'held' : 'none',
    isHeld: true,
  });
});

test('nothing stands open of a piece that is finished', () => {
  const done = { from: NOW - 60, to: NOW - 50 };
  const found = summary(piece('a', [coat('c', { done })], { promised: NOW - 55, isHeld: true }));
  expect(found).toMatchObject({
    promiseState: 'none',
    isHeld: false,
    dominant: undefined,
    promise: NOW - 50,
  });
});

test('a piece that is over but not finished is promised for now at the soonest', () => {
  const done = { from: NOW - 3 * DAY, to: NOW - 3 * DAY + 10 };
  const found = summary(piece('a', [coat('c', { done }), wait('w', DAY)]));
  expect(dateTime(found.likely)).toBe('2026-02-28 09:10');
  expect(found.promise).toBe(NOW);
});

describe('what most of the time goes on', () => {
  const done = { from: NOW - 2 * DAY - 10, to: NOW - 2 * DAY };
  const laid = coat('0', { done });

  test('is the longest of what is left: of a wait that has begun what is still to come, and the first of two alike', () => {
    const steps = (second: number) => [
      laid,
      wait('v', 3 * DAY),
      bench('1', 30),
      wait('w', second),
      bench('2', 30),
    ];
    expect(summary(piece('a', steps(2 * DAY))).dominant).toMatchObject({ stepId: 'w', minutes: 2 * DAY });
    expect(summary(piece('a', steps(DAY))).dominant).toMatchObject({ stepId: 'v', minutes: DAY });
  });

  test('costs nothing that can be told where a window would be missed', () => {
    const found = summary(piece('a', [coat('1'), window('w', 240, 300), coat('2')])).dominant;
    expect(found).toEqual({ stepId: 'w', minutes: 240, costOfADay: undefined, absorbedBy: undefined });
  });

  test('a day more of it is taken up by the first thing after it that waits for the shop, a check among them', () => {
    const steps = [coat('1'), wait('w', DAY + 480), check, bench('2', 30)];
    // Ends at 17:10 on the next day: the check waits for the morning.
    expect(summary(piece('a', steps)).dominant).toMatchObject({ stepId: 'w', absorbedBy: { by: 'closed' } });
    const other = piece('b', [bench('z', 30, { notBefore: NOW + DAY })]);
    const plan = planBench({
      now: NOW,
      working: OPEN,
      pieces: [piece('a', [coat('1'), wait('w', DAY)]), other],
    });
    expect(plan.ok && plan.value.pieces[0]?.dominant?.absorbedBy).toBeUndefined();
  });
});

test.each([
  { what: 'a date already past', promised: NOW - 1, failure: 'promise-past', says: /already past/ },
  {
    what: 'a date sooner than possible',
    promised: NOW + 50,
    failure: 'sooner-than-possible',
    says: /not ready/,
  },
])('does not take $what as a promise', ({ promised, failure, says }) => {
  const checked = checkPromise(promised, NOW, NOW + 100);
  expect(checked).toMatchObject({ ok: false, failure: { kind: failure } });
  if (!checked.ok) expect(faultSentence(checked.failure)).toMatch(says);
});

test('takes a date that can be kept', () => {
  expect(checkPromise(NOW + 100, NOW, NOW + 100)).toEqual({ ok: true, value: NOW + 100 });
});
