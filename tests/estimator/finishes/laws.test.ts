import { describe, expect, test } from 'vitest';
import { estimateByLaw } from '../../../src/estimator/finishes/estimate-by-law';
import { FINISH_LAWS } from '../../../src/estimator/finishes/finish-law';
import { progress } from '../../../src/estimator/finishes/progress';
import { cureRateS, dryingRate, tgAtK } from '../../../src/estimator/finishes/rates';
import { arrheniusFactor } from '../../../src/estimator/laws/glass';
import { saturationPressurePa } from '../../../src/science/air/saturation';
import { CURING, hoursTo, law, onePiece, SHEET_AT_20 } from './cases';

const KCAL = 4184;

// Measured activation energies of tin-catalysed two-pack urethane, 15 to 45 °C (abstract of a journal, read):
// 7.0 and 8.5 kcal/mol, 1.48 and 1.63 times faster at 30 than at 20 °C; within 3 %.
test.each([
  { catalyst: 'DBTDL', kcal: 7, factor: 1.48 },
  { catalyst: 'DBTDM', kcal: 8.5, factor: 1.63 },
])('urethane with $catalyst: $factor times for 10 K', ({ kcal, factor }) => {
  const computed = arrheniusFactor(kcal * KCAL, 293.15, 303.15);
  expect(Math.abs(computed / factor - 1)).toBeLessThan(0.03);
});

// Independent calculation, to 0.01.
test.each([
  { kJ: 45, factor: 1.84 },
  { kJ: 50, factor: 1.97 },
  { kJ: 60, factor: 2.25 },
  { kJ: 80, factor: 2.95 },
])('$kJ kJ/mol: $factor times from 20 to 30 °C', ({ kJ, factor }) => {
  expect(Math.abs(arrheniusFactor(kJ * 1000, 293.15, 303.15) - factor)).toBeLessThan(0.01);
});

describe('waterborne dries by the humidity of the air', () => {
  const at = (relativeHumidity: number, temperatureK = 294.15) =>
    dryingRate(FINISH_LAWS.waterborne, { temperatureK, relativeHumidity });

  // The 1/(1 - RH) law of waterborne coatings.
  test.each([
    { from: 0.5, to: 0.75, slower: 2 },
    { from: 0.5, to: 0.9, slower: 5 },
    { from: 0.2, to: 0.6, slower: 2 },
  ])('from $from to $to: $slower times slower', ({ from, to, slower }) => {
    expect(at(from) / at(to)).toBeCloseTo(slower, 9);
  });

  test('with the vapour pressure of water', () => {
    expect(at(0.5, 303.15) / at(0.5, 294.15)).toBeCloseTo(
      saturationPressurePa(30) / saturationPressurePa(21),
      9,
    );
  });

  test('and not at all below its film-forming temperature', () => {
    expect(at(0.5, 282.15)).toBe(0);
    const cold = estimateByLaw('waterborne', onePiece({ temperatureK: 280 }));
    expect(cold.milestones.recoat.likelyS).toBe(Number.POSITIVE_INFINITY);
    expect(cold.law.wasTooCold).toBe(true);
    expect(estimateByLaw('waterborne', onePiece({})).law.wasTooCold).toBe(false);
  });

  // Its film forms from 10 °C on; at 21 °C and 50 % it is dry in 2 h at the latest (common practice, no source).
  const HOUR_S = 3600;
  test.each([
    { why: 'a cold hour while it is wet', coldFromH: 0.5, coldToH: 1.5, wasTooCold: true },
    { why: 'a cold night before it was laid', coldFromH: -9, coldToH: 0, wasTooCold: false },
    { why: 'a cold night that ends while it is wet', coldFromH: -9, coldToH: 0.2, wasTooCold: true },
    { why: 'a cold night from the last minute on', coldFromH: 1.99, coldToH: 11, wasTooCold: true },
    { why: 'a cold night after it was dry', coldFromH: 2, coldToH: 11, wasTooCold: false },
    { why: 'a cold hour that is still to come', coldFromH: 1, coldToH: 2, nowH: 0.9, wasTooCold: false },
    { why: 'a cold hour that has come', coldFromH: 1, coldToH: 2, nowH: 1.1, wasTooCold: true },
  ])('$why: too cold $wasTooCold', ({ coldFromH, coldToH, nowH = 24, wasTooCold }) => {
    const request = onePiece({});
    const air = [
      { atH: -24, temperatureK: 294.15 },
      { atH: coldFromH, temperatureK: 281 },
      { atH: coldToH, temperatureK: 294.15 },
    ].map(({ atH, temperatureK }) => ({ fromS: atH * HOUR_S, temperatureK, relativeHumidity: 0.5 }));
    const { law: own } = estimateByLaw('waterborne', {
      ...request,
      nowS: nowH * HOUR_S,
      history: { ...request.history, air },
    });
    expect(own.wasTooCold).toBe(wasTooCold);
  });

  test('a film at just its film-forming temperature forms', () => {
    const { formsFilmFromK = Number.NaN } = FINISH_LAWS.waterborne;
    expect(estimateByLaw('waterborne', onePiece({ temperatureK: formsFilmFromK })).law.wasTooCold).toBe(
      false,
    );
  });

  test.each(['precatalysed', 'conversion', 'urethane'] as const)(
    'but %s forms its film in any cold',
    (finish) => {
      expect(estimateByLaw(finish, onePiece({ temperatureK: 280 })).law.wasTooCold).toBe(false);
    },
  );
});

