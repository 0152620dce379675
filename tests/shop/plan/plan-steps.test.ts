import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { PlanStep } from '../../../src/logbook/kinds/shop/plan';
import type { Step } from '../../../src/planner/step';
import { asPlanned } from '../../../src/shop/plan/as-planned';
import { planSteps } from '../../../src/shop/plan/plan-steps';
import {
  DAY_1_MS,
  entry,
  fillJar,
  id,
  JAR,
  layCoat,
  MINUTE_MS,
  PIECE,
  startPiece,
} from '../../logbook/entries';

const WHITE = id(0xb2);
const work = (
  n: number,
  task:
    | 'scuff'
    | 'coat'
    | 'opaque-coat'
    | 'flash-coat'
    | 'drop-fill'
    | 'level-sand'
    | 'rub-out'
    | 'pore-fill',
): PlanStep => ({
  kind: 'work',
  id: id(n),
  task,
  place: 'bench',
  minutes: 10,
  isCoat: task.endsWith('coat') || task === 'drop-fill',
});
const wait = (n: number): PlanStep => ({
  kind: 'wait',
  id: id(n),
  until: 'recoat',
  minutes: { earliest: 45, likely: 60, late: 120 },
});
const gate = (n: number, check: 'powders' | 'no-print' | 'sink'): PlanStep => ({
  kind: 'gate',
  id: id(n),
  check,
  minutes: 2,
  againAfterMinutes: 1440,
  mostFailures: 7,
});
const coat = (how: 'spray' | 'flash' | 'brush-fill' | 'pad', jar = JAR): EntryBody =>
  ({
    ...layCoat(PIECE, jar),
    how,
    ...(how === 'brush-fill' && { film: { by: 'usual', dryFilm: { text: '150', unit: 'um' } } }),
  }) as EntryBody;
const checked = (test: 'gum' | 'print', result: 'passes' | 'fails'): EntryBody => ({
  kind: 'checked',
  piece: PIECE,
  test,
  result,
});
const sanded = (stage: 'scuff' | 'level'): EntryBody => ({
  kind: 'sanded',
  piece: PIECE,
  removed: { text: '4', unit: 'um' },
  stage,
});
const filled = (): EntryBody => ({ kind: 'ground-laid', piece: PIECE, ground: 'pore-filler' });
const mark = (step: number, as: 'done' | 'not-passed'): EntryBody => ({
  kind: 'step-marked',
  piece: PIECE,
  step: id(step),
  as,
});

/** The plan's steps after so much was logged, ten minutes apart. */
function stepsAfter(steps: readonly PlanStep[], logged: readonly EntryBody[], since?: number): Step[] {
  const white = { ...fillJar(WHITE), pigment: { shareOfSolids: { text: '20', unit: '%' }, shape: 'grains' } };
  const shop = fold([
    entry(1, startPiece(), DAY_1_MS),
    entry(2, fillJar(), DAY_1_MS),
    entry(3, white as EntryBody, DAY_1_MS),
    entry(4, {
      kind: 'piece-planned',
      piece: PIECE,
      coatsADay: 3,
      steps: [...steps],
      ...(since !== undefined && { since: new Date(since).toISOString() }),
    }),
    ...logged.map((body, index) => entry(10 + index, body, DAY_1_MS + (10 + index) * 10 * MINUTE_MS)),
  ]);
  const plan = shop.plans.get(PIECE);
  const piece = shop.pieces.get(PIECE);
  if (!plan || !piece) throw new Error('no plan');
  return planSteps(plan, piece, shop);
}

/** The ids of those that are done. */
const doneAfter = (...said: Parameters<typeof stepsAfter>): number[] =>
  stepsAfter(...said).flatMap(({ id, done }) => (done ? [Number.parseInt(id.slice(-4), 16)] : []));
/** The minute of the n-th thing logged, counted from the first. */
const minuteOf = (n: number): number => DAY_1_MS / MINUTE_MS + (10 + n) * 10;

