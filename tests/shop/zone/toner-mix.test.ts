import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { tonerMix } from '../../../src/shop/zone/toner-mix';
import { fillJar, id, inTurn, JAR } from '../../logbook/entries';

const [LACQUER, THINNER, DYE, RECIPE, WEIGH_UP] = [0xd1, 0xd2, 0xd3, 0xd4, 0xd5].map(id) as [
  string,
  string,
  string,
  string,
  string,
];
const fact = (text: string, unit: string) => ({ value: { text, unit }, from: 'measured' });
const ingredient = (of: string, is: string, density: string, more: object = {}): EntryBody =>
  ({
    kind: 'ingredient-described',
    ingredient: of,
    name: is,
    is,
    density: fact(density, 'g/mL'),
    ...more,
  }) as EntryBody;
const grams = (text: string) => ({ text, unit: 'g' }) as const;
const PARTS = [
  [LACQUER, '23.75'], // 25 mL at 0.95
  [THINNER, '63.325'], // 74.5 mL at 0.85
  [DYE, '0.5'], // 0.5 mL at 1
] as const;
const weighed: EntryBody[] = [
  {
    kind: 'weigh-up-begun',
    weighUp: WEIGH_UP,
    recipe: RECIPE,
    plan: PARTS.map(([of, mass]) => ({ ingredient: of, massKg: Number(mass) / 1000 })),
    isTared: true,
    division: grams('0.01'),
  },
  ...PARTS.map(
    ([, mass], line) => ({ kind: 'poured', weighUp: WEIGH_UP, line, scale: grams(mass) }) as EntryBody,
  ),
  { ...fillJar(), weighUp: WEIGH_UP } as EntryBody,
];
const mixWith = (dye: object, rest = weighed) => {
  const bodies = [
    ingredient(LACQUER, 'clear', '0.95'),
    ingredient(THINNER, 'thinner', '0.85'),
    ingredient(DYE, 'dye', '1', dye),
    ...rest,
  ];
  return tonerMix(JAR, fold(bodies.map(inTurn)));
};

describe('what a toner holds', () => {
  // By hand: 25 mL of 100 mL is a quarter; 0.5 mL at 0.03 mL a drop is 16.7 drops.
  test('is told of a jar that was weighed up: its lacquer, and its dye by drops of its bottle', () => {
    const { share, doses } = mixWith({ dropVolume: fact('0.03', 'mL') });
    expect(share).toBeCloseTo(0.25, 6);
    expect(doses).toHaveLength(1);
    expect(doses[0]).toMatchObject({ name: 'dye', drops: 17 });
    expect((doses[0]?.volumeM3 ?? 0) * 1e6).toBeCloseTo(0.5, 6);
  });

  test('leaves out a dye that was not poured, and one whose density nobody knows', () => {
    const notPoured = weighed.filter((body) => body.kind !== 'poured' || body.line !== 2);
    expect(mixWith({}, notPoured).doses).toEqual([]);
    const bodies = [
      ingredient(LACQUER, 'clear', '0.95'),
      ingredient(THINNER, 'thinner', '0.85'),
      { kind: 'ingredient-described', ingredient: DYE, name: 'dye', is: 'dye' } as EntryBody,
      ...weighed,
    ];
    expect(tonerMix(JAR, fold(bodies.map(inTurn))).doses).toEqual([]);
  });

  test('names no drops of a bottle whose drop nobody measured', () => {
    expect(mixWith({}).doses[0]?.drops).toBeUndefined();
  });

  // By hand: thinned by half of the lacquer, lacquer is 1 / 1.5 of the mix.
  test('is told by its thinning where the jar was filled by hand', () => {
    const { share, doses } = mixWith({}, [fillJar()]);
    expect(share).toBeCloseTo(2 / 3, 9);
    expect(doses).toEqual([]);
  });

  test('is not guessed of two jars poured together', () => {
    const boxed = { ...fillJar(), boxedFrom: [] } as EntryBody;
    expect(mixWith({}, [boxed])).toEqual({ share: undefined, doses: [] });
  });
});
