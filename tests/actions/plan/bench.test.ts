import { expect, test } from 'vitest';
import { benchNow } from '../../../src/actions/plan/bench';
import { surroundings } from '../../../src/actions/plan/surroundings';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { PlanStep } from '../../../src/logbook/kinds/shop/plan';
import type { Plan } from '../../../src/planner/plan';
import { planBench } from '../../../src/planner/plan-bench';
import type { Bench } from '../../../src/planner/step';
import { entry, fillJar, id, JAR, layCoat, startPiece } from '../../logbook/entries';
import { clock, dateTime, utc } from '../../planner/a-bench';

// The worked scenarios C and F of the trade notes, from the logbook to the plan. The shop lives on UTC.
const DAY = '2026-03-02';
const ms = (time: string): number => utc(`${DAY} ${time}`) * 60_000;
const iso = (time: string): string => new Date(ms(time)).toISOString();
const always = (open: string, close: string): EntryBody => ({
  kind: 'hours-set',
  week: Array.from({ length: 7 }, () => ({ work: [{ open, close }] })),
});

function planAt(entries: readonly Entry[], time: string): Plan {
  const bench = benchNow({ shop: fold(entries), outlooks: new Map(), nowMs: ms(time), zone: 'UTC' });
  const plan = planBench(bench);
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return plan.value;
}

const coat = (n: number): PlanStep => ({
  kind: 'work',
  id: id(n),
  task: 'coat',
  place: 'booth',
  minutes: 10,
  moveMinutes: 5,
  isCoat: true,
});
const wait = (n: number): PlanStep => ({
  kind: 'wait',
  id: id(n),
  until: 'recoat',
  minutes: { earliest: 60, likely: 60, late: 60 },
  isOwn: true,
});
const window = (n: number): PlanStep => ({
  kind: 'window',
  id: id(n),
  fromMinutes: 45,
  untilMinutes: 240,
  scuffMinutes: 30,
});

const PIECES = ['A', 'B', 'C', 'D'] as const;
const pieceId = (at: number): string => id(0x100 + at);
/** Step ids sort so that piece and round can be read from them: 0x210 is the first coat of B. */
const stepId = (at: number, round: number): number => 0x1000 + at * 0x100 + round * 0x10;

function fourPieces(): Entry[] {
  const early = ms('08:00');
  return [
    entry(1, fillJar(), early),
    entry(2, always('09:00', '17:00'), early),
    entry(
      3,
      {
        kind: 'closure-set',
        closure: id(0x51),
        span: { from: iso('10:20'), to: iso('11:10') },
        closes: 'spraying',
      },
      early,
    ),
    ...PIECES.flatMap((name, at) => [
      entry(10 + at, { ...startPiece(pieceId(at)), name } as EntryBody, early),
      entry(
        20 + at,
        {
          kind: 'piece-planned',
          piece: pieceId(at),
          coatsADay: 3,
          steps: [
            coat(stepId(at, 1)),
            wait(stepId(at, 1) + 1),
            coat(stepId(at, 2)),
            wait(stepId(at, 2) + 1),
            coat(stepId(at, 3)),
          ],
        },
        early,
      ),
    ]),
  ];
}

const ROUNDS = [
  ['09:00', '09:15', '09:30', '09:45'],
  ['10:10', '11:10', '11:25', '11:40'],
  ['11:55', '12:20', '12:35', '12:50'],
];
const startsOf = ({ steps }: Plan): string[][] =>
  [1, 2, 3].map((round) =>
    PIECES.map((_, at) => clock(steps.find((step) => step.stepId === id(stepId(at, round)))?.start ?? 0)),
  );

test('scenario F: plans four pieces and one gun to the minute', () => {
  const plan = planAt(fourPieces(), '09:00');
  expect(startsOf(plan)).toEqual(ROUNDS);
  expect(clock(Math.max(...plan.pieces.map(({ likely }) => likely)))).toBe('13:00');
});

test('scenario F: coats laid keep the plan, the second of B marked late and backdated', () => {
  const laid = (n: number, at: number, time: string) => entry(n, layCoat(pieceId(at)), ms(time));
  const first = ['09:10', '09:25', '09:40', '09:55'].map((time, at) => laid(40 + at, at, time));
  const logged = [...first, laid(50, 0, '10:20'), laid(52, 2, '11:35'), laid(51, 1, '11:20')];
  expect(startsOf(planAt([...fourPieces(), ...logged], '11:40'))).toEqual(ROUNDS);
});

