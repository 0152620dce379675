import { expect, test } from 'vitest';
import type { Plan } from '../../src/planner/plan';
import { planBench } from '../../src/planner/plan-bench';
import type { Bench, Piece, Step } from '../../src/planner/step';
import { clock, coat, piece, utc, wait, working } from './a-bench';

// Worked scenario F of the trade notes: four pieces, one gun, one interruption. 10 min spray + 5 min move, recoat 60 min after the
// end of the piece's own coat, 3 coats a day, start 09:00, no spraying 10:20 to 11:10.
const DAY = '2026-03-02';
const at = (time: string): number => utc(`${DAY} ${time}`);
const ROUNDS = [
  ['09:00', '09:15', '09:30', '09:45'],
  ['10:10', '11:10', '11:25', '11:40'],
  ['11:55', '12:20', '12:35', '12:50'],
] as const;
const PIECES = ['A', 'B', 'C', 'D'];

const threeCoats = (name: string): readonly Step[] => [
  coat(`${name}1`),
  wait(`${name}1-2`, 60),
  coat(`${name}2`),
  wait(`${name}2-3`, 60),
  coat(`${name}3`),
];
const untouched: Bench = {
  now: at('09:00'),
  working: working(9, 17, { closures: [{ from: at('10:20'), to: at('11:10'), closes: 'spraying' }] }),
  pieces: PIECES.map((name) => piece(name, threeCoats(name))),
};

function planOf(bench: Bench): Plan {
  const planned = planBench(bench);
  if (!planned.ok) throw new Error(JSON.stringify(planned.failure));
  return planned.value;
}

const startsOf = ({ steps }: Plan): string[][] =>
  [1, 2, 3].map((round) =>
    PIECES.map((name) => clock(steps.find(({ stepId }) => stepId === `${name}${round}`)?.start ?? 0)),
  );

/** The bench later in the day: coats that have begun by then are marked, wherever the marking was done. */
function markedAt(time: string): Bench {
  const now = at(time);
  const marked = (step: Step, name: string): Step => {
    const round = Number(step.id.slice(1));
    const start = at(ROUNDS[round - 1]?.[PIECES.indexOf(name)] ?? '');
    return step.kind === 'work' && start < now ? { ...step, done: { from: start, to: start + 10 } } : step;
  };
  const mark = (it: Piece): Piece => ({ ...it, steps: it.steps.map((step) => marked(step, it.id)) });
  return { ...untouched, now, pieces: untouched.pieces.map(mark) };
}

test('plans the day to the minute', () => {
  const plan = planOf(untouched);
  expect(startsOf(plan)).toEqual(ROUNDS);
  expect(clock(Math.max(...plan.pieces.map(({ likely }) => likely)))).toBe('13:00');
});

test.each(['09:05', '10:10', '10:15', '10:40', '11:20', '11:25', '11:45', '12:10', '12:50'])(
  'keeps the plan when it is made again at %s, also with the second coat of B marked late',
  (time) => {
    expect(startsOf(planOf(markedAt(time)))).toEqual(ROUNDS);
  },
);

test('gives the identical plan when the app is opened again', () => {
  const reopened = JSON.parse(
    JSON.stringify({ ...untouched, working: { ...untouched.working, zone: undefined } }),
  );
  reopened.working.zone = untouched.working.zone;
  expect(planOf(reopened)).toEqual(planOf(untouched));
});

test('says what holds up the coats after the interruption', () => {
  const { steps } = planOf(untouched);
  const boundOf = (id: string) => steps.find(({ stepId }) => stepId === id)?.bound;
  expect(boundOf('B2')).toEqual({ by: 'closed' });
  expect(boundOf('C2')).toEqual({ by: 'person', pieceId: 'B', stepId: 'B2' });
  expect(boundOf('B3')).toEqual({ by: 'step', stepId: 'B2-3' });
});
