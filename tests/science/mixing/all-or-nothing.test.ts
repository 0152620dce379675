import { describe, expect, test } from 'vitest';
import { composition, mixSolvents } from '../../../src/science/mixing/composition';
import { expressed } from '../../../src/science/mixing/expressed';
import type { Ingredient } from '../../../src/science/mixing/ingredient';
import { mixPigmentOfSolids, pigmentOfCritical } from '../../../src/science/mixing/mix-pigment';
import { volumeSolidsOf, weightSolidsOf } from '../../../src/science/mixing/solids';
import { vocContent } from '../../../src/science/mixing/voc';
import { solvent } from '../../../src/science/solvents/solvents';
import { got } from './any-mix';

const of = (name: 'acetone' | 'toluene') => [{ solvent: solvent(name), volume: 2 }];
const SHELF: readonly Ingredient[] = [
  { id: 'powder', kind: 'flatting', densityKgM3: 2000, volumeSolids: 1, weightSolids: 1 },
  {
    id: 'clear',
    kind: 'clear',
    densityKgM3: 950,
    volumeSolids: 0.2,
    weightSolids: 0.25,
    solvents: of('toluene'),
  },
  { id: 'acetone', kind: 'thinner', densityKgM3: 792.3, solvents: of('acetone') },
  { id: 'unknown', kind: 'thinner' },
];
const ingredients = new Map(SHELF.map((each) => [each.id, each]));
/** A litre of each. */
const mixOf = (...ids: string[]) =>
  got(
    composition(
      ids.map((id) => ({ ingredient: id, massKg: (ingredients.get(id)?.densityKgM3 ?? 1000) * 1e-3 })),
      ingredients,
    ),
  );

describe('solids that are all or nothing need no other fact', () => {
  test.each<Omit<Ingredient, 'id'>>([
    { kind: 'thinner' },
    { kind: 'retarder' },
    { kind: 'dye', volumeSolids: 0 },
    { kind: 'dye', weightSolids: 0 },
  ])('%o leaves nothing', (facts) => {
    expect(got(volumeSolidsOf({ id: 'x', ...facts }))).toBe(0);
    expect(got(weightSolidsOf({ id: 'x', ...facts }))).toBe(0);
  });

  test.each([
    { facts: {}, kind: 'no-solids' },
    { facts: { volumeSolids: 0.2 }, kind: 'no-density' },
    { facts: { volumeSolids: 0.2, densityKgM3: 950 }, kind: 'no-solvents' },
  ])('of a clear with $facts the weight solids lack: $kind', ({ facts, kind }) => {
    expect(weightSolidsOf({ id: 'x', kind: 'clear', ...facts })).toEqual({
      ok: false,
      failure: { kind, ingredient: 'x' },
    });
  });
});

describe('a mix of what gives nothing off and what gives all off', () => {
  test('a dry powder has no solvents, and none need be known', () => {
    expect(got(mixSolvents(mixOf('powder')))).toEqual([]);
    expect(got(mixSolvents(mixOf('powder', 'acetone')))).toEqual([
      { solvent: solvent('acetone'), volume: expect.closeTo(1e-3, 12) },
    ]);
    expect(mixSolvents(mixOf('unknown'))).toMatchObject({ ok: false });
  });

  test('a powder gives no VOC off, and lowers that of what it lies in', () => {
    expect(got(vocContent(mixOf('powder')))).toEqual({ lessExemptKgM3: 0, actualKgM3: 0 });
    // A litre of clear gives off 0.75 of 950 g; with as much powder it is spread over two.
    expect(got(vocContent(mixOf('clear', 'powder')))).toEqual({
      lessExemptKgM3: expect.closeTo(356.25, 6),
      actualKgM3: expect.closeTo(356.25, 6),
    });
  });

  test('acetone alone counts as no VOC at all', () => {
    expect(got(vocContent(mixOf('acetone')))).toEqual({ lessExemptKgM3: 0, actualKgM3: 0 });
  });

  test('a mix that leaves no film, or no pigment in it, has a pigment share of nothing', () => {
    for (const ids of [['acetone'], ['clear'], ['clear', 'acetone'], ['unknown', 'clear']]) {
      expect(got(mixPigmentOfSolids(mixOf(...ids)))).toBe(0);
      expect(got(pigmentOfCritical(mixOf(...ids)))).toBe(0);
    }
  });

  test('a flatting agent of unknown pigment says so', () => {
    const failure = { kind: 'no-pigment-share', ingredient: 'powder' };
    expect(mixPigmentOfSolids(mixOf('clear', 'powder'))).toEqual({ ok: false, failure });
  });
});

test('a clear that is said to hold pigment holds it, and a tinter that leaves no film holds none', () => {
  const shelf: readonly Ingredient[] = [
    {
      id: 'matt',
      kind: 'clear',
      densityKgM3: 1000,
      volumeSolids: 0.2,
      pigmentOfSolids: 0.1,
      criticalPigment: 0.5,
    },
    { id: 'ink', kind: 'tinter', densityKgM3: 1000, volumeSolids: 0 },
  ];
  const mix = shelf.map((ingredient) => ({ ingredient, massKg: 1 }));
  expect(got(mixPigmentOfSolids(mix))).toBeCloseTo(0.1, 12);
  expect(got(pigmentOfCritical(mix))).toBeCloseTo(0.2, 12);
});

describe('a share or part of a batch', () => {
  const half = [
    { ingredient: 'acetone', massKg: 1 },
    { ingredient: 'clear', massKg: 2 },
    { ingredient: 'deleted', massKg: 1 },
  ];
  test('is counted in the first line, lacquer or not', () => {
    expect(got(expressed(half, 1, { unit: 'parts', by: 'mass' }, ingredients)).value).toBe(2);
  });
  test('of the lacquer leaves out what nobody knows any more', () => {
    expect(got(expressed(half, 0, { unit: 'share', of: 'lacquer', by: 'mass' }, ingredients)).value).toBe(
      0.5,
    );
  });
});

test.each([
  { line: 9, of: 'mix', failure: { kind: 'empty' } },
  { line: 0, of: 'lacquer', failure: { kind: 'no-lacquer' } },
] as const)('line $line has no share of the $of: $failure.kind', ({ line, of: what, failure }) => {
  const batch = [{ ingredient: 'acetone', massKg: 1 }];
  expect(expressed(batch, line, { unit: 'share', of: what, by: 'mass' }, ingredients)).toEqual({
    ok: false,
    failure,
  });
});