const BOX = [
  entry(1, fillJar(), ms('08:00')),
  entry(2, always('08:00', '17:00'), ms('08:00')),
  entry(3, startPiece(pieceId(0)), ms('08:00')),
  entry(
    4,
    { kind: 'piece-planned', piece: pieceId(0), coatsADay: 3, steps: [coat(0x21), window(0x22), coat(0x23)] },
    ms('08:00'),
  ),
  entry(5, layCoat(pieceId(0), JAR), ms('10:00')),
];
test.each([
  { now: '10:05', next: `${DAY} 10:45`, missed: 0 },
  { now: '14:00', next: `${DAY} 14:00`, missed: 0 },
  { now: '14:01', next: '2026-03-03 08:30', missed: 1 },
])('scenario C: a coat that ended at 10:00 is followed at $next, seen at $now', ({ now, next, missed }) => {
  const plan = planAt(BOX, now);
  expect(dateTime(plan.steps.find(({ stepId: step }) => step === id(0x23))?.start ?? 0)).toBe(next);
  expect(plan.pieces[0]?.missedWindows).toHaveLength(missed);
});

test('a piece without a plan is there with its coats, for its rags', () => {
  const bench = benchNow({
    shop: fold([...BOX.slice(0, 3), BOX[4] as Entry]),
    outlooks: new Map(),
    nowMs: ms('11:00'),
    zone: 'UTC',
  });
  expect(bench.pieces).toMatchObject([{ id: pieceId(0), steps: [{ done: { to: utc(`${DAY} 10:00`) } }] }]);
});

// Its film cannot be worked out: usual waits in place of its own would be a date that nobody stands for.
test('a piece whose times could not be worked out is left out by name, and the others are planned', () => {
  const done = coat(0x31);
  const [out, other] = [pieceId(0), pieceId(1)];
  const sand: PlanStep = { kind: 'work', id: id(0x33), task: 'level-sand', place: 'bench', minutes: 60 };
  const harden: PlanStep = { ...wait(0x32), until: 'level-sand', isOwn: false } as PlanStep;
  const planned = (piece: string, steps: readonly PlanStep[]): EntryBody =>
    ({ kind: 'piece-planned', piece, coatsADay: 3, steps }) as EntryBody;
  const entries = [
    ...BOX.slice(0, 2),
    entry(10, startPiece(out), ms('08:00')),
    entry(11, startPiece(other), ms('08:00')),
    entry(12, planned(out, [done, harden, sand]), ms('08:00')),
    entry(13, planned(other, [coat(0x41)]), ms('08:00')),
    entry(14, layCoat(out, JAR), ms('10:00')),
    entry(16, { kind: 'piece-promised', piece: out, promised: iso('16:00') }, ms('10:01')),
  ];
  const outlooks = new Map([[out, { state: 'failed', message: '' } as const]]);
  const at = { outlooks, nowMs: ms('11:00'), zone: 'UTC' };
  const leftOut = ({ pieces }: Bench) => pieces.flatMap(({ id: one, isLeftOut }) => (isLeftOut ? [one] : []));
  const bench = benchNow({ ...at, shop: fold(entries) });
  const made = planBench(bench);
  if (!made.ok) throw new Error(JSON.stringify(made.failure));
  expect(leftOut(bench)).toEqual([out]);
  expect(made.value.pieces.map(({ pieceId: one }) => one)).toEqual([other]);
  expect(made.value.steps.filter(({ pieceId: one }) => one === out).map(({ isDone }) => isDone)).toEqual([
    true,
  ]);
  // Its coat is done and nothing after it is known: that is no word to the owner.
  expect(surroundings(fold(entries), made.value).updates).toEqual([]);
  // With waits of the person's own, nothing is asked of the model.
  const mine = entry(15, planned(out, [done, { ...harden, isOwn: true } as PlanStep, sand]), ms('10:30'));
  expect(leftOut(benchNow({ ...at, shop: fold([...entries, mine]) }))).toEqual([]);
  // While it is being worked out the piece is planned, and says so.
  const soon = { ...at, outlooks: new Map([[out, { state: 'computing' } as const]]) };
  const awaited = (some: readonly Entry[]) =>
    benchNow({ ...soon, shop: fold(some) }).pieces.map(({ isLeftOut, isAwaited }) => [isLeftOut, isAwaited]);
  expect(awaited(entries)).toEqual([
    [undefined, true],
    [undefined, undefined],
  ]);
  expect(awaited([...entries, mine])[0]).toEqual([undefined, undefined]);
});
