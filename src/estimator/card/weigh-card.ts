import { between, EVAPORATION_SPREAD, PRIOR, quantile, RUN_AT, WEIGHED_AT } from '../belief';
import type { Belief } from '../estimate';
import type { StackHistory } from '../history';
import { simulate } from '../simulate';
import type { Card, CardReading, Weighing } from './card';
import { createNormal } from './normal';

/** Logarithms of the evaporation at which the card is marched, and those that are weighed. */
const EVAPORATION_AT = [-Math.log(1.5), 0, Math.log(1.5)] as const;
const EVAPORATION_WEIGHED: readonly number[] = Array.from({ length: 9 }, (_, k) => (k - 4) * 0.2);

/** What was laid is known to a fifth from its wet film (common practice, no source). */
const DRY_SPREAD = 0.2;
/** Water that a film takes up, as a share of its mass for all of the humidity: 0.3 % for 10 % (common practice, from memory). */
const WATER_PER_HUMIDITY = 0.03;
/** How far that is right for this film, as a share of it (judgement). */
const WATER_SPREAD = 0.3;
/** A pocket hygrometer tells the humidity so far, in the room of the scale (common practice, no source). */
const HUMIDITY_SPREAD = 0.03;
/** What a warm-dried film may still hold, as a share of its mass: 3 mg on a film of 1.2 g (worked out with this solver). */
const STILL_HELD = 0.0025;
/** What a scale moves from one weighing to the next, in divisions, beside half a division of rounding (judgement). */
const DRIFT = 0.5;
const ROUNDING = 1 / Math.sqrt(12);
/** Half the step over which a slope is taken, in the logarithm of the diffusivity. */
const STEP = 0.3;

/** Solvent on the card at each weighing, kg, for every diffusivity and evaporation at which it is marched. */
export type HeldTable = readonly (readonly (readonly number[])[])[];

/** Marches a card at seven diffusivities and three evaporations. Times must rise. */
export function heldTable(history: StackHistory, areaM2: number, atS: readonly number[]): HeldTable {
  const untilS = (atS.at(-1) ?? 0) + 1;
  return EVAPORATION_AT.map((lnTransfer) =>
    RUN_AT.map((lnDiffusivity) => {
      const { binder, air, solvents } = history;
      const { heldThen } = simulate(
        {
          ...history,
          binder: { ...binder, glassDiffusivityM2S: binder.glassDiffusivityM2S * Math.exp(lnDiffusivity) },
          air: air.map((span) => ({ ...span, transferMS: span.transferMS * Math.exp(lnTransfer) })),
        },
        { untilS, profileAtS: atS },
      );
      return heldThen.map((held) =>
        held.reduce((sum, volume, i) => sum + volume * (solvents[i]?.densityKgM3 ?? 0) * areaM2, 0),
      );
    }),
  );
}

/** Solvent at a weighing between the marches, kg. */
export function heldBetween(table: HeldTable, weighing: number, lnD: number, lnE: number): number {
  const at = (e: number) =>
    between(
      (table[e] as HeldTable[number]).map((run) => run[weighing] as number),
      lnD,
    );
  const share = Math.min(1, Math.abs(lnE) / Math.log(1.5));
  return at(1) + share * (at(lnE < 0 ? 0 : 2) - at(1));
}

/** Dry film on the card as it was laid, kg. */
export const laidDryKg = ({ history, areaM2 }: Pick<Card, 'history' | 'areaM2'>): number =>
  history.events.reduce(
    (sum, event) => sum + (event.kind === 'coat' ? event.dryM * areaM2 * history.binder.densityKgM3 : 0),
    0,
  );

/**
 * What the weighings of a card say of diffusivity and evaporation.
 *
 * Source: Bayes' rule on a grid of both, with the dry mass eliminated in closed form: a weighing is the bare foil, the dry film with
 * the water that it has taken up, and the solvent that the march gives; dry mass, the weighing of the bare foil and every later one
 * are normal. A film laid thicker dries as Fick's second law scales it. Where the film was dried warm, the march is made anew for the thickness that its weight tells.
 * Left out: pigment in the film's density, solvent already in the air.
 */
