import { describe, expect, test } from 'vitest';
import { estimateByLaw } from '../../../src/estimator/finishes/estimate-by-law';
import { FINISH_LAWS } from '../../../src/estimator/finishes/finish-law';
import { CURING, onePiece } from './cases';

const HOUR_S = 3600;
const DAY_S = 24 * HOUR_S;

describe.each(CURING)('%s', (finish) => {
  const request = onePiece({});
  const nowS = 2 * HOUR_S;
  const estimate = estimateByLaw(finish, { ...request, nowS });
  const { now, curve, profiles, milestones } = estimate;

  test('what is held now is what the layers hold now, and sinks by its share of the film', () => {
    const layers = profiles.find(({ timeS }) => timeS === nowS)?.layers ?? [];
    expect(layers).toHaveLength(1);
    expect((layers[0]?.solventM ?? 0) / now.heldM).toBeCloseTo(1, 9);
    expect(now.dryM).toBeCloseTo(20e-6, 12);
    expect(now.stillToSink).toBeCloseTo(now.heldM / (now.heldM + now.dryM), 12);
    expect(now.filmK).toBe(294.15);
    // The curve says the same of that moment, between its points.
    const k = curve.timeS.findIndex((timeS) => timeS > nowS);
    expect(now.heldM).toBeLessThan(curve.heldM[k - 1] as number);
    expect(now.heldM).toBeGreaterThan(curve.heldM[k] as number);
    expect(now.hardnessK).toBeGreaterThan(curve.hardnessK[k - 1] as number);
    expect(now.hardnessK).toBeLessThan(curve.hardnessK[k] as number);
  });

  test('of its volatiles a twentieth is left at touch, and the curve runs from them to where it is settled at the latest', () => {
    expect(curve.timeS[0]).toBeCloseTo(30, 9);
    expect(curve.timeS.at(-1)).toBeCloseTo(milestones.settled.lateS, 0);
    expect((curve.heldM[0] as number) / 40e-6).toBeGreaterThan(0.85);
    const k = curve.timeS.findIndex((timeS) => timeS > milestones.touch.likelyS);
    const twentieth = Math.exp(-3) * 40e-6; // judgement, no source
    expect(curve.heldM[k - 1]).toBeGreaterThan(twentieth);
    expect(curve.heldM[k]).toBeLessThan(twentieth);
  });

  test('the band of the curve lies on both sides, and closes where nothing is left to cure', () => {
    const ks = curve.timeS.flatMap((s, k) => (s > HOUR_S / 4 && s < milestones.level.likelyS ? [k] : []));
    expect(ks.length).toBeGreaterThan(5);
    for (const k of ks) {
      if ((curve.timeS[k] as number) < milestones.recoat.lateS) {
        expect(curve.heldLowM[k]).toBeLessThan(curve.heldM[k] as number);
        expect(curve.heldHighM[k]).toBeGreaterThan(curve.heldM[k] as number);
      }
      expect(curve.hardnessLowK[k]).toBeLessThan(curve.hardnessK[k] as number);
      expect(curve.hardnessHighK[k]).toBeGreaterThan(curve.hardnessK[k] as number);
    }
    // Wet it is as soft as its resin and 60 K softer for what it holds (judgement); cured it is as hard as its network.
    const { startTgK, endTgK } = FINISH_LAWS[finish];
    expect(curve.hardnessK[0]).toBeGreaterThan(startTgK - 60 - 294.15 - 0.01);
    expect(curve.hardnessK[0]).toBeLessThan(startTgK - 60 - 294.15 + 12);
    expect(Math.max(...curve.hardnessHighK)).toBeLessThanOrEqual(endTgK - 294.15 + 1e-9);
  });

  test('is looked at in layers just after the coat, now, and from a minute to twenty days after it', () => {
    const times = profiles.map(({ timeS }) => timeS);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(times).toContain(1);
    expect(times).toContain(nowS);
    expect(times).toHaveLength(42);
    expect(times.at(-1)).toBeCloseTo(20 * DAY_S, 3);
  });
});

