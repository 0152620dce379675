import { describe, expect, test } from 'vitest';
import { admit } from '../../../src/logbook/admit/admit';
import type { Entry, EntryBody, EntryOf } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import {
  A_YEAR_ON_MS,
  check,
  correct,
  entry,
  fillJar,
  id,
  JAR,
  layCoat,
  PIECE,
  photograph,
  startPiece,
  strike,
} from '../entries';

const OTHER = id(0xa2);
const [EDGE, LID, NOWHERE] = [id(0xc1), id(0xc2), id(0xff)];
const [PHOTO, SECOND, FOREIGN] = [id(0xe1), id(0xe2), id(0xe3)];

const describeZone = (zoneId = EDGE, piece = PIECE): EntryBody => ({
  kind: 'zone-described',
  piece,
  zoneId,
  name: 'Edge',
  is: 'chip',
});
const SQUARE = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
] as const;
const BOW_TIE = [SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3]] as const;
const draw = (more: object = {}): EntryBody =>
  ({ kind: 'zone-drawn', piece: PIECE, zoneId: EDGE, photo: PHOTO, outline: SQUARE, ...more }) as EntryBody;
const MARK: EntryOf<'photos-aligned'>['marks']['under'] = [
  [0, 0],
  [1, 1],
];
const align = (under = PHOTO, over = SECOND, piece = PIECE): EntryBody => ({
  kind: 'photos-aligned',
  piece,
  under,
  over,
  marks: { under: MARK, over: MARK },
});
const note = (piece = PIECE, zoneId?: string): EntryBody => ({
  kind: 'piece-noted',
  piece,
  text: 'A chip.',
  isPrivate: false,
  ...(zoneId && { zoneId }),
});
const tone = (piece = PIECE, jar = JAR): EntryBody => ({
  kind: 'toner-described',
  piece,
  toner: id(0xf1),
  jar,
  white: 'D65/10',
});
const onZone = (body: EntryBody, zoneId = EDGE): EntryBody => ({ ...body, zoneId }) as EntryBody;
const matchOn = (more: object): EntryBody =>
  ({
    kind: 'match-described',
    match: id(0xd1),
    name: 'Cream',
    place: 'edge',
    through: 'clear',
    white: 'D65/10',
    base: id(0xd3),
    tinters: [],
    division: { text: '0.01', unit: 'g' },
    letDowns: [],
    ...more,
  }) as EntryBody;
const white: EntryBody = {
  kind: 'ingredient-described',
  ingredient: id(0xd3),
  name: 'White',
  is: 'white-base',
};

const BENCH: readonly Entry[] = [
  startPiece(), // 1
  fillJar(), // 2
  startPiece(OTHER), // 3
  describeZone(), // 4
  photograph(PHOTO), // 5
  photograph(SECOND), // 6
  describeZone(LID, OTHER), // 7
  photograph(FOREIGN, OTHER), // 8
  { kind: 'piece-closed', piece: OTHER } as const, // 9
  white, // 10
  layCoat(), // 11
].map((body, n) => entry(n + 1, body));
const groundOf = (body: EntryBody, ...more: readonly Entry[]) => {
  const admitted = admit(entry(60, body), fold([...BENCH, ...more]), A_YEAR_ON_MS);
  return admitted.ok ? 'ok' : admitted.failure.kind;
};

