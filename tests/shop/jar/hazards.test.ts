import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { cautionsFor } from '../../../src/reminders/cautions';
import { jarHazards } from '../../../src/shop/jar/hazards';
import { entry, fillJar, id, JAR } from '../../logbook/entries';

type Described = Extract<EntryBody, { kind: 'ingredient-described' }>;
type Filled = Extract<EntryBody, { kind: 'jar-filled' }>;

const describeOne = (n: number, more: Partial<Described> = {}): Described => ({
  kind: 'ingredient-described',
  ingredient: id(n),
  name: `Ingredient ${n}`,
  is: 'clear',
  ...more,
});
const percent = (text: string) => ({ text, unit: '%' }) as const;
const waterJar = (jar: string, more: Partial<Filled> = {}): Filled => ({
  ...(fillJar(jar) as Filled),
  product: { finish: 'waterborne', volumeSolids: percent('30') },
  thinner: { name: 'Water', blend: [{ solvent: 'water', share: 1 }] },
  ...more,
});
const RECIPE = id(0xd1);
const WEIGH_UP = id(0xd2);
const weighed = (...ingredients: number[]): EntryBody[] => [
  { kind: 'recipe-written', recipe: RECIPE, name: 'Mix', use: { as: 'clear' }, lines: [] as never },
  {
    kind: 'weigh-up-begun',
    weighUp: WEIGH_UP,
    recipe: RECIPE,
    plan: ingredients.map((n) => ({ ingredient: id(n), massKg: 0.1 })),
    division: { text: '0.1', unit: 'g' },
    isTared: false,
  },
];

const hazardsIn = (bodies: readonly EntryBody[]) => {
  const shop = fold(bodies.map((body, n) => entry(n + 1, body) as Entry));
  const jar = shop.jars.get(JAR);
  if (!jar) throw new Error('The jar is not there.');
  return jarHazards(jar, shop);
};
const HARDENER: Partial<Described> = { contains: ['isocyanate'] };
const madeOf = (n: number) => ({ madeOf: [{ ingredient: id(n), massFraction: 1 }] });

describe('isocyanate is found, however it was mixed:', () => {
  test.each<{ how: string; bodies: EntryBody[] }>([
    {
      how: 'as the kind of finish',
      bodies: [waterJar(JAR, { product: { finish: 'urethane', volumeSolids: percent('30') } })],
    },
    { how: 'as said of the jar', bodies: [waterJar(JAR, { contains: ['isocyanate'] })] },
    {
      how: 'as an ingredient weighed in',
      bodies: [
        describeOne(1),
        describeOne(2, HARDENER),
        ...weighed(1, 2),
        waterJar(JAR, { weighUp: WEIGH_UP }),
      ],
    },
    {
      how: 'as an ingredient of a urethane',
      bodies: [describeOne(1, { finish: 'urethane' }), ...weighed(1), waterJar(JAR, { weighUp: WEIGH_UP })],
    },
    {
      how: 'let down twice before',
      bodies: [
        describeOne(1, HARDENER),
        describeOne(2, madeOf(1)),
        describeOne(3, madeOf(2)),
        ...weighed(3),
        waterJar(JAR, { weighUp: WEIGH_UP }),
      ],
    },
    {
      how: 'poured in from another jar',
      bodies: [
        waterJar(id(0xb2), { contains: ['isocyanate'] }),
        waterJar(JAR, { boxedFrom: [{ jar: id(0xb2), volume: { text: '100', unit: 'mL' } }] }),
      ],
    },
    {
      how: 'by the name on its can alone',
      bodies: [
        describeOne(1, { name: 'HDI isocyanate part B' }),
        ...weighed(1),
        waterJar(JAR, { weighUp: WEIGH_UP }),
      ],
    },
  ])('$how', ({ bodies }) => {
    expect(hazardsIn(bodies)).toContain('isocyanate');
    expect(cautionsFor('spray', hazardsIn(bodies), ['isocyanate']).map(({ id: one }) => one)).toContain(
      'isocyanate',
    );
  });

  test('at any depth of let-downs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), (depth) => {
        const chain = Array.from({ length: depth }, (_, n) => describeOne(n + 2, madeOf(n + 1)));
        const bodies = [
          describeOne(1, HARDENER),
          ...chain,
          ...weighed(depth + 1),
          waterJar(JAR, { weighUp: WEIGH_UP }),
        ];
        expect(hazardsIn(bodies)).toContain('isocyanate');
      }),
      { numRuns: 20 },
    );
  });

  test('even where one of the jars poured together is not in this logbook', () => {
    const volume = { text: '100', unit: 'mL' } as const;
    const boxedFrom = [
      { jar: id(0xb8), volume },
      { jar: id(0xb2), volume },
    ];
    const bodies = [waterJar(id(0xb2), { contains: ['isocyanate'] }), waterJar(JAR, { boxedFrom })];
    expect(hazardsIn(bodies)).toContain('isocyanate');
  });

  test('even where jars were poured into each other', () => {
    const from = (jar: string) => ({ boxedFrom: [{ jar, volume: { text: '9', unit: 'mL' } as const }] });
    const bodies = [
      waterJar(id(0xb2), { ...from(JAR), contains: ['isocyanate'] }),
      waterJar(JAR, from(id(0xb2))),
    ];
    expect(hazardsIn(bodies)).toContain('isocyanate');
  });

  test('even where ingredients are made of each other in a ring', () => {
    const ring = [describeOne(1, madeOf(2)), describeOne(2, { ...madeOf(1), ...HARDENER })];
    expect(hazardsIn([...ring, ...weighed(1), waterJar(JAR, { weighUp: WEIGH_UP })])).toContain('isocyanate');
  });
});

describe('a finish brings its own', () => {
  test.each([
    { finish: 'nitrocellulose', brings: ['solvent', 'nitrocellulose'] },
    { finish: 'conversion', brings: ['solvent', 'acid'] },
    { finish: 'precatalysed', brings: ['solvent', 'acid'] },
    { finish: 'shellac', brings: ['solvent'] },
    { finish: 'waterborne', brings: [] },
  ] as const)('$finish: $brings', ({ finish, brings }) => {
    const found = hazardsIn([waterJar(JAR, { product: { finish, volumeSolids: percent('30') } })]);
    expect([...found].sort()).toEqual([...brings].sort());
  });

  test('a waterborne thinned with an organic solvent holds solvent', () => {
    const thinner = { name: 'Alcohol', blend: [{ solvent: 'ethanol', share: 1 }] };
    expect(hazardsIn([waterJar(JAR, { thinner })])).toEqual(['solvent']);
  });
});

describe('a can under pressure is known by what was said of it', () => {
  test.each([
    { what: 'its name', more: { name: 'Clear, spray can' }, isAerosol: true },
    { what: 'another name', more: { name: 'Aerosol gloss' }, isAerosol: true },
    { what: 'a tick', more: { contains: ['aerosol'] as const }, isAerosol: true },
    { what: 'nothing', more: { name: 'Clear, sprayed' }, isAerosol: false },
  ])('$what: $isAerosol', ({ more, isAerosol }) => {
    expect(hazardsIn([waterJar(JAR, more)]).includes('aerosol')).toBe(isAerosol);
  });
});
