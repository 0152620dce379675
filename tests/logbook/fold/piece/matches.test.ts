import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../../src/logbook/entry';
import { fold } from '../../../../src/logbook/fold/fold';
import {
  ACCEPTABLE,
  accept,
  BEGUN,
  describeMatch,
  hiding,
  MATCH,
  mixTrial,
  NOBODY,
  OCHRE,
  READ,
  readColour,
  TRIAL,
  WHITE,
} from '../../admit/match-entries';
import { DAY_1_MS, entry, id, MINUTE_MS } from '../../entries';

describe('the fold', () => {
  test('keeps the first of two trials of one id, what was put away and accepted last, and hiding beside readings', () => {
    const put: EntryBody = { kind: 'match-put-away', match: MATCH };
    const again = id(0xd8);
    const match = fold([
      ...ACCEPTABLE, // to 6
      entry(7, { ...mixTrial(TRIAL, OCHRE), note: 'By another phone.' } as EntryBody),
      entry(8, accept()),
      entry(9, accept({ recipe: again })),
      entry(10, put),
      entry(11, hiding()),
      entry(12, hiding({ trial: TRIAL })),
      entry(13, accept({ match: NOBODY })),
      entry(14, { ...put, match: NOBODY }),
      entry(15, { ...mixTrial(id(0xd9)), note: 'Warmer.' } as EntryBody),
    ]).matches.get(MATCH);
    expect(
      match?.trials.map(({ id: trial, entry: by, number, mixedMs, note }) => [
        trial,
        by,
        number,
        mixedMs,
        note,
      ]),
    ).toEqual([
      [TRIAL, id(4), 1, DAY_1_MS + 4 * MINUTE_MS, undefined],
      [id(0xd9), id(15), 2, DAY_1_MS + 15 * MINUTE_MS, 'Warmer.'],
    ]);
    expect(match?.trials[0]).not.toHaveProperty('note');
    expect(match?.trials[0]?.added.map(({ ingredient: one }) => one)).toEqual([WHITE]);
    expect(match?.accepted).toEqual({ trial: TRIAL, recipe: again, atMs: DAY_1_MS + 9 * MINUTE_MS });
    expect(match?.putAwayMs).toBe(DAY_1_MS + 10 * MINUTE_MS);
    expect(match?.hiding.map(({ trial }) => trial)).toEqual([undefined, TRIAL]);
  });

  test('gathers trials in order with their readings, and what else was read', () => {
    const second = id(0xd5);
    const { matches } = fold([
      ...READ,
      entry(6, mixTrial(second, OCHRE)),
      entry(7, readColour({ as: 'target' })),
    ]);
    const match = matches.get(MATCH);
    expect(match?.trials.map(({ id: trial, number, readings }) => [trial, number, readings.length])).toEqual([
      [TRIAL, 1, 1],
      [second, 2, 0],
    ]);
    expect(match?.readings.map(({ of }) => of.as)).toEqual(['target']);
    expect(match?.trials[0]?.added[0]?.mass.si).toBeCloseTo(0.2, 12); // kilograms
  });

  test('a later description replaces the one before and keeps the trials', () => {
    const match = fold([...READ, entry(8, describeMatch({ name: 'Ivory', tinters: [] }))]).matches.get(MATCH);
    expect(match).toMatchObject({ name: 'Ivory', tinters: [], trials: [{ id: TRIAL }] });
    expect(match?.begunMs).toBe(fold(BEGUN).matches.get(MATCH)?.begunMs);
  });
});
