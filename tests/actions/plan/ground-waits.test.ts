import { expect, test } from 'vitest';
import { groundWaits } from '../../../src/actions/plan/ground-waits';
import type { Step } from '../../../src/planner/step';
import type { GroundOn } from '../../../src/shop/stack/grounds';
import { DAY_1_MS, MINUTE_MS } from '../../logbook/entries';
import { bench, coat, wait } from '../../planner/a-bench';

const HOUR_MS = 60 * MINUTE_MS;
const start = DAY_1_MS / MINUTE_MS;
const hour = (n: number): number => start + n * 60;
/** Filler an hour into the day that waits so many hours, and half a minute more: a wait ends on a whole minute after it. */
const filler = (earliest: number, likely: number, late: number): GroundOn => {
  const atMs = DAY_1_MS + HOUR_MS;
  const end = (hours: number): number => atMs + hours * HOUR_MS + MINUTE_MS / 2;
  const until = { earliestMs: end(earliest), likelyMs: end(likely), lateMs: end(late) };
  return { id: 'f', atMs, ground: 'pore-filler', logged: undefined, until, isSaid: false };
};
const dries = (id: string): Step => ({ ...wait(id, 1), until: 'filler-dry' });
const filled = bench('fill', 30, { task: 'pore-fill', done: { from: hour(1) - 30, to: hour(1) } });
const GATE: Step = {
  kind: 'gate',
  id: 'look',
  check: 'look-over',
  minutes: 2,
  againAfterMinutes: 60,
  failedAt: [],
  mostFailures: 3,
};

/** The steps by name, each wait that the filler decided with the hours it takes and the hour at which it ends. */
const told = (steps: readonly Step[], ground = filler(24, 48, 72), nowHour = 2) =>
  groundWaits(steps, [ground], DAY_1_MS + nowHour * HOUR_MS).map((step) =>
    step.kind === 'wait' && step.ends
      ? `${step.id} ${Math.floor(step.minutes.likely / 60)} h, ends at ${Math.floor((step.ends.likely - start) / 60)}`
      : step.id,
  );

test.each<{ what: string; steps: readonly Step[]; is: string[] }>([
  {
    what: 'stands in the wait that the plan has before the next work',
    steps: [filled, dries('w'), coat('c')],
    is: ['fill', 'w 48 h, ends at 49', 'c'],
  },
  {
    what: 'is no wait that is over, nor one for something else',
    steps: [
      filled,
      dries('old'),
      bench('sand', 10, { done: { from: hour(1), to: hour(1) } }),
      wait('r', 5),
      coat('c'),
    ],
    is: ['fill', 'old', 'sand', 'f:waits 48 h, ends at 49', 'r', 'c'],
  },
  {
    what: 'is no wait behind the next coat',
    steps: [filled, coat('c'), dries('later'), coat('d')],
    is: ['fill', 'f:waits 48 h, ends at 49', 'c', 'later', 'd'],
  },
  {
    what: 'is no wait behind the next look',
    steps: [filled, GATE, dries('later')],
    is: ['fill', 'f:waits 48 h, ends at 49', 'look', 'later'],
  },
  {
    what: 'is the first of two',
    steps: [filled, dries('w'), dries('x'), coat('c')],
    is: ['fill', 'w 48 h, ends at 49', 'x', 'c'],
  },
  { what: 'stands where no work follows', steps: [filled, dries('w')], is: ['fill', 'w 48 h, ends at 49'] },
  { what: 'is put in where nothing was done yet', steps: [coat('c')], is: ['f:waits 48 h, ends at 49', 'c'] },
])('what filler waits for $what', ({ steps, is }) => {
  expect(told(steps)).toEqual(is);
});

test('each edge of the wait counts from the filler, and ends on the whole minute after it', () => {
  const [wait] = groundWaits([coat('c')], [filler(1, 2, 3)], DAY_1_MS);
  expect(wait).toMatchObject({
    minutes: { earliest: 61, likely: 121, late: 181 },
    ends: { earliest: hour(2) + 1, likely: hour(3) + 1, late: hour(4) + 1 },
  });
});

test('it is nothing any more once its last minute is over', () => {
  expect(told([coat('c')], filler(1, 2, 3), 4)).toEqual(['f:waits 2 h, ends at 3', 'c']);
  const over = { ...filler(1, 2, 3), until: { earliestMs: 0, likelyMs: 0, lateMs: DAY_1_MS + 4 * HOUR_MS } };
  expect(told([coat('c')], over, 4)).toEqual(['c']);
});
