import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  filmFromTwoGrounds,
  filmReflectance,
  kOverS,
  rInfinity,
} from '../../../src/science/pigment/kubelka-munk';
import { innerFrom, measuredFrom } from '../../../src/science/pigment/saunderson';
import reference from '../../reference/kubelka-munk.json';
import { mixture } from './mixture';

const example = (id: string) => reference.examples.find((one) => one.id === id);
const casesOf = <Case>(id: string): Case[] => (example(id)?.cases ?? []) as unknown as Case[];

interface MixCase {
  readonly c: number[];
  readonly R?: number[];
  readonly Rm?: number[];
}
const [K = [], S = []] = [example('KM-1')?.K, example('KM-1')?.S];
const mix = ({ c }: MixCase): number[] =>
  mixture(c.map((amount, i) => ({ pigment: { K: K[i] ?? [], S: S[i] ?? [] }, amount }))).map((ks) =>
    rInfinity(ks.K / ks.S),
  );

describe('mixtures', () => {
  // Published tests of an open library, "calculated independently"; three pigments in five bands.
  test.each(casesOf<MixCase>('KM-1'))('two constants, shares $c', (row) => {
    for (const [i, R] of mix(row).entries()) expect(R).toBeCloseTo(row.R?.[i] ?? Number.NaN, 12);
  });

  test.each(casesOf<MixCase>('KM-2'))('with a surface, shares $c', (row) => {
    const surface = { k1: 0.033, k2: 0.66, seesGloss: false };
    for (const [i, R] of mix(row).entries())
      expect(measuredFrom(R, surface)).toBeCloseTo(row.Rm?.[i] ?? Number.NaN, 12);
  });

  test('every case is there', () => {
    expect([casesOf('KM-1').length, casesOf('KM-2').length]).toEqual([9, 9]);
  });
});

describe('a film over a ground', () => {
  interface Film {
    readonly K: number;
    readonly S: number;
    readonly thickness: number;
    readonly substrate: number;
    readonly expected?: number;
    readonly R?: number;
  }
  // Published tests of an open painting library (tolerance 1e-5 there), and the limits of the formula.
  test.each([...casesOf<Film>('KM-4'), ...casesOf<Film>('KM-5')])(
    'K $K, S $S, thickness $thickness',
    (film) => {
      const R = filmReflectance(film, film.thickness, film.substrate);
      expect(Math.abs(R - (film.expected ?? film.R ?? Number.NaN))).toBeLessThan(1e-6);
    },
  );

  interface Watercolour {
    readonly K_rgb: number[];
    readonly S_rgb: number[];
    readonly computed_reflectance_unit_layer_over_black: number[];
    readonly computed_reflectance_unit_layer_over_white: number[];
  }
  // Curtis et al. 1997, K and S of watercolours; reflectances by numeric integration, six decimals.
  test.each(casesOf<Watercolour>('KM-7'))('$pigment over black and white, and back', (row) => {
    for (const i of [0, 1, 2]) {
      const ks = { K: row.K_rgb[i] ?? 0, S: row.S_rgb[i] ?? 0 };
      const [black, white] = [filmReflectance(ks, 1, 0), filmReflectance(ks, 1, 1)];
      expect(Math.abs(black - (row.computed_reflectance_unit_layer_over_black[i] ?? 9))).toBeLessThan(1e-6);
      expect(Math.abs(white - (row.computed_reflectance_unit_layer_over_white[i] ?? 9))).toBeLessThan(1e-6);
      const back = filmFromTwoGrounds({ ground: 0, film: black }, { ground: 1, film: white });
      expect(back?.K).toBeCloseTo(ks.K, 6);
      expect(back?.S).toBeCloseTo(ks.S, 6);
    }
  });

  test('two grey grounds give the film back', () => {
    const fraction = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fraction(0.01, 2),
        fraction(0.05, 3),
        fraction(0, 0.1),
        fraction(0.6, 0.95),
        (k, s, g1, g2) => {
          const film = (ground: number) => ({ ground, film: filmReflectance({ K: k, S: s }, 1, ground) });
          const back = filmFromTwoGrounds(film(g1), film(g2));
          expect(back?.K).toBeCloseTo(k, 4);
          expect(back?.S).toBeCloseTo(s, 4);
        },
      ),
    );
  });

  // A film over a ground of its own colour looks the same however thick it is: only the other ground tells.
  test.each([
    { why: 'the light ground', ks: 0.025, grounds: [0, rInfinity(0.025)] },
    { why: 'the dark ground', ks: 4.05, grounds: [rInfinity(4.05), 0.8] },
  ])('$why of the film’s own colour', ({ ks, grounds: [dark = 0, light = 0] }) => {
    const film = (ground: number) => ({ ground, film: filmReflectance({ K: ks, S: 1 }, 1, ground) });
    const back = filmFromTwoGrounds(film(dark), film(light));
    expect(back?.S).toBeCloseTo(1, 4);
    expect(back?.K).toBeCloseTo(ks, 4);
  });

  test('a coat that is as light over black as over white is no film', () => {
    expect(filmFromTwoGrounds({ ground: 0, film: 0.8 }, { ground: 0.8, film: 0.7 })).toBeUndefined();
  });

  test('any readings over two grounds are a film that absorbs and scatters, or none', () => {
    const fraction = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const readings = fc.tuple(fraction(0, 0.1), fraction(0.6, 0.95), fraction(0, 1), fraction(0, 1));
    fc.assert(
      fc.property(readings, ([g1, g2, r1, r2]) => {
        const film = filmFromTwoGrounds({ ground: g1, film: r1 }, { ground: g2, film: r2 });
        if (film) for (const value of Object.values(film)) expect(value).toBeGreaterThan(0);
      }),
      { numRuns: 1000 },
    );
  });

  test('a very thick film forgets its ground', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (ks, Rg) => {
          expect(filmReflectance({ K: ks, S: 1 }, 1e5, Rg)).toBeCloseTo(rInfinity(ks), 9);
          expect(kOverS(rInfinity(ks)) / ks).toBeCloseTo(1, 6);
        },
      ),
    );
  });
});

describe('Saunderson', () => {
  // Formula of Allen 1980 (equation 24), k1 0.04, k2 0.60; nine decimals.
  test.each(casesOf<{ R_internal: number; R_measured: number }>('KM-8'))(
    '$R_internal',
    ({ R_internal, R_measured }) => {
      const surface = { k1: 0.04, k2: 0.6, seesGloss: true };
      expect(measuredFrom(R_internal, surface)).toBeCloseTo(R_measured, 8);
      expect(innerFrom(R_measured, surface)).toBeCloseTo(R_internal, 7);
    },
  );

  test('comes back without the gloss too', () => {
    const surface = { k1: 0.03, k2: 0.65, seesGloss: false };
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (R) => {
        expect(innerFrom(measuredFrom(R, surface), surface)).toBeCloseTo(R, 9);
      }),
    );
  });
});
