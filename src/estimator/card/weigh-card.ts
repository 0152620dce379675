import { EVAPORATION_SPREAD, PRIOR, quantile, WEIGHED_AT } from '../belief';
import type { Belief } from '../estimate';
import type { StackHistory } from '../history';
import type { Card, CardReading, Expected, Weighing } from './card';
import { heldBetween, heldTable, laidDryKg } from './held';
import { createNormal, type Normal } from './normal';

/** Logarithms of the evaporation that are weighed. */
const EVAPORATION_WEIGHED: readonly number[] = Array.from({ length: 9 }, (_, k) => (k - 4) * 0.2);

/** What was laid is known to a fifth from its wet film (common practice, no source). */
const DRY_SPREAD = 0.2;
/** Water that a film takes up, as a share of its mass for all of the humidity: 0.3 % for 10 % (common practice, from memory). */
const WATER_PER_HUMIDITY = 0.03;
/** How far that is right for this film, as a share of it (judgement). */
const WATER_SPREAD = 0.3;
/** A pocket hygrometer tells the humidity so far, in the room of the scale (common practice, no source). */
const HUMIDITY_SPREAD = 0.03;
/** Where nothing was weighed yet. */
const USUAL_HUMIDITY = 0.5;
/**
 * How far what a warm-dried film still holds is known, as a share of it: a heat mat is known to some 3 K, and 5 K more leave a third
 * to a seventieth of it (worked out with this solver).
 */
const WARM_SPREAD = 0.8;
/** What a film that is yet to be dried warm will still hold, as a share of its mass: 36 um after a day at 55 C (worked out with this solver). */
const WARM_LEFT = 0.001;
/** What a scale moves from one weighing to the next, in divisions, beside half a division of rounding (judgement). */
const DRIFT = 0.5;
const ROUNDING = 1 / Math.sqrt(12);
/** How far another scale stands from the first, in its divisions (common practice, no source). */
const OTHER_SCALE = 2;
/** No film is laid thicker or thinner than said by more than this factor: then it was the weighing (judgement). */
const MOST_THICK = 3;
/** Half the step over which a slope is taken, in the logarithm of the diffusivity. */
const STEP = 0.3;
/** A tenth of a normal distribution lies beyond so many spreads. */
const TENTH = 1.2816;

const scaleSpread = (divisionKg: number): number => divisionKg * Math.hypot(ROUNDING, DRIFT);
const waterOf = (humidity: number): number => 1 + WATER_PER_HUMIDITY * humidity;

/**
 * What the weighings of a card say of diffusivity and evaporation, what it is to weigh at other moments, and what a weighing then
 * would tell.
 *
 * Source: Bayes' rule on a grid of both, with the dry mass eliminated in closed form: a weighing is the bare foil, the dry film with
 * the water that it has taken up, and the solvent that the march gives; dry mass, the weighing of the bare foil and every later one
 * are normal. A film laid thicker dries as Fick's second law scales it. Where the film was dried warm, the march goes through that
 * warmth, and is made anew for the thickness that its weight tells. What a weighing tells is the mutual information of two normals.
 * Left out: pigment in the film's density, solvent already in the air.
 */
