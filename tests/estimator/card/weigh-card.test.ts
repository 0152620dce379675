import { describe, expect, test } from 'vitest';
import { PRIOR } from '../../../src/estimator/belief';
import type { Card, Weighing } from '../../../src/estimator/card/card';
import { foretellCard } from '../../../src/estimator/card/foretell';
import { heldBetween, heldTable, laidDryKg } from '../../../src/estimator/card/held';
import { marched } from '../../../src/estimator/card/marched';
import { createNormal } from '../../../src/estimator/card/normal';
import { warmFor } from '../../../src/estimator/card/warm-for';
import { weighCard } from '../../../src/estimator/card/weigh-card';
import { DAY_S, stack } from '../stacks';

const AREA_M2 = 0.02;
const BARE_KG = 0.001;
const plan = { ...stack({ coats: 3, dryUm: 25 }), panelEffusivity: 60 };
const lastS = plan.events.at(-1)?.atS as number;
/** The plan with a day at 57 C before the sixth day. */
const warmed = { ...plan, air: warmFor(plan.air, lastS + 5 * DAY_S, lastS + 6 * DAY_S, 330.15) };

/** Weighings of a card as they would be were the diffusivity and the thickness so; the last one dried warm where asked. */
function weighed(lnD: number, thick: number, days: readonly number[], isWarm: boolean): Weighing[] {
  const events = plan.events.map((event) =>
    event.kind === 'coat' ? { ...event, dryM: event.dryM * thick } : event,
  );
  const history = { ...(isWarm ? warmed : plan), events };
  const atS = days.map((day) => lastS + day * DAY_S);
  const table = heldTable(history, AREA_M2, atS);
  const dryKg = laidDryKg({ history, areaM2: AREA_M2 });
  return atS.map((at, w) => {
    const isWarmDried = isWarm && w === atS.length - 1;
    const heldKg = heldBetween(table, w, lnD, 0);
    return { atS: at, humidity: 0.5, isWarmDried, massKg: BARE_KG + dryKg * 1.015 + heldKg };
  });
}
const card = (weighings: readonly Weighing[], divisionKg = 1e-6): Card => ({
  history: weighings.some(({ isWarmDried }) => isWarmDried) ? warmed : plan,
  areaM2: AREA_M2,
  bareKg: BARE_KG,
  divisionKg,
  weighings,
});

describe('a card', () => {
  test.each([-0.9, -0.3, 0.3, 0.9])('dried warm gives back the diffusivity that made it: %d', (lnD) => {
    const { diffusivity, dryKg } = weighCard(card(weighed(lnD, 1, [0.25, 1, 2, 6], true)));
    expect(Math.abs(diffusivity.mean - lnD)).toBeLessThan(diffusivity.spread);
    expect(diffusivity.spread).toBeLessThan(PRIOR.spread * 0.6);
    expect(dryKg.mean).toBeCloseTo(laidDryKg({ history: plan, areaM2: AREA_M2 }), 5);
  });

  test('laid a fifth thicker than said gives it back too, by its dry weight', () => {
    const { diffusivity, dryKg } = weighCard(card(weighed(0.5, 1.2, [0.25, 1, 2, 6], true)));
    expect(Math.abs(diffusivity.mean - 0.5)).toBeLessThan(diffusivity.spread);
    expect(dryKg.mean / laidDryKg({ history: plan, areaM2: AREA_M2 })).toBeCloseTo(1.2, 2);
  });

  test('a coarser scale, and no warm drying, tell less', () => {
    const spread = (isWarm: boolean, divisionKg?: number) =>
      weighCard(card(weighed(0, 1, [0.25, 1, 2, 6], isWarm), divisionKg)).diffusivity.spread;
    expect(spread(true, 1e-5)).toBeGreaterThan(spread(true) * 1.1);
    expect(spread(false)).toBeGreaterThan(spread(true));
    expect(spread(false)).toBeLessThan(PRIOR.spread);
  });

  test('a scale that tells nothing leaves what was believed', () => {
    const belief = { mean: 0.2, spread: 0.4 };
    const { diffusivity } = weighCard(card(weighed(-0.8, 1, [1, 2], false), 1), belief);
    expect(diffusivity.mean).toBeCloseTo(belief.mean, 1);
    expect(diffusivity.spread).toBeCloseTo(belief.spread, 1);
  });

  test('what it still holds lies within its own band', () => {
    const weighings = weighed(0.3, 1, [0.25, 1, 2, 6], true);
    const { heldKg } = weighCard(card(weighings));
    for (const { low, likely, high } of heldKg) {
      expect(low).toBeLessThanOrEqual(likely);
      expect(likely).toBeLessThanOrEqual(high);
    }
    expect(heldKg[0]?.likely).toBeGreaterThan(heldKg[2]?.likely as number);
    expect(heldKg[3]?.high).toBeLessThan((heldKg[2]?.likely as number) / 10);
  });
});