const TOUCH_UP = [
  work(0x21, 'scuff'),
  work(0x22, 'flash-coat'),
  work(0x23, 'drop-fill'),
  work(0x24, 'opaque-coat'),
  wait(0x25),
  work(0x26, 'opaque-coat'),
  work(0x27, 'coat'),
  gate(0x28, 'powders'),
  work(0x29, 'level-sand'),
];

describe('what was logged is a step of the plan', () => {
  test.each([
    { what: 'nothing', logged: [], done: [] },
    { what: 'a scuff', logged: [sanded('scuff')], done: [0x21] },
    { what: 'a flash coat', logged: [coat('flash')], done: [0x22] },
    { what: 'a drop', logged: [coat('brush-fill')], done: [0x23] },
    { what: 'a white coat', logged: [coat('spray', WHITE)], done: [0x24] },
    { what: 'two white coats', logged: [coat('spray', WHITE), coat('spray', WHITE)], done: [0x24, 0x26] },
    { what: 'a clear coat', logged: [coat('spray')], done: [0x27] },
    {
      what: 'a third white coat, which the plan does not have',
      logged: [coat('spray', WHITE), coat('spray', WHITE), coat('spray', WHITE)],
      done: [0x24, 0x26],
    },
    { what: 'level-sanding before the coats are on', logged: [sanded('level')], done: [] },
    { what: 'a check before the coats are on', logged: [checked('gum', 'passes')], done: [] },
    {
      what: 'a check in its turn',
      logged: [
        coat('spray'),
        coat('spray', WHITE),
        coat('spray', WHITE),
        coat('brush-fill'),
        coat('flash'),
        checked('gum', 'passes'),
      ],
      done: [0x22, 0x23, 0x24, 0x26, 0x27, 0x28],
    },
    { what: 'a check that fails', logged: [coat('spray'), checked('gum', 'fails')], done: [0x27] },
    {
      what: 'a check before the only coat that it could be of, told in the order of their times',
      steps: [work(0x31, 'coat'), gate(0x32, 'powders')],
      logged: [checked('gum', 'passes'), coat('spray')],
      done: [0x31],
    },
    {
      what: 'a scuff between two coats',
      steps: [work(0x31, 'coat'), work(0x32, 'scuff'), work(0x33, 'coat')],
      logged: [coat('spray'), sanded('scuff'), coat('spray')],
      done: [0x31, 0x32, 0x33],
    },
    {
      what: 'a padded coat where the plan has no padding',
      steps: [work(0x31, 'coat')],
      logged: [coat('pad')],
      done: [0x31],
    },
    {
      what: 'filler, as the step it is',
      steps: [work(0x31, 'coat'), work(0x32, 'pore-fill'), work(0x33, 'coat')],
      logged: [coat('spray'), filled()],
      done: [0x31, 0x32],
    },
    { what: 'a mark', logged: [mark(0x25, 'done')], done: [0x25] },
    { what: 'a check marked as not passed', logged: [mark(0x28, 'not-passed')], done: [] },
    { what: 'a mark on a step that is done', logged: [mark(0x25, 'done'), mark(0x25, 'done')], done: [0x25] },
    {
      what: 'a smell, which no step asks for',
      logged: [{ kind: 'checked', piece: PIECE, test: 'smell', result: 'passes' } as EntryBody],
      done: [],
    },
  ] as readonly {
    readonly what: string;
    readonly steps?: readonly PlanStep[];
    readonly logged: readonly EntryBody[];
    readonly done: readonly number[];
  }[])('$what', ({ steps, logged, done }) => {
    expect(doneAfter(steps ?? TOUCH_UP, logged)).toEqual(done);
  });

  test('a pigmented jar lays plain coats where the plan has no coats of colour', () => {
    expect(doneAfter([work(0x31, 'coat'), work(0x32, 'coat')], [coat('spray', WHITE)])).toEqual([0x31]);
  });

  test('coats of an earlier job do not count', () => {
    const logged = [coat('spray'), coat('spray')];
    const since = DAY_1_MS + 105 * MINUTE_MS; // between the first, at 100 min, and the second, at 110 min
    expect(doneAfter([work(0x31, 'coat'), work(0x32, 'coat')], logged, since)).toEqual([0x31]);
    const withSecond = minuteOf(1) * MINUTE_MS;
    expect(doneAfter([work(0x31, 'coat'), work(0x32, 'coat')], logged, withSecond)).toEqual([0x31]);
  });

  // A thumb tried before the levelling opened the check after it, and the levelling counted as passed over.
  test('a check that passes before its turn passes over no sanding', () => {
    const steps = [work(0x31, 'coat'), work(0x32, 'level-sand'), gate(0x33, 'no-print')];
    expect(doneAfter(steps, [coat('spray'), checked('print', 'passes')])).toEqual([0x31]);
    const rubbed = [work(0x31, 'coat'), work(0x32, 'rub-out'), gate(0x33, 'no-print')];
    expect(doneAfter(rubbed, [coat('spray'), checked('print', 'passes')])).toEqual([0x31]);
    const levelled = [coat('spray'), sanded('level'), checked('print', 'passes')];
    expect(doneAfter(steps, levelled)).toEqual([0x31, 0x32, 0x33]);
  });
});