test('a film is as warm as the air of the moment, and each coat as that in which it was laid', () => {
  const { history } = onePiece({});
  const air = [
    { fromS: 0, temperatureK: 294.15, relativeHumidity: 0.5 },
    { fromS: 5 * HOUR_S, temperatureK: 299.15, relativeHumidity: 0.5 },
  ];
  const coats = [-HOUR_S, 4 * HOUR_S, 5 * HOUR_S].map((atS) => ({ atS, dryM: 20e-6, volatileM: 40e-6 }));
  const told = (nowS: number) => estimateByLaw('conversion', { history: { ...history, air, coats }, nowS });
  expect(told(6 * HOUR_S).coldestK).toEqual([294.15, 294.15, 299.15]);
  expect(told(6 * HOUR_S).now.filmK).toBe(299.15);
  expect(told(5 * HOUR_S - 1).now.filmK).toBe(294.15);
  expect(() => estimateByLaw('conversion', { history: { ...history, air: [] }, nowS: 0 })).toThrow('no air');
});

test('what never comes is later by nothing known', () => {
  const { history, nowS } = onePiece({ temperatureK: 280 });
  const nextCoat = { atS: HOUR_S, dryM: 20e-6, volatileM: 40e-6 };
  const estimate = estimateByLaw('waterborne', {
    history,
    nowS,
    nextCoat,
    whatIf: [{ name: 'the same', history }],
  });
  expect(estimate.oneMoreCoat).toBeUndefined();
  expect(estimate.whatIf).toEqual([]);
  // At -10 °C this one comes to be level-sanded, and turns to glass before it may be rubbed out.
  const cold = onePiece({ temperatureK: 263.15 });
  const half = estimateByLaw('urethane', { ...cold, whatIf: [{ name: 'the same', history: cold.history }] });
  expect(half.milestones.level.likelyS).toBeLessThan(Number.POSITIVE_INFINITY);
  expect(half.milestones.rubOut.likelyS).toBe(Number.POSITIVE_INFINITY);
  expect(half.whatIf).toEqual([]);
});

test('a film that was sanded away altogether sinks no more', () => {
  const { history } = onePiece({});
  const { now } = estimateByLaw('conversion', {
    history: { ...history, sandings: [{ atS: HOUR_S, removedM: 50e-6 }] },
    nowS: 2 * HOUR_S,
  });
  expect(now.dryM).toBe(0);
  expect(now.stillToSink).toBe(0);
});

// A coat of 40 um is twice the usual film of 20 um, so that it dries in twice the time; the stretch is four at most (judgement).
test.each([
  { dryUm: 40, by: 2 },
  { dryUm: 10, by: 0.5 },
  { dryUm: 400, by: 4 },
  { dryUm: 1, by: 0.25 },
])('a coat of $dryUm um dries in $by of the time of a usual one', ({ dryUm, by }) => {
  const touch = (um: number) =>
    estimateByLaw('precatalysed', onePiece({ dryM: um * 1e-6 })).milestones.touch.likelyS;
  expect(touch(dryUm) / touch(20)).toBeCloseTo(by, 3);
});

test('layers come with their coats, and lose to sanding what it takes of each from the top, its solvent with it', () => {
  const { history } = onePiece({});
  const coats = [0, 7200].map((atS) => ({ atS, dryM: 20e-6, volatileM: 40e-6 }));
  const told = (removedM: number) =>
    estimateByLaw('conversion', {
      history: { ...history, coats, sandings: [{ atS: 9000, removedM }] },
      nowS: 10_000,
    }).profiles;
  const [plain, sanded] = [told(0), told(25e-6)];
  const um = (profiles: typeof plain, timeS: number) =>
    profiles.find((one) => one.timeS === timeS)?.layers.map(({ dryM }) => Math.round(dryM * 1e6));
  expect([um(plain, 1), um(plain, 7201), um(plain, 10_000)]).toEqual([[20], [20, 20], [20, 20]]);
  expect([um(sanded, 1), um(sanded, 7201), um(sanded, 10_000)]).toEqual([[20], [20, 20], [15, 0]]);
  const held = (profiles: typeof plain) =>
    profiles.find(({ timeS }) => timeS === 10_000)?.layers.map(({ solventM }) => solventM) as [
      number,
      number,
    ];
  expect(held(sanded)[0] / held(plain)[0]).toBeCloseTo(0.75, 9);
  expect(held(sanded)[1]).toBe(0);
  expect(held(plain)[0]).toBeLessThan(held(plain)[1]);
});
