import { describe, expect, test } from 'vitest';
import { admit } from '../../../src/logbook/admit/admit';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { A_YEAR_ON_MS, DAY_1_MS, entry, id, MINUTE_MS, PIECE, startPiece, strike } from '../entries';

const MATCH = id(0xd1);
const TRIAL = id(0xd2);
const WHITE = id(0xd3);
const OCHRE = id(0xd4);
const NOBODY = id(0xdf);

const ingredient = (ingredient: string, is: 'white-base' | 'tinter'): EntryBody => ({
  kind: 'ingredient-described',
  ingredient,
  name: is,
  is,
});
const describeMatch = (more: object = {}): EntryBody => ({
  kind: 'match-described',
  match: MATCH,
  name: 'Cream',
  place: 'edge',
  through: 'clear',
  white: 'D65/10',
  base: WHITE,
  tinters: [{ ingredient: OCHRE, like: 'ochre' }],
  division: { text: '0.01', unit: 'g' },
  letDowns: [],
  ...more,
});
const mixTrial = (trial = TRIAL, ingredient = WHITE, match = MATCH): EntryBody => ({
  kind: 'trial-mixed',
  match,
  trial,
  added: [{ ingredient, form: 'neat', mass: { text: '200', unit: 'g' } }],
});
const readColour = (
  of: Extract<EntryBody, { kind: 'colour-read' }>['of'],
  match = MATCH,
  L = '95.5',
): EntryBody => ({
  kind: 'colour-read',
  match,
  of,
  white: 'D65/10',
  isDry: true,
  readings: [
    {
      as: 'lab',
      L: { text: L, unit: 'ratio' },
      a: { text: '-0.8', unit: 'ratio' },
      b: { text: '2.2', unit: 'ratio' },
    },
  ],
});

const BENCH = [entry(1, ingredient(WHITE, 'white-base')), entry(2, ingredient(OCHRE, 'tinter'))];
const BEGUN = [...BENCH, entry(3, describeMatch())];
const MIXED = [...BEGUN, entry(4, mixTrial())];
const READ = [...MIXED, entry(5, readColour({ as: 'trial', trial: TRIAL }))];

const RECIPE = id(0xd7);
const written: EntryBody = {
  kind: 'recipe-written',
  recipe: RECIPE,
  name: 'Cream',
  use: { as: 'opaque', over: 'white' },
  lines: [{ ingredient: WHITE, amount: { text: '200', unit: 'g' } }],
};
const ACCEPTABLE = [...MIXED, entry(6, written)];
const accept = (more: object = {}): EntryBody =>
  ({ kind: 'trial-accepted', match: MATCH, trial: TRIAL, recipe: RECIPE, ...more }) as EntryBody;
const field = { card: { text: '1', unit: 'ratio' }, coated: { text: '60', unit: 'ratio' } };
const hiding = (more: object = {}): EntryBody =>
  ({
    kind: 'hiding-read',
    match: MATCH,
    dryFilm: { text: '25', unit: 'um' },
    in: 'Y',
    black: field,
    white: field,
    ...more,
  }) as EntryBody;

const groundOf = (before: readonly Entry[], body: EntryBody, n = 9) => {
  const admitted = admit(entry(n, body), fold(before), A_YEAR_ON_MS);
  return admitted.ok ? undefined : admitted.failure.kind;
};

