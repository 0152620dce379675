import { expect, test } from 'vitest';
import { admit } from '../../../src/logbook/admit/admit';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { A_YEAR_ON_MS, DAY_1_MS, entry, id, MINUTE_MS, PIECE, startPiece, strike } from '../entries';

import {
  ACCEPTABLE,
  accept,
  BEGUN,
  BENCH,
  describeMatch,
  hiding,
  MATCH,
  MIXED,
  mixTrial,
  NOBODY,
  OCHRE,
  READ,
  readColour,
  TRIAL,
} from './match-entries';

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