describe('a normal of what is shared', () => {
  // Two quantities, noise 1 and 2, sharing one thing of spread 3: covariance [[10, 9], [9, 13]], determinant 49.
  const normal = createNormal([1, 2], [{ along: [1, 1], spread: 3 }]);

  test('has the density of its covariance', () => {
    // x = (1, 2): x C^-1 x = (13 - 2 * 9 * 2 + 10 * 4) / 49 = 17 / 49, by hand
    expect(normal.logDensity([1, 2])).toBeCloseTo(-0.5 * (17 / 49) - 0.5 * Math.log(49), 12);
  });

  test('foretells one more', () => {
    // Covariance of the third with both: 9; its variance 9 + 16. C^-1 (9, 9) = (9 * (13 - 9), 9 * (10 - 9)) / 49, by hand
    const { weights, variance } = normal.oneMore([1], 4);
    expect(weights[0]).toBeCloseTo(36 / 49, 12);
    expect(weights[1]).toBeCloseTo(9 / 49, 12);
    expect(variance).toBeCloseTo(25 - (9 * 45) / 49, 12);
  });

  test('says how much of it is shared', () => {
    // s^2 a C^-1 x = 9 ((13 - 18) + (20 - 9)) / 49 = 54 / 49, by hand
    expect(normal.shared([1, 2])[0]).toBeCloseTo(54 / 49, 12);
  });
});

describe('a film that was laid thicker', () => {
  // It holds s f(D t / s^2), so that more of it holds f - 2 df/d ln D more; and the march itself, with films a tenth thicker and thinner.
  test.each([
    { coats: 1, dryUm: 25, days: [0.25, 1, 2] },
    { coats: 1, dryUm: 60, days: [0.25, 2, 7] },
    { coats: 3, dryUm: 25, days: [1, 3, 7] },
  ])('holds as much more as the march says: $coats coats of $dryUm um', ({ coats, dryUm, days }) => {
    const history = { ...stack({ coats, dryUm }), panelEffusivity: 60 };
    const last = history.events.at(-1)?.atS as number;
    const atS = days.map((day) => last + day * DAY_S);
    const by = (thick: number) => {
      const events = history.events.map((event) =>
        event.kind === 'coat' ? { ...event, dryM: event.dryM * thick } : event,
      );
      return heldTable({ ...history, events }, AREA_M2, atS);
    };
    const [more, less] = [by(1.1), by(0.9)];
    const film = marched({ history, areaM2: AREA_M2, bareKg: 0, divisionKg: 1e-6, weighings: [] }, atS);
    for (const i of days.keys())
      for (const lnD of [-0.6, 0, 0.6]) {
        const truly = (heldBetween(more, i, lnD, 0) - heldBetween(less, i, lnD, 0)) / 0.2;
        expect(film.ifThicker(i, lnD) / truly).toBeGreaterThan(0.97);
        expect(film.ifThicker(i, lnD) / truly).toBeLessThan(1.03);
      }
  });

  test('is told from a slow one: what it holds more stands out from its dry weight', () => {
    const thicker = weighCard(card(weighed(0, 1.3, [0.25, 1, 2], false)));
    expect(Math.abs(thicker.diffusivity.mean)).toBeLessThan(0.35);
  });
});

