import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { jarFilm, thinnerShares, withoutRetarder } from '../../../src/shop/jar/film';
import { dryFilmM } from '../../../src/shop/stack/stack-events';
import { entry, fillJar, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';
import published from '../../reference/film.json';

type JarBody = Extract<EntryBody, { kind: 'jar-filled' }>;
const percent = (amount: number) => ({ text: String(amount), unit: '%' }) as const;

function jarOf(said: Partial<JarBody>) {
  const body = { ...fillJar(), ...said } as JarBody;
  const jar = fold([entry(1, body)]).jars.get(JAR);
  if (!jar) throw new Error('no jar');
  return jar;
}
const lacquer = (volumeSolids: number, more: Partial<JarBody['product']> = {}) => ({
  product: { finish: 'nitrocellulose', volumeSolids: percent(volumeSolids), ...more } as const,
});
const thinned = (of: 'lacquer' | 'mix', amount: number) => ({ thinning: { of, percent: percent(amount) } });
const retarded = (of: 'lacquer' | 'mix', amount: number) => ({
  retarder: { of, solvent: '2-butoxyethanol', percent: percent(amount) },
});

describe('volume solids of the mix', () => {
  test.each([
    // Source: worked scenario B, a competent finisher's expectation (common practice): 22 % thinned 1:0.5.
    { said: [lacquer(22), thinned('lacquer', 50)], solids: 0.14667 },
    // Source: film.json, computed independently: 22 % thinned 25 % by volume.
    { said: [lacquer(22), thinned('lacquer', 25)], solids: 0.176 },
    // By definition: a quarter of the mix is thinner.
    { said: [lacquer(22), thinned('mix', 25)], solids: 0.165 },
    // By definition: 10 % of the lacquer is 9.1 % of the mix (common practice), so 20/1.1.
    { said: [lacquer(20), thinned('lacquer', 10)], solids: 0.181818 },
    // By definition: 1 + 0.5 + 0.1 volumes of mix hold one of lacquer.
    { said: [lacquer(20), thinned('lacquer', 50), retarded('lacquer', 10)], solids: 0.125 },
    // By definition: thinner and retarder are 30 % and 10 % of the finished mix.
    { said: [lacquer(20), thinned('mix', 30), retarded('mix', 10)], solids: 0.12 },
    // By definition: 90 % of the mix is lacquer and half as much thinner, so 60 % lacquer.
    { said: [lacquer(20), thinned('lacquer', 50), retarded('mix', 10)], solids: 0.12 },
    { said: [lacquer(22), thinned('lacquer', 0)], solids: 0.22 },
  ])('$solids', ({ said, solids }) => {
    expect(jarFilm(jarOf(Object.assign({}, ...said))).volumeSolids).toBeCloseTo(solids, 5);
  });
});

describe('dry film of a coat', () => {
  const jar = jarOf({ ...lacquer(22), ...thinned('lacquer', 50) });
  const um = (amount: number) => ({ text: String(amount), unit: 'um' }) as const;
  const coat = (
    film: Extract<EntryBody, { kind: 'coat-laid' }>['film'],
    how: 'spray' | 'flash' = 'spray',
  ) => {
    const laid = { ...layCoat(), film, how } as EntryBody;
    const [found] = fold([entry(1, startPiece()), entry(2, laid)]).pieces.get(PIECE)?.coats ?? [];
    if (!found) throw new Error('no coat');
    return found;
  };
  test.each([
    // Source: worked scenario B: 85 um wet leave 12.5 um dry.
    { film: { by: 'wet', wetFilm: um(85) } as const, dryUm: 12.47 },
    { film: { by: 'passes', passes: 2, perPass: um(42.5) } as const, dryUm: 12.47 },
    { film: { by: 'usual', dryFilm: um(13) } as const, dryUm: 13 },
  ])('$film.by', ({ film, dryUm }) => {
    expect(dryFilmM(coat(film), jarFilm(jar)) * 1e6).toBeCloseTo(dryUm, 2);
    expect(dryFilmM(coat(film, 'flash'), jarFilm(jar))).toBe(0);
  });

  test('follows the published row of thinned lacquer', () => {
    const row = published.coverage.find(({ case: name }) => name.startsWith('lacquer 22 % volume solids'));
    const film = jarFilm(jarOf({ ...lacquer(22), ...thinned('lacquer', 25) }));
    expect(row?.unit).toBe('um dry');
    expect(dryFilmM(coat({ by: 'wet', wetFilm: um(100) }), film) * 1e6).toBeCloseTo(row?.value ?? 0, 6);
  });
});

describe('solvents', () => {
  test('of lacquer, thinner and retarder together, each once, by volume', () => {
    // By hand: 0.8 acetone from the lacquer, 0.25 + 0.25 from the thinner, 0.1 retarder; 1.4 in all.
    const film = jarFilm(
      jarOf({
        ...lacquer(20, { solvents: [{ solvent: 'acetone', share: 1 }] }),
        thinner: {
          name: 'Half',
          blend: [
            { solvent: 'acetone', share: 0.5 },
            { solvent: 'toluene', share: 0.5 },
          ],
        },
        ...thinned('lacquer', 50),
        ...retarded('lacquer', 10),
      }),
    );
    expect(film.ownSolvents).toBe('said');
    expect(Object.fromEntries(film.solvents.map(({ id, share }) => [id, share]))).toEqual({
      acetone: expect.closeTo(1.05 / 1.4, 9),
      toluene: expect.closeTo(0.25 / 1.4, 9),
      '2-butoxyethanol': expect.closeTo(0.1 / 1.4, 9),
    });
  });

  test('that nobody has named are the usual ones, and said to be', () => {
    const film = jarFilm(jarOf({ ...lacquer(15), ...thinned('lacquer', 0) }));
    expect(film.ownSolvents).toBe('common-practice');
    // Source: the blend of the design's estimator table (common practice, no source).
    expect(film.solvents.map(({ id, share }) => [id, Number(share.toFixed(9))])).toEqual([
      ['acetone', 0.25],
      ['mek', 0.1],
      ['toluene', 0.3],
      ['isobutyl-acetate', 0.2],
      ['n-butyl-acetate', 0.1],
      ['2-butoxyethanol', 0.05],
    ]);
  });

  test('of a newer app are named, and the others stand in', () => {
    const blend = [
      { solvent: 'acetone', share: 0.5 },
      { solvent: 'not-yet-known', share: 0.5 },
    ];
    const jar = jarOf({ thinner: { name: 'New', blend } });
    expect(thinnerShares(jar)).toEqual([{ id: 'acetone', share: 1 }]);
    expect(jarFilm(jar).unknownSolvents).toEqual(['not-yet-known']);
  });

  test('lose the retarder alone where it is left out', () => {
    const jar = jarOf({ ...lacquer(20), ...thinned('lacquer', 50), ...retarded('mix', 10) });
    expect(jarFilm(withoutRetarder(jar)).volumeSolids).toBeCloseTo(20 / 150, 9);
  });

  test('always add up to one', () => {
    const amount = (most: number) => fc.integer({ min: 0, max: most });
    fc.assert(
      fc.property(amount(1000), amount(50), fc.integer({ min: 1, max: 100 }), (thinner, retarder, solids) => {
        const jar = jarOf({
          ...lacquer(solids),
          ...thinned('lacquer', thinner),
          ...retarded('mix', retarder),
        });
        const { solvents, volumeSolids } = jarFilm(jar);
        expect(solvents.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        expect(volumeSolids).toBeLessThanOrEqual(solids / 100 + 1e-12);
      }),
    );
  });
});

describe('pigment', () => {
  const { Maxwell, Nielsen_a10 } = published.P1.expected;
  test.each(published.P1.inputs.PVC.map((share, row) => ({ share, row })))(
    '$share of the dry film',
    ({ share, row }) => {
      const shareOfSolids = percent(share * 100);
      const grains = jarFilm(jarOf({ pigment: { shareOfSolids, shape: 'grains' } }));
      expect(grains.pigment).toBeCloseTo(share, 9);
      expect(grains.passage).toBeCloseTo(Maxwell[row] ?? Number.NaN, 3);
      const aspect = { text: '10', unit: 'ratio' } as const;
      const flakes = jarFilm(jarOf({ pigment: { shareOfSolids, shape: 'flakes', aspect } }));
      expect(flakes.passage).toBeCloseTo(Nielsen_a10[row] ?? Number.NaN, 3);
    },
  );

  test('flakes whose breadth nobody has said are broad', () => {
    const pigment = { shareOfSolids: percent(10), shape: 'flakes' } as const;
    // By hand: (1 - 0.1)/(1 + 30 x 0.1/2), breadth 30 (common practice, no source).
    expect(jarFilm(jarOf({ pigment })).passage).toBeCloseTo(0.36, 9);
  });
});

test('thinner and retarder that leave no lacquer are no mix', () => {
  expect(() => jarFilm(jarOf({ ...thinned('mix', 80), ...retarded('mix', 40) }))).toThrow(RangeError);
});
