import { describe, expect, test } from 'vitest';
import { createFilm, type Film } from '../../../src/estimator/film';
import { evaporation, type Volatile } from '../../../src/estimator/laws/evaporation';
import { GAS_CONSTANT } from '../../../src/science/air/atmosphere';
import {
  AIR_HEAT_J_KG_K,
  AIR_THERMAL_DIFFUSIVITY_M2S,
  BUTYL_ACETATE_IN_AIR_M2S,
} from '../../../src/science/air/wet-surface';
import { SOLVENTS, thinnerWith } from '../stacks';

const CHI = 0.4;
const AIR_K = 294.15;

/** A film whose top holds so much solvent to a volume of binder. */
function filmOf(wetness: number): Film {
  const film = createFilm(SOLVENTS.length);
  film.nodes = 2;
  for (const [i, share] of thinnerWith(0.05).entries()) (film.u[i] as Float64Array)[1] = share * wetness;
  return film;
}
const wetnessOf = (film: Film) => SOLVENTS.map((_, i) => film.u[i]?.[1] as number);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Heat that solvent takes with it, W/m2. */
const taken = (film: Film, conductance: Float64Array): number =>
  sum(
    SOLVENTS.map(({ densityKgM3, molarMassKgMol, latentHeatJMol }, i) => {
      const volume = (conductance[i] as number) * (wetnessOf(film)[i] as number);
      return ((volume * densityKgM3) / molarMassKgMol) * latentHeatJMol;
    }),
  );

// Flory and Huggins, short form for several solvents: ln a = ln phi + phi_p + chi phi_p^2; flux k a psat/(R T) by volume.
test.each([0.05, 1, 5])(
  'at the temperature of the air, by activity and vapour pressure: %d of solvent',
  (wetness) => {
    const film = filmOf(wetness);
    const conductance = new Float64Array(SOLVENTS.length);
    const filmK = evaporation(SOLVENTS, CHI, undefined).fill(
      film,
      { temperatureK: AIR_K, transferMS: 2e-3 },
      0,
      conductance,
    );
    expect(filmK).toBe(AIR_K);
    const binder = 1 / (1 + wetness);
    for (const [i, one] of (SOLVENTS as readonly Volatile[]).entries()) {
      const u = wetnessOf(film)[i] as number;
      const activity = u * binder * Math.exp(binder + CHI * binder ** 2);
      const pressure = Math.exp(one.vapour.lnA - one.vapour.lnB / (AIR_K + one.vapour.cK));
      const moles = (2e-3 * one.transferRatio * activity * pressure) / (GAS_CONSTANT * AIR_K);
      expect(((conductance[i] as number) * u) / ((moles * one.molarMassKgMol) / one.densityKgM3)).toBeCloseTo(
        1,
        9,
      );
    }
  },
);

describe('a film that its solvent cools', () => {
  const lewis = (AIR_THERMAL_DIFFUSIVITY_M2S / BUTYL_ACETATE_IN_AIR_M2S) ** (2 / 3);
  const ROWS = [
    { panelEffusivity: 0, sinceWetS: 0, transferMS: 1.2e-3, wetness: 5 },
    { panelEffusivity: 0, sinceWetS: 60, transferMS: 3e-3, wetness: 1 },
    { panelEffusivity: 370, sinceWetS: 0, transferMS: 1.2e-3, wetness: 5 },
    { panelEffusivity: 370, sinceWetS: 600, transferMS: 1.2e-3, wetness: 5 },
    { panelEffusivity: 370, sinceWetS: 600, transferMS: 5e-3, wetness: 0.5 },
  ];

  // Chilton and Colburn 1934 for the air, Carslaw and Jaeger 1959, 2.4, for the panel; 1.19 kg/m3 of air and two seconds of laying (from memory, judgement).
  test.each(ROWS)(
    'takes as much heat as air and panel give: %o',
    ({ panelEffusivity, sinceWetS, transferMS, wetness }) => {
      const film = filmOf(wetness);
      const law = evaporation(SOLVENTS, CHI, { panelEffusivity });
      const supply =
        transferMS * 1.19 * AIR_HEAT_J_KG_K * lewis + panelEffusivity / Math.sqrt(Math.PI * (sinceWetS + 2));
      // From nothing, and from where it stood a step before.
      for (const before of ['nothing', 'the last step', 'nothing once more']) {
        if (before === 'nothing once more') law.forget?.();
        const conductance = new Float64Array(SOLVENTS.length);
        const filmK = law.fill(film, { temperatureK: AIR_K, transferMS }, sinceWetS, conductance);
        expect(filmK).toBeLessThan(AIR_K - 0.04);
        // To a fiftieth of a kelvin.
        expect(Math.abs(taken(film, conductance) / supply - (AIR_K - filmK))).toBeLessThan(0.021);
      }
    },
  );

  test('is the warmer the more its panel gives, and as warm as the air when it is all but dry', () => {
    const filmK = (wetness: number, panelEffusivity: number) =>
      evaporation(SOLVENTS, CHI, { panelEffusivity }).fill(
        filmOf(wetness),
        { temperatureK: AIR_K, transferMS: 1.2e-3 },
        10,
        new Float64Array(SOLVENTS.length),
      );
    expect(filmK(5, 370)).toBeGreaterThan(filmK(5, 60));
    expect(filmK(5, 60)).toBeGreaterThan(filmK(5, 0));
    expect(filmK(1e-5, 370)).toBe(AIR_K);
  });
});
