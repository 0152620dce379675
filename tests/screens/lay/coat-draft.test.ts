import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { passesProblem } from '../../../src/parts/fields/passes-field';
import {
  type CoatDraft,
  fieldOf,
  filmSaid,
  isFilmWhole,
  prefilled,
  standOfCoat,
  wayOf,
  waysToSay,
} from '../../../src/screens/lay/coat-draft';
import { lastRound } from '../../../src/screens/lay/same-round';
import { fillJar, id, JAR, layCoat, PIECE } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';

const passes: EntryBody = {
  ...layCoat(),
  film: { by: 'passes', passes: 4, perPass: { text: '1,1', unit: 'mil' } },
} as EntryBody;

const NOTHING = { pieces: [], jar: null };
const OTHER_JAR = id(0xb2);

const first = (more: Partial<CoatDraft> = {}): CoatDraft => ({
  ...prefilled(aShop().shop, NOTHING, 'metric'),
  ...more,
});

describe('what is filled in before a word is said', () => {
  test('a shop without a coat gets a full sprayed coat on its piece, from its jar', () => {
    expect(first()).toMatchObject({ piece: PIECE, jar: JAR, how: 'spray', by: 'wet' });
  });

  test('all is as last time, as it was typed', () => {
    const draft = prefilled(aShop({ hour: 1, body: passes }).shop, NOTHING, 'metric');
    expect(draft).toMatchObject({ by: 'passes', passes: '4' });
    expect(filmSaid(draft)).toEqual({ by: 'passes', passes: 4, perPass: { text: '1,1', unit: 'mil' } });
  });

  test('a half pass of a toner is asked for whole, with its film', () => {
    const asked = { ...NOTHING, how: 'spray', passes: '0.5', wetUm: '12' };
    const draft = prefilled(aShop({ hour: 1, body: layCoat() }).shop, asked, 'us');
    expect(isFilmWhole(draft)).toBe(true);
    expect(filmSaid(draft)).toEqual({ by: 'passes', passes: 0.5, perPass: { text: '12', unit: 'um' } });
  });

  test('a piece or jar that is not there falls back to the last one', () => {
    const draft = prefilled(aShop().shop, { pieces: ['gone'], jar: 'gone' }, 'us');
    expect(draft).toMatchObject({ piece: PIECE, jar: JAR });
  });

  test('the jar asked for comes before the one used last', () => {
    const { shop } = aShop({ hour: 1, body: layCoat() }, { hour: 2, body: fillJar(OTHER_JAR) });
    expect(prefilled(shop, NOTHING, 'metric').jar).toBe(JAR);
    expect(prefilled(shop, { pieces: [], jar: OTHER_JAR }, 'metric').jar).toBe(OTHER_JAR);
  });
});

test.each([
  { what: 'the whole piece', zone: undefined, coats: 1 },
  { what: 'a place, with those on the whole', zone: id(0xd1), coats: 2 },
  { what: 'another place', zone: id(0xd2), coats: 1 },
])('the coats so far are counted on $what, as its history counts them', ({ zone, coats }) => {
  const place = (zoneId: string, name: string): EntryBody => ({
    kind: 'zone-described',
    is: 'chip',
    zoneId,
    piece: PIECE,
    name,
  });
  const bodies = [layCoat(), place(id(0xd1), 'Top'), place(id(0xd2), 'Side')];
  const onTop = { ...layCoat(), zoneId: id(0xd1) } as EntryBody;
  const { shop } = aShop(...[...bodies, onTop].map((body, n) => ({ hour: n + 1, body })));
  expect(standOfCoat(first({ zone }), shop)?.coats).toHaveLength(coats);
  expect(standOfCoat(first({ piece: 'gone', zone: undefined }), shop)).toBeUndefined();
});

describe('a jar that was not used before', () => {
  const filled = (more: object): EntryBody => ({ ...fillJar(OTHER_JAR), ...more }) as EntryBody;
  const shellac = filled({ product: { finish: 'shellac', volumeSolids: { text: '17', unit: '%' } } });
  const asked = { ...NOTHING, jar: OTHER_JAR };

  test('is padded where it is shellac, and sprayed by passes where it is a can', () => {
    const can = filled({ contains: ['aerosol'] });
    expect(prefilled(aShop({ hour: 1, body: shellac }).shop, asked, 'us')).toMatchObject({ how: 'pad' });
    expect(prefilled(aShop({ hour: 1, body: can }).shop, asked, 'us')).toMatchObject({
      how: 'spray',
      by: 'passes',
    });
  });

  test('is asked about oil on the pad once', () => {
    const padded = { ...layCoat(PIECE, OTHER_JAR), how: 'pad', oil: true } as EntryBody;
    const before = aShop({ hour: 1, body: shellac });
    const after = aShop({ hour: 1, body: shellac }, { hour: 2, body: padded });
    expect(prefilled(before.shop, asked, 'us').oil).toBeUndefined();
    expect(prefilled(after.shop, asked, 'us').oil).toBe(true);
  });
});

