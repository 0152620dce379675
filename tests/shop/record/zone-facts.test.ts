import { describe, expect, test } from 'vitest';
import { type EntryBody, type EntryOf, inItsVersion } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { zoneFacts } from '../../../src/shop/record/zone-facts';
import { standById } from '../../../src/shop/zone/stands';
import { entry, fillJar, id, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';

const CHIP = id(0xc1);
const OTHER_JAR = id(0xb2);
const TRACER = id(0xd1);
const CLEAR = id(0xd2);
const WEIGH_UP = id(0xd3);
const grams = (text: string) => ({ text, unit: 'g' }) as const;
const chip: EntryBody = {
  kind: 'zone-described',
  piece: PIECE,
  zoneId: CHIP,
  name: 'Lower edge',
  is: 'chip',
};
const filled = (jar: string, more: Partial<EntryOf<'jar-filled'>> = {}) =>
  ({ ...fillJar(jar), ...more }) as EntryBody;
const coat = (jar: string, zoneId?: string) =>
  ({ ...layCoat(PIECE, jar), ...(zoneId && { zoneId }) }) as EntryBody;

/** What the record says of the chip, or of the whole, after all this. */
function factsAt(stand: string, ...bodies: readonly EntryBody[]) {
  const entries = [startPiece(), chip, ...bodies].map((body, n) => inItsVersion(entry(n + 1, body)));
  const shop = fold(entries);
  return zoneFacts(standById(stand, shop) ?? expect.unreachable(), shop);
}

describe('what was laid at a place', () => {
  const bodies = [filled(JAR), coat(JAR), coat(JAR), coat(JAR, CHIP)];

  test('is its own, and of the whole what lies on all of it', () => {
    expect(factsAt(CHIP, ...bodies).own).toHaveLength(1);
    expect(factsAt(PIECE, ...bodies).own).toHaveLength(2);
  });

  test('is nothing that was sanded away: neither coat nor colour, tracer nor material', () => {
    const opaque = filled(OTHER_JAR, {
      pigment: { shareOfSolids: { text: '20', unit: '%' }, shape: 'grains' },
      tracerNm: 365,
    });
    const gone: EntryBody = {
      kind: 'sanded',
      piece: PIECE,
      zoneId: CHIP,
      stage: 'level',
      removed: { text: '40', unit: 'um' },
    };
    const facts = factsAt(CHIP, filled(JAR), opaque, coat(OTHER_JAR, CHIP), gone, coat(JAR, CHIP));
    expect(facts).toMatchObject({ sandedOff: 1, colour: 'untouched', tracers: [] });
    expect(facts.own.map(({ jar }) => jar)).toEqual([JAR]);
    expect(facts.materials.map(({ jar }) => jar.id)).toEqual([JAR]);
  });

  // Found by the fill of a chip: eight drops were laid, levelling took the last two, and the record told of six.
  test('is all that was laid where levelling took only the last of it', () => {
    const levelled: EntryBody = {
      kind: 'sanded',
      piece: PIECE,
      stage: 'level',
      removed: { text: '20', unit: 'um' },
    };
    const three = [filled(JAR), coat(JAR), coat(JAR), coat(JAR)];
    const { own, sandedOff } = factsAt(PIECE, ...three, levelled);
    expect([own.length, sandedOff]).toEqual([3, 0]);
    const toTheWood: EntryBody = { ...levelled, removed: { text: '200', unit: 'um' } };
    const again = factsAt(PIECE, ...three, toTheWood, coat(JAR));
    expect([again.own.length, again.sandedOff]).toEqual([1, 3]);
  });

  test('leaves the colour untouched where it is clear', () => {
    expect(factsAt(CHIP, ...bodies).colour).toBe('untouched');
  });

  test('covers the colour where it is pigmented, there alone', () => {
    const opaque = filled(OTHER_JAR, {
      pigment: { shareOfSolids: { text: '20', unit: '%' }, shape: 'grains' },
    });
    const all = [...bodies, opaque, coat(OTHER_JAR, CHIP)];
    expect(factsAt(CHIP, ...all).colour).toBe('opaque');
    expect(factsAt(PIECE, ...all).colour).toBe('untouched');
  });

  test('brings the colour on where it is a toner', () => {
    const toner: EntryBody = {
      kind: 'toner-described',
      piece: PIECE,
      zoneId: CHIP,
      toner: id(0xe1),
      jar: OTHER_JAR,
      white: 'D65/10',
    };
    const all = [...bodies, filled(OTHER_JAR), toner, coat(OTHER_JAR, CHIP)];
    expect(factsAt(CHIP, ...all).colour).toBe('toned');
  });
});

/** A jar weighed up from a clear and an ingredient that fluoresces. */
const weighed: readonly EntryBody[] = [
  { kind: 'ingredient-described', ingredient: CLEAR, name: 'Clear gloss', is: 'clear', lot: '7-B' },
  { kind: 'ingredient-described', ingredient: TRACER, name: 'Tracer', is: 'dye', tracerNm: 365 },
  {
    kind: 'weigh-up-begun',
    weighUp: WEIGH_UP,
    recipe: id(0xd4),
    plan: [
      { ingredient: CLEAR, massKg: 0.05 },
      { ingredient: TRACER, massKg: 0.0002 },
    ],
    division: grams('0.01'),
    isTared: true,
  },
  { kind: 'poured', weighUp: WEIGH_UP, line: 0, scale: grams('50.12') },
  { kind: 'poured', weighUp: WEIGH_UP, line: 1, scale: grams('0.21') },
  filled(JAR, { weighUp: WEIGH_UP }),
];

describe('a tracer', () => {
  test('is followed from the ingredient to the coat, counted from the bottom of the film there', () => {
    const { tracers } = factsAt(CHIP, filled(OTHER_JAR), coat(OTHER_JAR), ...weighed, coat(JAR, CHIP));
    expect(tracers).toEqual([{ coat: 2, nm: 365 }]);
  });

  test('goes on with the jar that its jar was poured into', () => {
    const both = filled(OTHER_JAR, { boxedFrom: [{ jar: JAR, volume: { text: '10', unit: 'mL' } }] });
    expect(factsAt(PIECE, ...weighed, both, coat(OTHER_JAR)).tracers).toEqual([{ coat: 1, nm: 365 }]);
  });

  test('is looked for with an end, where a log says of two jars that each was poured into the other', () => {
    const poured = (jar: string) => ({ boxedFrom: [{ jar, volume: { text: '10', unit: 'mL' } as const }] });
    const round = [filled(JAR, poured(OTHER_JAR)), filled(OTHER_JAR, poured(JAR))];
    expect(factsAt(PIECE, ...round, coat(JAR)).tracers).toEqual([]);
  });

  test('that the jar was filled with is told at once; a jar without one tells of none', () => {
    expect(factsAt(PIECE, filled(JAR, { tracerNm: 254 }), coat(JAR)).tracers).toEqual([{ coat: 1, nm: 254 }]);
    expect(factsAt(PIECE, filled(JAR), coat(JAR)).tracers).toEqual([]);
  });
});

test('materials are told in the grams that the scale showed, with their lot, each jar once', () => {
  const { materials } = factsAt(PIECE, ...weighed, coat(JAR), coat(JAR));
  expect(materials).toHaveLength(1);
  expect(materials[0]?.weighed.map(({ name, grams: g, lot }) => [name, g.toFixed(2), lot])).toEqual([
    ['Clear gloss', '50.12', '7-B'],
    ['Tracer', '0.21', undefined],
  ]);
});