export function weighCard(card: Card, belief: Belief = PRIOR): CardReading {
  const { bareKg, areaM2, divisionKg, weighings, lookAtS = [] } = card;
  const history = asHeavyAs(card, laidDryKg(card));
  const moments = [...weighings.map(({ atS }) => atS), ...lookAtS];
  const order = moments.map((_, i) => i).sort((i, j) => (moments[i] as number) - (moments[j] as number));
  const table = heldTable(
    history,
    areaM2,
    order.map((i) => moments[i] as number),
  );
  const place = moments.map((_, i) => order.indexOf(i));
  const held = (i: number, lnD: number, lnE: number) => heldBetween(table, place[i] as number, lnD, lnE);
  const dryKg = laidDryKg({ history, areaM2 });
  const scaleKg = scaleSpread(divisionKg);
  const noiseOf = (
    { humiditySpread = HUMIDITY_SPREAD, isWarmDried, divisionKg: other }: Weighing,
    i: number,
  ) =>
    Math.hypot(
      other === undefined ? scaleKg : scaleSpread(other),
      dryKg * WATER_PER_HUMIDITY * humiditySpread,
      isWarmDried ? WARM_SPREAD * held(i, 0, 0) : 0,
    );
  const noise = weighings.map(noiseOf);
  const others = weighings.map(({ divisionKg: other }) => (other === undefined ? 0 : OTHER_SCALE * other));
  // A film s times as thick holds s f(D t / s^2).
  const byThickness = (i: number, lnD: number, humidity: number) => {
    const slope = (held(i, lnD + STEP, 0) - held(i, lnD - STEP, 0)) / (2 * STEP);
    return dryKg * waterOf(humidity) + held(i, lnD, 0) - 2 * slope;
  };
  const waterKg = WATER_PER_HUMIDITY * WATER_SPREAD * dryKg;
  // What all weighings share: how heavy the film was laid, the bare foil, how much water this film takes up, and where another scale stands.
  const normals = WEIGHED_AT.map((lnD) =>
    createNormal(noise, [
      { along: weighings.map(({ humidity }, w) => byThickness(w, lnD, humidity)), spread: DRY_SPREAD },
      { along: weighings.map(() => 1), spread: scaleKg },
      { along: weighings.map(({ humidity }) => humidity), spread: waterKg },
      { along: others, spread: 1 },
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
  const raw = cells.map(({ log }) => Math.exp(log - highest));
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  const weights = raw.map((weight) => weight / total);
  type Cell = (typeof cells)[number];
  const mean = (of: (cell: Cell, k: number) => number): number =>
    cells.reduce((sum, cell, k) => sum + of(cell, k) * (weights[k] as number), 0);
  const moment = (of: (cell: Cell) => number): Belief => {
    const middle = mean(of);
    return { mean: middle, spread: Math.sqrt(mean((cell) => (of(cell) - middle) ** 2)) };
  };
  const humidity =
    weighings.length === 0
      ? USUAL_HUMIDITY
      : weighings.reduce((sum, one) => sum + one.humidity, 0) / weighings.length;
  const airKg = dryKg * WATER_PER_HUMIDITY * HUMIDITY_SPREAD;

  /** One more weighing: its mean, its variance, and what of that is left once the diffusivity is known. */
  function oneMore(thick: (lnD: number) => number, heldIn: (cell: Cell) => number, itsNoise: number) {
    const more = WEIGHED_AT.map((lnD, d) =>
      (normals[d] as Normal).oneMore([thick(lnD), 1, humidity, 0], itsNoise),
    );
    const means = cells.map(
      (cell) =>
        heldIn(cell) +
        (more[cell.d]?.weights ?? []).reduce((sum, weight, i) => sum + weight * (cell.rest[i] as number), 0),
    );
    const middle = mean((_, k) => means[k] as number);
    const inner = mean(({ d }) => more[d]?.variance as number);
    const spread2 = inner + mean((_, k) => ((means[k] as number) - middle) ** 2);
    // Within one diffusivity, what the evaporation adds.
    const byD = WEIGHED_AT.map(() => ({ weight: 0, sum: 0, square: 0 }));
    for (const [k, { d }] of cells.entries()) {
      const row = byD[d] as (typeof byD)[number];
      const weight = weights[k] as number;
      row.weight += weight;
      row.sum += weight * (means[k] as number);
      row.square += weight * (means[k] as number) ** 2;
    }
    const within = byD.reduce(
      (sum, row) => sum + (row.weight > 0 ? row.square - row.sum ** 2 / row.weight : 0),
      inner,
    );
    return {
      meanKg: bareKg + dryKg * waterOf(humidity) + middle,
      spreadKg: Math.sqrt(spread2),
      gain: Math.max(0, 0.5 * Math.log(spread2 / within)),
    };
  }

  const expected = lookAtS.map((atS, j): Expected => {
    const i = weighings.length + j;
    const { meanKg, spreadKg, gain } = oneMore(
      (lnD) => byThickness(i, lnD, humidity),
      ({ lnD, lnE }) => held(i, lnD, lnE),
      Math.hypot(scaleKg, airKg),
    );
    const by = TENTH * spreadKg;
    return { atS, lowKg: meanKg - by, likelyKg: meanKg, highKg: meanKg + by, gain };
  });
  const warm = oneMore(
    () => dryKg * waterOf(humidity),
    () => 0,
    Math.hypot(scaleKg, airKg, WARM_LEFT * dryKg),
  );
  return {
    before: belief,
    diffusivity: moment(({ lnD }) => lnD),
    evaporation: moment(({ lnE }) => lnE),
    dryKg: moment(({ dry }) => dry),
    heldKg: weighings.map((_, w) => {
      const rows = cells.map(({ lnD, lnE }, k) => ({
        value: held(w, lnD, lnE),
        weight: weights[k] as number,
      }));
      return { low: quantile(rows, 0.1), likely: quantile(rows, 0.5), high: quantile(rows, 0.9) };
    }),
    humidity,
    weighedKg: weighings.map((one) => one.massKg + dryKg * WATER_PER_HUMIDITY * (humidity - one.humidity)),
    expected,
    warmGain: warm.gain,
  };
}

/** The history with its coats as thick as a warm-dried weighing tells; the history itself where there is none. */
function asHeavyAs({ history, bareKg, weighings }: Card, laidKg: number): StackHistory {
  const dried = weighings.findLast(({ isWarmDried }) => isWarmDried);
  if (!dried) return history;
  const told = (dried.massKg - bareKg) / waterOf(dried.humidity) / laidKg;
  const by = Math.min(MOST_THICK, Math.max(1 / MOST_THICK, told));
  const events = history.events.map((event) =>
    event.kind === 'coat' ? { ...event, dryM: event.dryM * by } : event,
  );
  return { ...history, events };
}