describe('when a step was done', () => {
  test('a coat ended when it was logged, and began as long before as it takes', () => {
    const [step] = stepsAfter([work(0x31, 'coat')], [coat('spray')]);
    expect(step?.done).toEqual({ from: minuteOf(0) - 10, to: minuteOf(0) });
  });

  test('a check began as long before as it takes', () => {
    const [, step] = stepsAfter(
      [work(0x31, 'coat'), gate(0x32, 'powders')],
      [coat('spray'), checked('gum', 'passes')],
    );
    expect(step?.done).toEqual({ from: minuteOf(1) - 2, to: minuteOf(1) });
  });

  test('a wait that is marked takes no time', () => {
    const [step] = stepsAfter([wait(0x25)], [mark(0x25, 'done')]);
    expect(step?.done).toEqual({ from: minuteOf(0), to: minuteOf(0) });
  });

  test('a coat beyond the plan ends the last one anew', () => {
    const [first, last] = stepsAfter(
      [work(0x31, 'coat'), work(0x32, 'coat')],
      [coat('spray'), coat('spray'), coat('spray')],
    );
    expect(first?.done?.to).toBe(minuteOf(0));
    expect(last?.done).toEqual({ from: minuteOf(1) - 10, to: minuteOf(2) });
  });

  test('a coat beyond the plan changes nothing of a sanding after its coats', () => {
    const steps = [work(0x31, 'coat'), work(0x32, 'level-sand')];
    const [first, level] = stepsAfter(steps, [coat('spray'), sanded('level'), coat('spray')]);
    expect([first?.done?.to, level?.done?.to]).toEqual([minuteOf(0), minuteOf(1)]);
  });

  test('a check that failed twice is told so, each with its minute', () => {
    const steps = [work(0x31, 'coat'), gate(0x32, 'powders')];
    const logged = [coat('spray'), checked('gum', 'fails'), mark(0x32, 'not-passed')];
    expect(stepsAfter(steps, logged)[1]).toMatchObject({ failedAt: [minuteOf(1), minuteOf(2)] });
    expect(stepsAfter(steps, [coat('spray')])[1]).toMatchObject({ failedAt: [] });
  });
});

test('a step that waits for a day is told by its minute, and without it by none', () => {
  const notBefore = '2026-03-05T08:00:00.000Z';
  const [late, free] = stepsAfter([{ ...work(0x31, 'coat'), notBefore } as PlanStep, work(0x32, 'coat')], []);
  expect(late).toMatchObject({ notBefore: Date.parse(notBefore) / MINUTE_MS });
  expect(free).not.toHaveProperty('notBefore');
});

test('planned again, a step keeps what was planned and loses what was logged', () => {
  const steps = [work(0x31, 'coat'), wait(0x25), gate(0x32, 'powders')];
  const logged = [coat('spray'), mark(0x25, 'done'), checked('gum', 'fails')];
  expect(stepsAfter(steps, logged).map(asPlanned)).toEqual(steps);
});