export function weighCard(card: Card, belief: Belief = PRIOR): CardReading {
  const { bareKg, areaM2, weighings } = card;
  const laidKg = laidDryKg(card);
  const history = asHeavyAs(card, laidKg);
  const table = heldTable(
    history,
    areaM2,
    weighings.map(({ atS }) => atS),
  );
  const dryKg = laidDryKg({ history, areaM2 });
  const scaleKg = card.divisionKg * Math.hypot(ROUNDING, DRIFT);
  const noise = weighings.map((one) => Math.hypot(scaleKg, noiseOf(one, dryKg)));
  const held = (w: number, lnD: number, lnE: number) =>
    weighings[w]?.isWarmDried ? 0 : heldBetween(table, w, lnD, lnE);
  // What all weighings share: how heavy the film was laid, the bare foil, and how much water this film takes up.
  const normalAt = (lnD: number) =>
    createNormal(noise, [
      {
        along: weighings.map((one, w) => {
          const slope = (held(w, lnD + STEP, 0) - held(w, lnD - STEP, 0)) / (2 * STEP);
          // A film s times as thick holds s f(D t / s^2).
          return dryKg * waterOf(one) + held(w, lnD, 0) - 2 * slope;
        }),
        spread: DRY_SPREAD,
      },
      { along: weighings.map(() => 1), spread: scaleKg },
      {
        along: weighings.map(({ humidity }) => humidity),
        spread: WATER_PER_HUMIDITY * WATER_SPREAD * dryKg,
      },
    ]);
  const cells = WEIGHED_AT.flatMap((lnD) => {
    const normal = normalAt(lnD);
    return EVAPORATION_WEIGHED.map((lnE) => {
      const rest = weighings.map((one, w) => one.massKg - bareKg - held(w, lnD, lnE) - dryKg * waterOf(one));
      const prior = ((lnD - belief.mean) / belief.spread) ** 2 + (lnE / EVAPORATION_SPREAD) ** 2;
      const dry = dryKg * (1 + (normal.shared(rest)[0] ?? 0));
      return { lnD, lnE, dry, log: normal.logDensity(rest) - 0.5 * prior };
    });
  });
  const highest = Math.max(...cells.map(({ log }) => log));
  const weights = cells.map(({ log }) => Math.exp(log - highest));
  const moments = (of: (cell: (typeof cells)[number]) => number): Belief => {
    const sum = weights.reduce((total, weight) => total + weight, 0);
    const mean = cells.reduce((total, cell, k) => total + of(cell) * (weights[k] as number), 0) / sum;
    const square = cells.reduce(
      (total, cell, k) => total + (of(cell) - mean) ** 2 * (weights[k] as number),
      0,
    );
    return { mean, spread: Math.sqrt(square / sum) };
  };
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return {
    diffusivity: moments(({ lnD }) => lnD),
    evaporation: moments(({ lnE }) => lnE),
    dryKg: moments(({ dry }) => dry),
    heldKg: weighings.map((_, w) => {
      const rows = cells.map(({ lnD, lnE }, k) => ({
        value: held(w, lnD, lnE),
        weight: (weights[k] as number) / total,
      }));
      return { low: quantile(rows, 0.1), likely: quantile(rows, 0.5), high: quantile(rows, 0.9) };
    }),
  };
}

const waterOf = ({ humidity }: Weighing): number => 1 + WATER_PER_HUMIDITY * humidity;

const noiseOf = ({ isWarmDried }: Weighing, dryKg: number): number =>
  dryKg * Math.hypot(WATER_PER_HUMIDITY * HUMIDITY_SPREAD, isWarmDried ? STILL_HELD : 0);

/** The history with its coats as thick as a warm-dried weighing tells; the history itself where there is none. */
function asHeavyAs({ history, bareKg, weighings }: Card, laidKg: number): StackHistory {
  const dried = weighings.findLast(({ isWarmDried }) => isWarmDried);
  if (!dried) return history;
  const by = (dried.massKg - bareKg) / waterOf(dried) / laidKg;
  const events = history.events.map((event) =>
    event.kind === 'coat' ? { ...event, dryM: event.dryM * by } : event,
  );
  return { ...history, events };
}
