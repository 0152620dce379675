import { describe, expect, test } from 'vitest';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { asJudged } from '../../../src/actions/reminders/as-judged';
import type { EntryBody } from '../../../src/logbook/entry';
import type { PlannedStep } from '../../../src/planner/plan';
import type { Step, Task } from '../../../src/planner/step';
import type { Reminder } from '../../../src/reminders/reminder';
import { DAY_1_MS, id, layCoat, MINUTE_MS, PIECE } from '../../logbook/entries';
import { anOutlook, aShop, HOURS } from '../../parts/an-outlook';

// The outlook of the helper: recoat 1, 2, 3 h after the first coat, level 100, 200, 300 h.
const HOUR = 60;
const start = DAY_1_MS / MINUTE_MS;
const COATED = { hour: 0, body: layCoat() };
const NEVER = Number.POSITIVE_INFINITY;

const planned = (
  stepId: string,
  task: Task,
  more: { isDone?: boolean; pieceId?: string } = {},
): PlannedStep => {
  const { isDone = false, pieceId = PIECE } = more;
  const isCoat = task === 'coat' || task === 'flash-coat';
  const step: Step = { kind: 'work', id: stepId, task, place: 'booth', minutes: 10, isCoat };
  return { pieceId, stepId, kind: 'work', step, start, end: start + 10, isDone, bound: { by: 'now' } };
};
const reminder = (kind: Reminder['kind'], hour: number, more: Partial<Reminder> = {}): Reminder => ({
  id: `${kind}:x`,
  kind,
  at: start + hour * HOUR,
  pieceId: PIECE,
  ...more,
});
interface Now {
  readonly nowHour?: number;
  readonly outlook?: Outlook | undefined;
  readonly steps?: readonly PlannedStep[];
  readonly done?: readonly { readonly hour: number; readonly body: EntryBody }[];
}
/** What becomes of a reminder: the hour at which it sounds, and its word. */
function told(one: Reminder, { nowHour = 0, outlook = anOutlook(), steps = [], done = [COATED] }: Now = {}) {
  const { shop } = aShop(...done);
  const now = {
    shop,
    outlooks: new Map(outlook && [[PIECE, outlook]]),
    nowMs: DAY_1_MS + nowHour * HOUR * MINUTE_MS,
  };
  return asJudged(now, steps)(one).map(({ at, word }) => [(at - start) / HOUR, word]);
}
const softAt = (hour: number) => ({
  hour,
  body: { kind: 'checked', piece: PIECE, test: 'print', result: 'fails' } as EntryBody,
});

describe('a reminder of an act', () => {
  test('sounds at the first minute at which the judge says ready, with that word', () => {
    expect(told(reminder('next-coat', 1))).toEqual([[2, 'ready']]);
    expect(told(reminder('next-coat', 2))).toEqual([[2, 'ready']]);
    expect(told(reminder('next-coat', 5))).toEqual([[5, 'ready']]);
    expect(
      told(reminder('next-coat', 1), { outlook: anOutlook({ ...HOURS, recoat: [1, 1 + 1 / 7200, 3] }) }),
    ).toEqual([
      [1 + 1 / 60, 'ready'], // half a second after the hour: the next whole minute
    ]);
  });

  test('that has come already is judged as it is now', () => {
    expect(told(reminder('next-coat', 1), { nowHour: 3 })).toEqual([[1, 'ready']]);
  });

  test('says perhaps where no time makes it ready, and nothing while it has to wait', () => {
    const outlook = anOutlook({ ...HOURS, recoat: [1, NEVER, NEVER] });
    expect(told(reminder('next-coat', 0.5), { outlook })).toEqual([]);
    expect(told(reminder('next-coat', 1), { outlook })).toEqual([[1, 'perhaps']]);
  });

  test('is none of what is held', () => {
    const done = [COATED, softAt(210)];
    expect(told(reminder('level-sand', 250), { done, nowHour: 220 })).toEqual([]);
    expect(told(reminder('level-sand', 250), { done: [COATED], nowHour: 220 })).toEqual([[250, 'ready']]);
  });

  test('stands as it was planned while its film is worked out, and behind a coat still to come', () => {
    expect(told(reminder('next-coat', 1), { outlook: { state: 'computing' } })).toEqual([[1, undefined]]);
    const sand = reminder('level-sand', 1, { stepId: id(0x22) });
    const behind = (...steps: PlannedStep[]) =>
      told(sand, { steps: [...steps, planned(id(0x22), 'level-sand')] });
    expect(behind(planned(id(0x21), 'coat'))).toEqual([[1, undefined]]);
    expect(behind(planned(id(0x21), 'coat', { isDone: true }))).toEqual([[200, 'ready']]);
    expect(behind(planned(id(0x21), 'scuff'))).toEqual([[200, 'ready']]);
    expect(behind(planned(id(0x21), 'coat', { pieceId: id(0xa2) }))).toEqual([[200, 'ready']]);
    const before = [planned(id(0x22), 'level-sand'), planned(id(0x23), 'coat')];
    expect(told(sand, { steps: before })).toEqual([[200, 'ready']]);
    expect(told(reminder('level-sand', 1), { steps: before })).toEqual([[200, 'ready']]); // of no step
  });

  test('goes by the act of its step: a flash of thinner does harm where a coat does none', () => {
    const stepId = id(0x21);
    const done = [
      { hour: 0, body: { kind: 'piece-changed', piece: PIECE, base: 'old-closed' } as EntryBody },
    ];
    const next = reminder('next-coat', 1, { stepId });
    const asTask = (task: Task) =>
      told(next, { steps: [planned(stepId, task)], done, outlook: { state: 'no-coats' } });
    expect(asTask('coat')).toEqual([[1, 'ready']]);
    expect(asTask('flash-coat')).toEqual([]);
  });
});

test.each<{ what: string; one: Reminder }>([
  { what: 'of no act', one: reminder('move-piece', 1, { stepId: id(0x21) }) },
  { what: 'of no piece', one: reminder('next-coat', 1, { pieceId: id(0xee) }) },
  { what: 'of the shop', one: { id: 'rags:1', kind: 'rags', at: start } },
])('a reminder $what is not judged', ({ one }) => {
  const steps = [planned(id(0x21), 'level-sand')];
  const { shop } = aShop(COATED, softAt(1));
  const now = { shop, outlooks: new Map([[PIECE, anOutlook()]]), nowMs: DAY_1_MS + 2 * HOUR * MINUTE_MS };
  expect(asJudged(now, steps)(one)).toEqual([one]);
});
