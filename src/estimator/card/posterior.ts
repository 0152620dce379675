import { EVAPORATION_SPREAD, WEIGHED_AT } from '../belief';
import type { Belief } from '../estimate';
import type { Card } from './card';
import type { Marched } from './marched';
import { createNormal, type Normal } from './normal';
import { scaleSpread, WATER_PER_HUMIDITY, waterOf, weighingSpread } from './weighing-noise';

/** Logarithms of the evaporation that are weighed. */
const EVAPORATION_WEIGHED: readonly number[] = Array.from({ length: 9 }, (_, k) => (k - 4) * 0.2);
/** What was laid is known to a fifth from its wet film (common practice, no source). */
const DRY_SPREAD = 0.2;
/** How far the water of a film is right for this film, as a share of it (judgement). */
const WATER_SPREAD = 0.3;
/** How far another scale stands from the first, in its divisions (common practice, no source). */
const OTHER_SCALE = 2;

/** One diffusivity with one evaporation, and how much is believed in it. */
export interface Cell {
  /** Place of the diffusivity among those weighed. */
  readonly d: number;
  readonly lnD: number;
  readonly lnE: number;
  /** What each weighing has beyond bare foil, dry film as laid, water and solvent, kg. */
  readonly rest: readonly number[];
  /** Dry film, kg. */
  readonly dry: number;
  readonly weight: number;
}

/** What is believed after the weighings; by diffusivity, how they err together. */
export interface Posterior {
  readonly cells: readonly Cell[];
  readonly normals: readonly Normal[];
}

/** Bayes' rule on a grid of diffusivity and evaporation, with all that the weighings share eliminated in closed form. */
export function posteriorOf(card: Card, film: Marched, belief: Belief): Posterior {
  const { bareKg, divisionKg, weighings } = card;
  const { dryKg, held } = film;
  const noise = weighings.map((one, w) => weighingSpread(one, { divisionKg, dryKg, heldKg: held(w, 0, 0) }));
  const humidities = weighings.map(({ humidity }) => humidity);
  // What all weighings share: how heavy the film was laid, the bare foil, how much water this film takes up, and where another scale stands.
  const normals = WEIGHED_AT.map((lnD) =>
    createNormal(noise, [
      {
        along: humidities.map((humidity, w) => dryKg * waterOf(humidity) + film.ifThicker(w, lnD)),
        spread: DRY_SPREAD,
      },
      { along: weighings.map(() => 1), spread: scaleSpread(divisionKg) },
      { along: humidities, spread: WATER_PER_HUMIDITY * WATER_SPREAD * dryKg },
      { along: weighings.map(({ divisionKg: other = 0 }) => OTHER_SCALE * other), spread: 1 },
    ]),
  );
  const cells = WEIGHED_AT.flatMap((lnD, d) => {
    const normal = normals[d] as Normal;
    return EVAPORATION_WEIGHED.map((lnE) => {
      const rest = weighings.map(
        (one, w) => one.massKg - bareKg - held(w, lnD, lnE) - dryKg * waterOf(one.humidity),
      );
      const prior = ((lnD - belief.mean) / belief.spread) ** 2 + (lnE / EVAPORATION_SPREAD) ** 2;
      const dry = dryKg * (1 + (normal.shared(rest)[0] ?? 0));
      return { d, lnD, lnE, rest, dry, log: normal.logDensity(rest) - 0.5 * prior };
    });
  });
  const highest = Math.max(...cells.map(({ log }) => log));
  const total = cells.reduce((sum, { log }) => sum + Math.exp(log - highest), 0);
  return { normals, cells: cells.map((cell) => ({ ...cell, weight: Math.exp(cell.log - highest) / total })) };
}

/** The mean of something over all that is believed. */
export const meanOf = (cells: readonly Cell[], of: (cell: Cell) => number): number =>
  cells.reduce((sum, cell) => sum + of(cell) * cell.weight, 0);

/** Its mean and spread. */
export function beliefIn(cells: readonly Cell[], of: (cell: Cell) => number): Belief {
  const mean = meanOf(cells, of);
  return { mean, spread: Math.sqrt(meanOf(cells, (cell) => (of(cell) - mean) ** 2)) };
}
