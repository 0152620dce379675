import { describe, expect, test } from 'vitest';
import type { MobilityLaw } from '../../src/estimator/laws/law';
import reference from '../reference/drying-checks.json';
import { fixedSurface, meanWetness, runFilm } from './film-run';

const { A1, A2, A3 } = reference.checks;
const L = 50e-6;
const D = 1e-13;
/** Constant diffusivity, shrinkage switched off. */
const constantD: MobilityLaw = { ratio: [1], at: () => D };

/** Fraction lost at each Fourier number D t/L^2. */
function fractionLost(fourier: readonly number[], surfaceMS: number): number[] {
  const run = {
    dryM: L,
    wetness: [1],
    mobility: constantD,
    surface: fixedSurface(surfaceMS),
    tolerance: 0.002,
  };
  return runFilm(
    run,
    fourier.map((Fo) => (Fo * L * L) / D),
    (film) => 1 - meanWetness(film),
  );
}

// Crank, The Mathematics of Diffusion, 2nd ed. 1975, ch. 4 (series from memory; values computed from them).
describe('plane sheet, sealed base, dry surface (Crank 1975)', () => {
  const lost = fractionLost(A1.expected.Fo, 1);
  test.each(A1.expected.Fo.map((Fo, k) => ({ Fo, expected: A1.expected.fraction_lost[k] as number, k })))(
    'Fo $Fo loses $expected',
    ({ expected, k }) => {
      expect(Math.abs((lost[k] as number) - expected)).toBeLessThan(A1.tolerance.abs);
    },
  );
});

describe.each(Object.entries(A2.expected.fraction_lost))(
  'plane sheet with surface resistance (Crank 1975), %s',
  (bi, values) => {
    const lost = fractionLost(A2.expected.Fo, (Number(bi.replace('Bi=', '')) * D) / L);
    test.each(A2.expected.Fo.map((Fo, k) => ({ Fo, expected: values[k] as number, k })))(
      'Fo $Fo loses $expected',
      ({ expected, k }) => {
        expect(Math.abs((lost[k] as number) - expected)).toBeLessThan(A2.tolerance.abs);
      },
    );
  },
);

// Separable solution of u_t = (D0 exp(k u) u_z)_z, and its converged numbers where the formula no longer holds.
describe('log-law of retained solvent for an exponential diffusivity', () => {
  const {
    k,
    D0_m2_s: D0,
    L_m,
    u0,
  } = A3.inputs as unknown as { k: string; D0_m2_s: number; L_m: number; u0: number };
  const steepness = Math.log(10) / 0.035;
  const mobility: MobilityLaw = {
    ratio: [1],
    at: (film, n) => D0 * Math.exp(steepness * ((film.u[0] as Float64Array)[n] as number)),
  };
  const times = [...A3.expected.t_s, ...A3.expected.t_s_late];
  const expected = [...A3.expected.u_avg_numeric_converged, ...A3.expected.u_avg_numeric_late];
  const run = { dryM: L_m, wetness: [u0], mobility, surface: fixedSurface(1), tolerance: 0.003 };
  const rows = runFilm(run, times, (film) => ({
    mean: meanWetness(film),
    base: (film.u[0] as Float64Array)[0] as number,
  }));

  test('has the steepness that the table names', () => expect(k).toContain(steepness.toFixed(3)));
  test.each(times.map((t, row) => ({ t, mean: expected[row] as number, row })))(
    '$t s: mean $mean',
    ({ mean, row }) => {
      expect(Math.abs((rows[row]?.mean as number) - mean)).toBeLessThan(A3.tolerance.abs);
    },
  );
  test.each(A3.expected.u_substrate.map((base, row) => ({ base, row })))('base $base', ({ base, row }) => {
    expect(Math.abs((rows[row]?.base as number) - base)).toBeLessThan(A3.tolerance.abs);
  });
});