describe('what is said of places and photos fits the piece, finished or not', () => {
  test.each<readonly [what: string, body: EntryBody, is: string]>([
    ['a place', describeZone(NOWHERE), 'ok'],
    ['a place on a finished piece', describeZone(NOWHERE, OTHER), 'ok'],
    ['a place on no piece', describeZone(NOWHERE, NOWHERE), 'unknown-piece'],
    ['an outline', draw(), 'ok'],
    ['an outline on no piece', draw({ piece: NOWHERE }), 'unknown-piece'],
    ['an outline on no photo', draw({ photo: NOWHERE }), 'unknown-photo'],
    ['an outline on the photo of another piece', draw({ photo: FOREIGN }), 'unknown-photo'],
    ['an outline that crosses itself', draw({ outline: BOW_TIE }), 'outline-crosses'],
    ['an outline of no place', draw({ zoneId: NOWHERE }), 'unknown-zone'],
    ['an outline of a place on another piece', draw({ zoneId: LID }), 'unknown-zone'],
    ['a photo', photograph(NOWHERE), 'ok'],
    ['a photo of a finished piece', photograph(NOWHERE, OTHER), 'ok'],
    ['a photo of no piece', photograph(NOWHERE, NOWHERE), 'unknown-piece'],
    ['a photo by a double tap', photograph(PHOTO), 'photo-there-already'],
    ['two photos laid over each other', align(), 'ok'],
    ['photos of no piece', align(PHOTO, SECOND, NOWHERE), 'unknown-piece'],
    ['no photo under the other', align(NOWHERE, SECOND), 'unknown-photo'],
    ['no photo over the other', align(PHOTO, NOWHERE), 'unknown-photo'],
    ['a note', note(), 'ok'],
    ['a note on no piece', note(NOWHERE), 'unknown-piece'],
    ['a note on a place', note(PIECE, EDGE), 'ok'],
    ['a note on a place of another piece', note(PIECE, LID), 'unknown-zone'],
    ['wording of no piece', { kind: 'record-worded', piece: NOWHERE }, 'unknown-piece'],
    ['a toner', tone(), 'ok'],
    ['a toner on no piece', tone(NOWHERE), 'unknown-piece'],
    ['a toner from no jar', tone(PIECE, NOWHERE), 'unknown-jar'],
    ['a coat on a place', onZone(layCoat()), 'ok'],
    ['a coat on a place of another piece', onZone(layCoat(), LID), 'unknown-zone'],
    ['a match for a place', matchOn({ piece: PIECE, zoneId: EDGE }), 'ok'],
    ['a match for no place', matchOn({ piece: PIECE, zoneId: NOWHERE }), 'unknown-zone'],
    ['it was on a place of its piece', correct(id(11), { zoneId: EDGE }), 'ok'],
    ['it was on a place of another piece', correct(id(11), { zoneId: LID }), 'unknown-zone'],
    ['it was on another piece, on its place', correct(id(11), { piece: OTHER, zoneId: LID }), 'ok'],
    [
      'it was on another piece, on a place of this one',
      correct(id(11), { piece: OTHER, zoneId: EDGE }),
      'unknown-zone',
    ],
    ['a place was on another piece', correct(id(4), { piece: OTHER, zoneId: EDGE }), 'not-correctable'],
    ['a place was another', correct(id(4), { zoneId: LID }), 'not-correctable'],
    ['a match for a place that names no piece', matchOn({ zoneId: EDGE }), 'ok'],
  ])('%s: %s', (_, body, is) => expect(groundOf(body)).toBe(is));
});

describe('what is undone takes the ground from no work on a place; what was drawn of it goes with it', () => {
  const drawn = entry(20, draw());
  const coated = entry(20, onZone(layCoat()));
  test.each<readonly [what: string, n: number, more: readonly Entry[], is: string]>([
    ['a place with nothing on it', 4, [], 'ok'],
    ['a place that is outlined', 4, [drawn], 'ok'],
    ['a place with a coat on it', 4, [coated], 'still-used'],
    ['a place with a coat and an outline', 4, [coated, entry(21, draw())], 'still-used'],
    ['a place whose coat was undone', 4, [coated, entry(22, strike(id(20)))], 'ok'],
    ['a place with a photo of it', 4, [entry(20, onZone(photograph(NOWHERE)))], 'still-used'],
    [
      'a place while another has a coat',
      4,
      [entry(20, describeZone(LID)), entry(21, onZone(layCoat(), LID))],
      'ok',
    ],
    ['one description of a place that has another', 4, [coated, entry(23, describeZone())], 'ok'],
    ['a place, where only another has two', 4, [coated, entry(23, describeZone(LID))], 'still-used'],
    [
      'the last description that stands',
      4,
      [coated, entry(23, describeZone()), entry(24, strike(id(23)))],
      'still-used',
    ],
    ['a check on the place', 20, [entry(20, onZone(check()))], 'ok'],
    ['a photo', 5, [], 'ok'],
    ['a photo with an outline', 5, [drawn], 'ok'],
    ['a photo under another', 5, [entry(21, align())], 'ok'],
  ])('%s: %s', (_, n, more, is) => expect(groundOf(strike(id(n)), ...more)).toBe(is));

  test('a correction goes by the piece that it was on last', () => {
    const moved = entry(20, correct(id(11), { piece: OTHER }));
    expect(groundOf(correct(id(11), { zoneId: LID }), moved)).toBe('ok');
    expect(groundOf(correct(id(11), { zoneId: EDGE }), moved)).toBe('unknown-zone');
  });

  test('a photo with an outline may have been of another piece', () =>
    expect(groundOf(correct(id(5), { piece: OTHER }), drawn)).toBe('ok'));
});