test.each([
  { what: 'a match on no piece', before: BENCH, body: describeMatch(), ground: undefined },
  {
    what: 'a match on an unknown piece',
    before: BENCH,
    body: describeMatch({ piece: NOBODY }),
    ground: 'unknown-piece',
  },
  {
    what: 'a match from an unknown base',
    before: BENCH,
    body: describeMatch({ base: NOBODY }),
    ground: 'unknown-ingredient',
  },
  { what: 'a trial of no match', before: BENCH, body: mixTrial(), ground: 'unknown-match' },
  { what: 'a first trial', before: BEGUN, body: mixTrial(), ground: undefined },
  {
    what: 'a trial of what is not on the bench',
    before: BEGUN,
    body: mixTrial(TRIAL, NOBODY),
    ground: 'unknown-ingredient',
  },
  { what: 'a trial by a double tap', before: MIXED, body: mixTrial(), ground: 'trial-there-already' },
  { what: 'a reading of the target', before: BEGUN, body: readColour({ as: 'target' }), ground: undefined },
  {
    what: 'a reading of no trial',
    before: BEGUN,
    body: readColour({ as: 'trial', trial: TRIAL }),
    ground: 'unknown-trial',
  },
  {
    what: 'a tint of an unknown tinter',
    before: BEGUN,
    body: readColour({ as: 'tint', tinter: NOBODY, share: { text: '5', unit: '%' } }),
    ground: 'unknown-ingredient',
  },
  { what: 'a trial of a tinter', before: MIXED, body: mixTrial(NOBODY, OCHRE), ground: undefined },
  {
    what: 'a match with an unknown clear',
    before: BENCH,
    body: describeMatch({ clear: NOBODY }),
    ground: 'unknown-ingredient',
  },
  {
    what: 'a match with an unknown tinter',
    before: BENCH,
    body: describeMatch({ tinters: [{ ingredient: NOBODY }] }),
    ground: 'unknown-ingredient',
  },
  {
    what: 'a match put away',
    before: BEGUN,
    body: { kind: 'match-put-away', match: MATCH } as EntryBody,
    ground: undefined,
  },
  {
    what: 'no match put away',
    before: BENCH,
    body: { kind: 'match-put-away', match: MATCH } as EntryBody,
    ground: 'unknown-match',
  },
  {
    what: 'a reading of a trial',
    before: MIXED,
    body: readColour({ as: 'trial', trial: TRIAL }),
    ground: undefined,
  },
  {
    what: 'a reading of another trial',
    before: MIXED,
    body: readColour({ as: 'trial', trial: NOBODY }),
    ground: 'unknown-trial',
  },
  {
    what: 'a target of no match',
    before: BENCH,
    body: readColour({ as: 'target' }),
    ground: 'unknown-match',
  },
  {
    what: 'a tint of no match',
    before: BENCH,
    body: readColour({ as: 'tint', tinter: OCHRE, share: { text: '5', unit: '%' } }),
    ground: 'unknown-match',
  },
  {
    what: 'a reading on no toned place',
    before: BEGUN,
    body: readColour({ as: 'on-piece' }),
    ground: 'unknown-toner',
  },
  { what: 'a trial accepted', before: ACCEPTABLE, body: accept(), ground: undefined },
  { what: 'no trial accepted', before: ACCEPTABLE, body: accept({ trial: NOBODY }), ground: 'unknown-trial' },
  {
    what: 'a trial accepted as no recipe',
    before: ACCEPTABLE,
    body: accept({ recipe: NOBODY }),
    ground: 'unknown-recipe',
  },
  { what: 'a trial of no match accepted', before: BENCH, body: accept(), ground: 'unknown-match' },
  { what: 'hiding of a match', before: BEGUN, body: hiding(), ground: undefined },
  { what: 'hiding of no match', before: BENCH, body: hiding(), ground: 'unknown-match' },
  { what: 'hiding of a trial', before: MIXED, body: hiding({ trial: TRIAL }), ground: undefined },
  { what: 'hiding of no trial', before: MIXED, body: hiding({ trial: NOBODY }), ground: 'unknown-trial' },
  {
    what: 'undo of a trial under another',
    before: [...MIXED, entry(5, mixTrial(NOBODY, OCHRE))],
    body: strike(id(4)),
    ground: 'still-used',
  },
  {
    what: 'undo of a trial that became a recipe',
    before: [...ACCEPTABLE, entry(7, accept())],
    body: strike(id(4)),
    ground: 'still-used',
  },
  {
    what: 'undo of one description of a match that has another',
    before: [...MIXED, entry(5, describeMatch())],
    body: strike(id(3)),
    ground: undefined,
  },
  {
    what: 'undo of the last description that stands',
    before: [...MIXED, entry(5, describeMatch()), entry(6, strike(id(5)))],
    body: strike(id(3)),
    ground: 'still-used',
  },
  {
    what: 'undo of the only description of a match whose target was read',
    before: [...BEGUN, entry(5, readColour({ as: 'target' }))],
    body: strike(id(3)),
    ground: 'still-used',
  },
  {
    what: 'undo of the only description of a match with a trial',
    before: MIXED,
    body: strike(id(3)),
    ground: 'still-used',
  },
  { what: 'undo of a match with nothing in it', before: BEGUN, body: strike(id(3)), ground: undefined },
  { what: 'undo of the last trial, not read', before: MIXED, body: strike(id(4)), ground: undefined },
  { what: 'undo of a trial that was read', before: READ, body: strike(id(4)), ground: 'still-used' },
  {
    what: 'undo of a trial whose match was undone on another phone',
    before: [...MIXED, entry(5, strike(id(3)))],
    body: strike(id(4)),
    ground: 'still-used',
  },
  { what: 'undo of a reading', before: READ, body: strike(id(5)), ground: undefined },
])('$what: $ground', ({ before, body, ground }) => {
  expect(groundOf(before, body)).toBe(ground);
});

test('what is said of a match is no earlier than it, and a match no earlier than its piece', () => {
  const said = (before: readonly Entry[], body: EntryBody, minutes: number) => {
    const admitted = admit(entry(9, body, DAY_1_MS + minutes * MINUTE_MS), fold(before), A_YEAR_ON_MS);
    return admitted.ok ? 'ok' : admitted.failure.kind;
  };
  expect([said(BEGUN, mixTrial(), 2), said(BEGUN, mixTrial(), 3)]).toEqual(['too-early', 'ok']);
  expect(said(BEGUN, describeMatch({ name: 'Ivory' }), 0)).toBe('ok');
  const onPiece = [...BENCH, entry(5, startPiece())];
  expect([4, 5].map((minutes) => said(onPiece, describeMatch({ piece: PIECE }), minutes))).toEqual([
    'too-early',
    'ok',
  ]);
});

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
