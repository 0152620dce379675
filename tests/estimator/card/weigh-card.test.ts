import { describe, expect, test } from 'vitest';
import { PRIOR } from '../../../src/estimator/belief';
import type { Card, Weighing } from '../../../src/estimator/card/card';
import { createNormal } from '../../../src/estimator/card/normal';
import { heldBetween, heldTable, laidDryKg, weighCard } from '../../../src/estimator/card/weigh-card';
import { DAY_S, stack } from '../stacks';

const AREA_M2 = 0.02;
const BARE_KG = 0.001;
const plan = { ...stack({ coats: 3, dryUm: 25 }), panelEffusivity: 60 };
const lastS = plan.events.at(-1)?.atS as number;

/** Weighings of a card as they would be were the diffusivity and the thickness so; the last one dried warm where asked. */
function weighed(lnD: number, thick: number, days: readonly number[], isWarm: boolean): Weighing[] {
  const events = plan.events.map((event) =>
    event.kind === 'coat' ? { ...event, dryM: event.dryM * thick } : event,
  );
  const history = { ...plan, events };
  const atS = days.map((day) => lastS + day * DAY_S);
  const table = heldTable(history, AREA_M2, atS);
  const dryKg = laidDryKg({ history, areaM2: AREA_M2 });
  return atS.map((at, w) => {
    const isWarmDried = isWarm && w === atS.length - 1;
    const heldKg = isWarmDried ? 0 : heldBetween(table, w, lnD, 0);
    return { atS: at, humidity: 0.5, isWarmDried, massKg: BARE_KG + dryKg * 1.015 + heldKg };
  });
}
const card = (weighings: readonly Weighing[], divisionKg = 1e-6): Card => ({
  history: plan,
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
    expect(heldKg[3]?.high).toBe(0);
  });
});

describe('a normal of what is shared', () => {
  // Two quantities, noise 1 and 2, sharing one thing of spread 3: covariance [[10, 9], [9, 13]], determinant 49.
  const normal = createNormal([1, 2], [{ along: [1, 1], spread: 3 }]);

  test('has the density of its covariance', () => {
    // x = (1, 2): x C^-1 x = (13 - 2 * 9 * 2 + 10 * 4) / 49 = 17 / 49, by hand
    expect(normal.logDensity([1, 2])).toBeCloseTo(-0.5 * (17 / 49) - 0.5 * Math.log(49), 12);
  });

  test('says how much of it is shared', () => {
    // s^2 a C^-1 x = 9 ((13 - 18) + (20 - 9)) / 49 = 54 / 49, by hand
    expect(normal.shared([1, 2])[0]).toBeCloseTo(54 / 49, 12);
  });
});