describe('what is expected of a card', () => {
  const days = [0.25, 1, 2];
  const lookAtS = [0.5, 3, 10].map((day) => lastS + day * DAY_S);
  const reading = weighCard({ ...card(weighed(0, 1, days, false)), lookAtS });

  test('is what it would weigh, in a band, lighter as time goes on', () => {
    const then = weighed(0, 1, [0.5, 3, 10], false);
    for (const [i, { lowKg, likelyKg, highKg }] of reading.expected.entries()) {
      const truly = then[i]?.massKg as number;
      expect(lowKg).toBeLessThan(truly);
      expect(highKg).toBeGreaterThan(truly);
      expect(Math.abs(likelyKg - truly)).toBeLessThan(2e-6);
    }
    const likely = reading.expected.map(({ likelyKg }) => likelyKg);
    expect(likely).toEqual(likely.toSorted((one, other) => other - one));
  });

  test('the band between two weighings is narrower than long after them', () => {
    const [between, , after] = reading.expected.map(({ lowKg, highKg }) => highKg - lowKg);
    expect(between).toBeLessThan((after as number) * 0.8);
  });

  test('once weighed so, the weighing tells as much as was said', () => {
    const before = reading.diffusivity.spread;
    for (const [i, day] of [0.5, 3, 10].entries()) {
      const weighings = weighed(
        0,
        1,
        [...days, day].sort((a, b) => a - b),
        false,
      );
      const told = Math.log(before / weighCard(card(weighings)).diffusivity.spread);
      const gain = reading.expected[i]?.gain as number;
      expect(Math.abs(told - gain)).toBeLessThan(0.35 * gain); // two normals stand in for the grid
    }
  });

  test('warm drying tells more than any other weighing after two days', () => {
    expect(reading.warmGain).toBeGreaterThan(Math.max(...reading.expected.map(({ gain }) => gain)));
  });

  test('another scale tells less than the same one', () => {
    const weighings = weighed(0, 1, [0.25, 1, 2, 7], false);
    const onOther = weighings.map((one, w) => (w < 2 ? one : { ...one, divisionKg: 1e-5 }));
    const spread = (some: readonly Weighing[]) => weighCard(card(some)).diffusivity.spread;
    expect(spread(onOther)).toBeGreaterThan(spread(weighings));
  });

  test('a humidity that nobody read tells less', () => {
    const weighings = weighed(0, 1, [0.25, 1, 2, 7], false);
    const guessed = weighings.map((one) => ({ ...one, humiditySpread: 0.12 }));
    expect(weighCard(card(guessed)).diffusivity.spread).toBeGreaterThan(
      weighCard(card(weighings)).diffusivity.spread,
    );
  });
});

test('what a card can tell is said before it is made: a finer scale and warm drying tell more', () => {
  const told = (divisionKg: number) => foretellCard({ history: plan, areaM2: AREA_M2, divisionKg });
  const [fine, coarse] = [told(1e-6), told(1e-5)];
  expect(fine.prior).toBeCloseTo(2.5, 6);
  expect(coarse.warm).toBeLessThan(coarse.plain);
  expect(fine.warm).toBeLessThan(1.6);
  expect(coarse.warm).toBeGreaterThan(fine.warm);
  expect(coarse.plain).toBeGreaterThan(fine.plain);
  expect(coarse.plain).toBeLessThan(2.5);
  // What another card would tell: as the one that it would be.
  expect(coarse.other.fine).toBeCloseTo(fine.warm, 6);
  expect(fine.other.fine).toBeUndefined();
  expect(fine.other.twiceTheArea).toBeLessThan(fine.warm);
});

// Worked out with noise on many cards: three coats of 12 um dry tell to a factor 1.2, three of 25 um to 1.5.
test('three thin coats tell to a factor of 1.2, and are told of where the coats are thicker', () => {
  const of = (dryUm: number) =>
    foretellCard({
      history: { ...stack({ coats: 3, dryUm }), panelEffusivity: 60 },
      areaM2: AREA_M2,
      divisionKg: 1e-6,
    });
  const [thick, thin] = [of(25), of(12)];
  expect(thin.warm.toFixed(1)).toBe('1.2');
  expect(thin.other.thin).toBeUndefined();
  expect(thick.other.thin).toBeCloseTo(thin.warm, 6);
  expect(thick.warm.toFixed(1)).toBe('1.5');
});

test('warmth is put into the air for its time and no longer', () => {
  const air = [0, 10, 20].map((fromS) => ({ fromS, temperatureK: 290 + fromS, transferMS: 1e-3 }));
  expect(warmFor(air, 5, 15, 330).map(({ fromS, temperatureK }) => [fromS, temperatureK])).toEqual([
    [0, 290],
    [5, 330],
    [15, 300],
    [20, 310],
  ]);
});