// Common practice at 20 to 22 °C, 40 to 55 % humidity, moving air (no source).
test.each([
  { finish: 'waterborne', moment: 'recoat', from: 1, to: 2 },
  { finish: 'waterborne', moment: 'rubOut', from: 7 * 24, to: 21 * 24 },
  { finish: 'precatalysed', moment: 'recoat', from: 45 / 60, to: 1 },
  { finish: 'precatalysed', moment: 'level', from: 3 * 24, to: 10 * 24 },
  { finish: 'precatalysed', moment: 'rubOut', from: 3 * 24, to: 10 * 24 },
  { finish: 'conversion', moment: 'recoat', from: 2.5, to: 3.5 },
] as const)('$finish, $moment: $from to $to h', ({ finish, moment, from, to }) => {
  const hours = hoursTo(estimateByLaw(finish, onePiece({ dryM: law(finish).usualDryM })), moment);
  expect(hours.likely).toBeGreaterThanOrEqual(from);
  expect(hours.likely).toBeLessThanOrEqual(to);
});

describe.each(CURING)('%s', (finish) => {
  test('a band is in order, and moments come in order', () => {
    const { milestones } = estimateByLaw(finish, onePiece({}));
    const likely = ['touch', 'recoat', 'level', 'rubOut', 'settled'] as const;
    for (const name of likely) {
      const { earliestS, likelyS, lateS } = milestones[name];
      expect(earliestS).toBeLessThan(likelyS);
      expect(likelyS).toBeLessThan(lateS);
    }
    const times = likely.map((name) => milestones[name].likelyS);
    expect(times).toEqual([...times].sort((one, other) => one - other));
  });

  test('10 K warmer is 1.5 to 4 times sooner, 10 K colder 1.5 to 8 times later', () => {
    const [cold, usual, warm] = [284.15, 294.15, 304.15].map(
      (temperatureK) => hoursTo(estimateByLaw(finish, onePiece({ temperatureK })), 'level').likely,
    ) as [number, number, number];
    expect(usual / warm).toBeGreaterThan(1.5);
    expect(usual / warm).toBeLessThan(4);
    expect(cold / usual).toBeGreaterThan(1.5);
    expect(cold / usual).toBeLessThan(8);
  });

  test('a thicker coat is not sooner', () => {
    const thin = estimateByLaw(finish, onePiece({ dryM: 15e-6 }));
    const thick = estimateByLaw(finish, onePiece({ dryM: 60e-6 }));
    for (const name of ['touch', 'recoat', 'level', 'rubOut', 'settled'] as const)
      expect(thick.milestones[name].likelyS).toBeGreaterThanOrEqual(thin.milestones[name].likelyS);
  });

  test('the curve loses what evaporates and gains hardness', () => {
    const { curve } = estimateByLaw(finish, onePiece({}));
    for (let k = 1; k < curve.timeS.length; k++) {
      expect(curve.heldM[k]).toBeLessThanOrEqual((curve.heldM[k - 1] as number) + 1e-15);
      expect(curve.hardnessK[k]).toBeGreaterThanOrEqual((curve.hardnessK[k - 1] as number) - 1e-9);
      expect(curve.heldLowM[k]).toBeLessThanOrEqual(curve.heldHighM[k] as number);
    }
  });
});

