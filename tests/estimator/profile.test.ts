import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { StackHistory } from '../../src/estimator/history';
import { runEstimate } from '../../src/estimator/run-estimate';
import { simulate } from '../../src/estimator/simulate';
import { DAY_S, stack } from './stacks';

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const um = (from: number, to: number) => fc.double({ min: from * 1e-6, max: to * 1e-6, noNaN: true });

test('layers hold together what the film holds, whatever lay beneath and whatever was sanded off', () => {
  const looks = [0.01, 0.4, 4.9, 5.1, 6].map((days) => days * DAY_S);
  const any = fc.record({
    coats: fc.integer({ min: 1, max: 5 }),
    dryUm: fc.double({ min: 5, max: 35, noNaN: true }),
    pigment: fc.double({ min: 0, max: 0.3, noNaN: true }),
    openBaseM: fc.oneof(fc.constant(0), um(5, 60)),
    removedM: um(1, 80),
  });
  fc.assert(
    fc.property(any, ({ openBaseM, removedM, ...of }) => {
      const history: StackHistory = {
        ...stack({ ...of, sanded: [{ atS: 5 * DAY_S, removedM }] }),
        openBaseM,
      };
      const { profiles, heldThen, balance } = simulate(history, { untilS: 7 * DAY_S, profileAtS: looks });
      expect(profiles.map(({ timeS }) => timeS)).toEqual(looks);
      for (const [k, { timeS, layers }] of profiles.entries()) {
        const inLayersM = sum(layers.map(({ solventM }) => solventM));
        expect(Math.abs(inLayersM - sum(heldThen[k] ?? []))).toBeLessThan(1e-9 * sum(balance.laid));
        const coats = history.events.filter(({ kind, atS }) => kind === 'coat' && atS < timeS);
        const laidM = openBaseM + coats.length * of.dryUm * 1e-6;
        const leftM = timeS > 5 * DAY_S ? Math.max(0, laidM - removedM) : laidM;
        expect(sum(layers.map(({ dryM }) => dryM))).toBeCloseTo(leftM, 12);
        expect(layers).toHaveLength(coats.length + (openBaseM > 0 ? 1 : 0));
      }
    }),
    { numRuns: 15 },
  );
});

test('the solvent of a coat just laid stands in its own layer, its pigment holding none', () => {
  const [dryUm, pigment] = [20, 0.25];
  const history = stack({ coats: 3, perDay: 1, dryUm, pigment });
  const last = history.events.at(-1);
  if (last?.kind !== 'coat') throw new Error('The last event is a coat.');
  const { profiles } = simulate(history, { untilS: last.atS + 1, profileAtS: [last.atS + 1e-3] });
  const layers = profiles[0]?.layers ?? [];
  const laidM = sum(last.wetness) * dryUm * 1e-6 * (1 - pigment);
  expect((layers[2]?.solventM ?? 0) / laidM).toBeCloseTo(1, 1);
  // A day old, both below hold but a few hundredths, and the older one less.
  expect((layers[1]?.solventM ?? laidM) / laidM).toBeLessThan(0.05);
  expect(layers[0]?.solventM).toBeLessThan(layers[1]?.solventM ?? 0);
});

test('sanding takes off the top: the newest layers go, and the oldest stays as it was laid', () => {
  const history = stack({ coats: 3, dryUm: 12, sanded: [{ atS: DAY_S, removedM: 18e-6 }] });
  const { profiles } = simulate(history, { untilS: 2 * DAY_S, profileAtS: [1.5 * DAY_S] });
  expect(profiles[0]?.layers.map(({ dryM }) => dryM * 1e6)).toEqual(
    [12, 6, 0].map((um_) => expect.closeTo(um_, 6)),
  );
});

test('layers are looked at now also long after all of it has hardened', () => {
  const history = stack({ coats: 3 });
  const nowS = 400 * DAY_S;
  const { profiles, now } = runEstimate({ history, nowS, checks: [] });
  expect(profiles.at(-1)?.timeS).toBe(nowS);
  expect(now.dryM).toBeCloseTo(36e-6, 12);
});
