import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { PlanStep } from '../../../src/logbook/kinds/shop/plan';
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
  task: 'scuff' | 'coat' | 'opaque-coat' | 'flash-coat' | 'drop-fill' | 'level-sand',
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
const mark = (step: number, as: 'done' | 'not-passed'): EntryBody => ({
  kind: 'step-marked',
  piece: PIECE,
  step: id(step),
  as,
});

/** The ids of the steps that are done after so much was logged, ten minutes apart. */
function doneAfter(steps: readonly PlanStep[], logged: readonly EntryBody[], since?: number): number[] {
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
  const now = planSteps(plan, piece, shop);
  return steps.flatMap((step, index) => (now[index]?.done ? [Number.parseInt(step.id.slice(-4), 16)] : []));
}

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
    { what: 'a mark', logged: [mark(0x25, 'done')], done: [0x25] },
    {
      what: 'a smell, which no step asks for',
      logged: [{ kind: 'checked', piece: PIECE, test: 'smell', result: 'passes' } as EntryBody],
      done: [],
    },
  ])('$what', ({ logged, done }) => {
    expect(doneAfter(TOUCH_UP, logged)).toEqual(done);
  });

  test('a pigmented jar lays plain coats where the plan has no coats of colour', () => {
    expect(doneAfter([work(0x31, 'coat'), work(0x32, 'coat')], [coat('spray', WHITE)])).toEqual([0x31]);
  });

  test('coats of an earlier job do not count', () => {
    const logged = [coat('spray'), coat('spray')];
    const since = DAY_1_MS + 105 * MINUTE_MS; // between the first, at 100 min, and the second, at 110 min
    expect(doneAfter([work(0x31, 'coat'), work(0x32, 'coat')], logged, since)).toEqual([0x31]);
  });

  // A thumb tried before the levelling opened the check after it, and the levelling counted as passed over.
  test('a check that passes before its turn passes over no sanding', () => {
    const steps = [work(0x31, 'coat'), work(0x32, 'level-sand'), gate(0x33, 'no-print')];
    expect(doneAfter(steps, [coat('spray'), checked('print', 'passes')])).toEqual([0x31]);
    const levelled = [coat('spray'), sanded('level'), checked('print', 'passes')];
    expect(doneAfter(steps, levelled)).toEqual([0x31, 0x32, 0x33]);
  });
});