test.each([
  { how: 'spray', ways: ['wet', 'passes', 'usual'] },
  { how: 'brush-fill', ways: ['usual', 'wet'] },
  { how: 'flash', ways: ['wet'] },
] as const)('$how is told by $ways', ({ how, ways }) => {
  expect(waysToSay(how)).toEqual(ways);
  expect(ways).toContain(wayOf(first({ how, by: 'passes' })));
});

test('changing the way and back keeps what was typed', () => {
  const typed = { ...first().films, coat: { text: '101', unit: 'um' } as const };
  const draft = first({ films: typed, how: 'flash' });
  expect(filmSaid({ ...draft, how: 'spray' })).toEqual({ by: 'wet', wetFilm: { text: '101', unit: 'um' } });
  expect(fieldOf('flash', 'wet')).not.toBe(fieldOf('spray', 'wet'));
});

test.each([
  { text: '1', isWhole: true },
  { text: '50', isWhole: true },
  { text: '51', isWhole: false },
  { text: '0', isWhole: false },
  { text: '2.5', isWhole: true },
  { text: '½', isWhole: true },
  { text: '0.4', isWhole: false },
  { text: '2.25', isWhole: false },
  { text: '', isWhole: false },
])('$text passes: $isWhole', ({ text, isWhole }) => {
  expect(passesProblem(text) === undefined).toBe(isWhole);
  expect(isFilmWhole(first({ by: 'passes', passes: text }))).toBe(isWhole);
});

test.each([
  { text: '85', isWhole: true },
  { text: '1000', isWhole: true },
  { text: '1001', isWhole: false }, // the limit of wet film is 1000 um
  { text: '-5', isWhole: false },
  { text: 'eighty', isWhole: false },
])('a wet film of "$text": $isWhole', ({ text, isWhole }) => {
  expect(isFilmWhole(first({ films: { ...first().films, coat: { text, unit: 'um' } } }))).toBe(isWhole);
});

const OTHER_PIECE = id(0xa2);

test('the pieces of a reminder are ticked together; what is not on the bench is left out', () => {
  const { shop } = aShop({
    hour: 0,
    body: { kind: 'piece-started', piece: OTHER_PIECE, name: 'Lid', base: 'sealed' },
  });
  const draft = prefilled(shop, { pieces: [PIECE, OTHER_PIECE, 'gone'], jar: null }, 'metric');
  expect(draft).toMatchObject({ piece: PIECE, also: [OTHER_PIECE] });
});

// Common practice, no source: shellac goes on by pad, 1-3 um a session; the rest is sprayed.
test('a first coat of shellac is padded, and told by what is dry', () => {
  const jar = fillJar() as Extract<EntryBody, { kind: 'jar-filled' }>;
  const { shop } = aShop({
    hour: 0,
    body: { ...jar, jar: OTHER_JAR, product: { ...jar.product, finish: 'shellac' } } as EntryBody,
  });
  const draft = prefilled(shop, { pieces: [], jar: OTHER_JAR }, 'metric');
  expect(draft).toMatchObject({ how: 'pad', by: 'usual' });
  expect(filmSaid(draft)).toEqual({ by: 'usual', dryFilm: { text: '2', unit: 'um' } });
});

const round = (piece: string, hour: number, more = {}) => ({
  hour,
  body: { ...layCoat(piece), ...more } as EntryBody,
});
const other = {
  hour: 0,
  body: { kind: 'piece-started', piece: OTHER_PIECE, name: 'Lid', base: 'sealed' } as EntryBody,
};

test.each([
  {
    what: 'follow each other',
    coats: [round(PIECE, 1), round(OTHER_PIECE, 1.25)],
    are: [OTHER_PIECE, PIECE],
  },
  { what: 'are half an hour apart', coats: [round(PIECE, 1), round(OTHER_PIECE, 1.5)], are: [OTHER_PIECE] },
  {
    what: 'went on in another way',
    coats: [round(PIECE, 1, { how: 'brush' }), round(OTHER_PIECE, 1.1)],
    are: [OTHER_PIECE],
  },
  { what: 'are not there', coats: [], are: [] },
])('coats that $what: the last round is of $are.length pieces', ({ coats, are }) => {
  expect(lastRound(aShop(other, ...coats).shop)).toEqual(are);
});
