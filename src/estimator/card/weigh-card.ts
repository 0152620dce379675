import { PRIOR, quantile, TENTH } from '../belief';
import type { Belief } from '../estimate';
import { USUAL_SHOP } from '../usual-shop';
import type { Card, CardReading, Expected } from './card';
import { marched } from './marched';
import { oneMore } from './one-more';
import { beliefIn, posteriorOf } from './posterior';
import { HUMIDITY_SPREAD, scaleSpread, WATER_PER_HUMIDITY, waterOf } from './weighing-noise';

/** What a film that is yet to be dried warm will still hold, as a share of its mass: 36 um after a day at 55 C (worked out with this solver). */
const WARM_LEFT = 0.001;

/**
 * What the weighings of a card say of diffusivity and evaporation, what it is to weigh at other moments, and what a weighing then
 * would tell.
 *
 * Source: Bayes' rule on a grid of both, with the dry mass eliminated in closed form: a weighing is the bare foil, the dry film with
 * the water that it has taken up, and the solvent that the march gives; dry mass, the weighing of the bare foil and every later one
 * are normal. A film laid thicker dries as Fick's second law scales it. Where the film was dried warm, the march goes through that
 * warmth, and is made anew for the thickness that its weight tells.
 * Left out: pigment in the film's density, solvent already in the air.
 */
export function weighCard(card: Card, belief: Belief = PRIOR): CardReading {
  const { bareKg, divisionKg, weighings, lookAtS = [] } = card;
  const film = marched(card, [...weighings.map(({ atS }) => atS), ...lookAtS]);
  const { dryKg, held } = film;
  const posterior = posteriorOf(card, film, belief);
  const { cells } = posterior;
  const humidity =
    weighings.length === 0
      ? USUAL_SHOP.relativeHumidity
      : weighings.reduce((sum, one) => sum + one.humidity, 0) / weighings.length;
  const scaleKg = scaleSpread(divisionKg);
  const airKg = dryKg * WATER_PER_HUMIDITY * HUMIDITY_SPREAD;
  const plainKg = dryKg * waterOf(humidity);

  const expected = lookAtS.map((atS, j): Expected => {
    const i = weighings.length + j;
    const { meanKg, spreadKg, gain } = oneMore(posterior, {
      along: (lnD) => [plainKg + film.ifThicker(i, lnD), 1, humidity, 0],
      held: ({ lnD, lnE }) => held(i, lnD, lnE),
      noise: Math.hypot(scaleKg, airKg),
    });
    const likelyKg = bareKg + plainKg + meanKg;
    const by = TENTH * spreadKg;
    return { atS, lowKg: likelyKg - by, likelyKg, highKg: likelyKg + by, gain };
  });
  const warm = oneMore(posterior, {
    along: () => [plainKg, 1, humidity, 0],
    held: () => 0,
    noise: Math.hypot(scaleKg, airKg, WARM_LEFT * dryKg),
  });
  return {
    before: belief,
    diffusivity: beliefIn(cells, ({ lnD }) => lnD),
    evaporation: beliefIn(cells, ({ lnE }) => lnE),
    dryKg: beliefIn(cells, ({ dry }) => dry),
    heldKg: weighings.map((_, w) => {
      const rows = cells.map(({ lnD, lnE, weight }) => ({ value: held(w, lnD, lnE), weight }));
      return { low: quantile(rows, 0.1), likely: quantile(rows, 0.5), high: quantile(rows, 0.9) };
    }),
    humidity,
    weighedKg: weighings.map((one) => one.massKg + dryKg * WATER_PER_HUMIDITY * (humidity - one.humidity)),
    expected,
    warmGain: warm.gain,
  };
}
