import { describe, expect, test } from 'vitest';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { milestoneReminders } from '../../../src/actions/reminders/milestone-reminders';
import type { EntryBody } from '../../../src/logbook/entry';
import { DAY_1_MS, id, layCoat, PIECE, sand } from '../../logbook/entries';
import { anOutlook, aShop, HOURS } from '../../parts/an-outlook';

const start = DAY_1_MS / 60_000;
const coat = { hour: 0, body: layCoat() };
const sanded = (stage: 'scuff' | 'level' | 'rub-out', hour: number) => ({
  hour,
  body: { ...sand(), stage } as EntryBody,
});
const ground = (hour: number, ground: 'glue' | 'pore-filler') => ({
  hour,
  body: { kind: 'ground-laid', piece: PIECE, ground } as EntryBody,
});
/** The reminders with their hours after the first coat. */
const reminded = (
  outlook: Outlook | undefined,
  ...done: readonly { readonly hour: number; readonly body: EntryBody }[]
) => {
  const { shop } = aShop(...done);
  return milestoneReminders(shop, new Map(outlook && [[PIECE, outlook]])).map(
    ({ kind, at, until }) => [kind, (at - start) / 60, ((until ?? 0) - at) / 60] as const,
  );
};

// The made-up outlook: recoat likely after 2 h, level-sand after 200, rub out after 300.
describe('without a plan a piece is reminded of by its film', () => {
  test('of the next coat and both sandings, each for three days', () => {
    expect(reminded(anOutlook(), coat)).toEqual([
      ['next-coat', 2, 72],
      ['level-sand', 200, 72],
      ['rub-out', 300, 72],
    ]);
  });

  test.each([
    { what: 'levelled', done: [sanded('level', 210)], left: ['rub-out'] },
    { what: 'rubbed out', done: [sanded('rub-out', 310)], left: [] },
    { what: 'scuffed', done: [sanded('scuff', 5)], left: ['next-coat', 'level-sand', 'rub-out'] },
    {
      what: 'levelled before its last coat',
      done: [sanded('level', -1)],
      left: ['next-coat', 'level-sand', 'rub-out'],
    },
  ])('$what it is reminded of $left', ({ done, left }) => {
    expect(reminded(anOutlook(), coat, ...done).map(([kind]) => kind)).toEqual(left);
  });

  test('of nothing that is never reached, not worked out, or not laid', () => {
    const never = Number.POSITIVE_INFINITY;
    expect(reminded(anOutlook({ ...HOURS, rubOut: [1, never, never] }), coat).map(([kind]) => kind)).toEqual([
      'next-coat',
      'level-sand',
    ]);
    expect(reminded({ state: 'computing' }, coat)).toEqual([]);
    expect(reminded(undefined, coat)).toEqual([]);
    expect(reminded(anOutlook())).toEqual([]);
  });

  test('of nothing once it is closed, nor beside a plan', () => {
    expect(reminded(anOutlook(), coat, { hour: 1, body: { kind: 'piece-closed', piece: PIECE } })).toEqual(
      [],
    );
    const planned: EntryBody = { kind: 'piece-planned', piece: PIECE, coatsADay: 3, steps: [] };
    expect(reminded(anOutlook(), coat, { hour: 1, body: planned })).toEqual([]);
  });

  test('of filler and glue that are through their waits: the newest, until something goes on or it is sanded', () => {
    // Common practice, no source: filler two days, glue one.
    expect(reminded(undefined, ground(1, 'pore-filler'))).toEqual([['next-step', 49, 72]]);
    expect(reminded(undefined, ground(1, 'pore-filler'), ground(2, 'glue'))).toEqual([['next-step', 26, 72]]);
    expect(reminded(undefined, ground(1, 'glue'), { hour: 30, body: layCoat() })).toEqual([]);
    expect(reminded(undefined, ground(1, 'glue'), sanded('scuff', 30))).toEqual([]);
    expect(reminded(undefined, ground(1, 'glue'), { hour: 0.5, body: layCoat() })).toEqual([
      ['next-step', 25, 72],
    ]);
  });

  test('each by the name of what it waits on', () => {
    const { shop } = aShop(coat, ground(1, 'glue'));
    const ids = milestoneReminders(shop, new Map([[PIECE, anOutlook()]])).map((one) => one.id);
    expect(ids).toEqual([
      `next-coat:${id(3)}`,
      `level-sand:${id(3)}`,
      `rub-out:${id(3)}`,
      `next-step:${id(4)}`,
    ]);
  });
});