describe('vitrification', () => {
  test('a urethane cures 0.6 to 0.8 in 8 h at room temperature (measured with tin, read)', () => {
    const { cured } = progress(
      law('urethane'),
      [{ fromS: 0, temperatureK: 296.15, relativeHumidity: 0.5 }],
      0,
      undefined,
      8 * 3600,
    );
    expect(cured.at(-1)).toBeGreaterThan(0.6);
    expect(cured.at(-1)).toBeLessThan(0.8);
  });

  // First-order kinetics in closed form: 1 - exp(-k t).
  test.each([0.5, 1, 2])('without it %d time constants leave what first order leaves', (constants) => {
    const plain = { ...law('urethane'), vitrifies: false };
    const air = { fromS: 0, temperatureK: 296.15, relativeHumidity: 0.5 };
    const s = constants / cureRateS(plain, 0, air.temperatureK);
    expect(progress(plain, [air], 0, undefined, s).cured.at(-1)).toBeCloseTo(1 - Math.exp(-constants), 3);
  });

  test('holds the cure back in the cold beyond what Arrhenius does', () => {
    const rates = [284.15, 304.15].map((temperatureK) => cureRateS(law('urethane'), 0.8, temperatureK)) as [
      number,
      number,
    ];
    expect(rates[1] / rates[0]).toBeGreaterThan(
      1.5 * arrheniusFactor(law('urethane').activationJMol, 284.15, 304.15),
    );
  });

  test('the glass transition runs from that of the resin to that of the network', () => {
    expect(tgAtK(law('conversion'), 0)).toBe(law('conversion').startTgK);
    expect(tgAtK(law('conversion'), 1)).toBe(law('conversion').endTgK);
  });
});

// Common practice, no source: light use, in days.
test.each([
  { finish: 'waterborne', days: [3, 5, 7] },
  { finish: 'precatalysed', days: [2, 3, 5] },
  { finish: 'urethane', days: [1, 2, 3] },
] as const)('$finish: light use after $days days, before its full cure', ({ finish, days }) => {
  const { law: own, milestones } = estimateByLaw(finish, onePiece({ dryM: law(finish).usualDryM }));
  const { earliestS, likelyS, lateS } = own.lightUse;
  for (const [i, s] of [earliestS, likelyS, lateS].entries())
    expect(Math.abs(s / 86_400 / (days[i] ?? 0) - 1)).toBeLessThan(0.02);
  expect(likelyS).toBeLessThan(milestones.settled.likelyS);
});

describe('a data sheet', () => {
  test.each(CURING)('%s: at the sheet’s own conditions the law gives the sheet’s own times', (finish) => {
    const sheet = SHEET_AT_20;
    const dryM = law(finish).usualDryM;
    const request = onePiece({
      temperatureK: sheet.temperatureK,
      relativeHumidity: sheet.relativeHumidity,
      dryM,
      sheet,
    });
    const estimate = estimateByLaw(finish, request);
    expect(estimate.law.isScaledToSheet).toBe(true);
    const close = (likelyS: number, said: number) => expect(Math.abs(likelyS / said - 1)).toBeLessThan(0.02);
    close(estimate.milestones.touch.likelyS, sheet.touchS);
    close(estimate.milestones.recoat.likelyS, sheet.recoatFromS);
    close(estimate.milestones.level.likelyS, sheet.sandS);
    close(estimate.milestones.settled.likelyS, sheet.curedS);
    if (estimate.law.recoatUntil) close(estimate.law.recoatUntil.likelyS, sheet.recoatUntilS);
  });

  test('what it leaves out is moved along with what it names', () => {
    const usual = estimateByLaw('conversion', onePiece({}));
    const { temperatureK, relativeHumidity } = SHEET_AT_20;
    const slow = estimateByLaw(
      'conversion',
      onePiece({ sheet: { temperatureK, relativeHumidity, sandS: 6 * 86_400 } }),
    );
    expect(slow.milestones.rubOut.likelyS).toBeGreaterThan(1.5 * usual.milestones.rubOut.likelyS);
  });
});

test('a history without a coat is refused', () => {
  const { history, nowS } = onePiece({});
  expect(() => estimateByLaw('urethane', { nowS, history: { ...history, coats: [] } })).toThrow(RangeError);
});
