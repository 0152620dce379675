import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CUPS, type CupId, cup } from '../../../src/science/viscosity/cups';
import {
  betweenCups,
  dynamicViscosityMPaS,
  effluxS,
  kinematicViscosityMm2S,
  rangeMm2S,
  readCup,
} from '../../../src/science/viscosity/efflux';
import reference from '../../reference/viscosity-cups.json';

const named = (id: string) => cup(id as CupId);

describe('times and range of every cup, as its standard gives them', () => {
  test('fifteen cups', () => expect(CUPS.map(({ id }) => id)).toEqual(reference.cups.map(({ id }) => id)));
  test.each(reference.cups)(
    '$id: $t_min_s to $t_max_s s',
    ({ id, derived_nu_range_mm2_s: range, ...times }) => {
      expect(named(id).shortestS).toBe(times.t_min_s);
      expect(named(id).longestS).toBe(times.t_max_s);
      // Given to a tenth, so half a tenth.
      rangeMm2S(named(id)).forEach((mm2S, i) => {
        expect(Math.abs(mm2S - (range[i] as number))).toBeLessThanOrEqual(0.0501);
      });
    },
  );
});

describe(reference.codePoints.source, () => {
  test.each(reference.codePoints.rows)('$cup $t_s s is $nu_mm2_s mm2/s', ({ cup: id, t_s, nu_mm2_s }) => {
    expect(kinematicViscosityMm2S(named(id), t_s)).toBeCloseTo(nu_mm2_s, 4);
    expect(effluxS(named(id), nu_mm2_s)).toBeCloseTo(t_s, 3);
  });
});

describe(reference.standardsMaker.source, () => {
  const { rows } = reference.standardsMaker;
  test('ten points', () => expect(rows).toHaveLength(10));
  // 3.6 %: viscosities in the table are rounded to two figures.
  test.each(rows)('$cup $t_s s is $nu_mm2_s mm2/s', ({ cup: id, t_s, nu_mm2_s }) => {
    expect(Math.abs(kinematicViscosityMm2S(named(id), t_s) / nu_mm2_s - 1)).toBeLessThan(0.036);
  });
});

describe(`${reference.hydraulicInstitute.source}: the stated spread is the measured one`, () => {
  test.each(reference.hydraulicInstitute.tables)('$cup: $meanDifferencePercent %', (table) => {
    const differences = table.rows.map(({ nu_mm2_s, t_s }) =>
      Math.abs(kinematicViscosityMm2S(named(table.cup), t_s) / nu_mm2_s - 1),
    );
    const mean = differences.reduce((sum, difference) => sum + difference, 0) / differences.length;
    expect(mean).toBeCloseTo(table.meanDifferencePercent / 100, 2);
    expect(Math.abs((named(table.cup).tableSpread as number) - mean)).toBeLessThan(0.005);
  });
});

describe('every cup', () => {
  test.each(CUPS)('$id: there and back is the same, longer is thicker', (each) => {
    fc.assert(
      fc.property(fc.double({ min: each.shortestS, max: each.longestS - 0.1, noNaN: true }), (seconds) => {
        const mm2S = kinematicViscosityMm2S(each, seconds);
        expect(effluxS(each, Math.min(mm2S, rangeMm2S(each)[1]))).toBeCloseTo(seconds, 6);
        expect(kinematicViscosityMm2S(each, seconds + 0.1)).toBeGreaterThan(mm2S);
      }),
    );
  });
  test.each(CUPS)('$id takes the shortest and the longest of its times, and shows them again', (each) => {
    for (const seconds of [each.shortestS, each.longestS]) {
      const again = betweenCups(each, seconds, each);
      expect(again.ok && again.value).toBeCloseTo(seconds, 9);
    }
  });
  test.each(CUPS)('$id refuses times and viscosities outside its range', (each) => {
    const [thinnest, thickest] = rangeMm2S(each);
    for (const seconds of [each.shortestS - 0.1, each.longestS + 0.1, Number.NaN]) {
      expect(() => kinematicViscosityMm2S(each, seconds)).toThrow(RangeError);
      expect(readCup(each, seconds)).toEqual({ ok: false, failure: { kind: 'outside-its-cup', cup: each } });
    }
    for (const mm2S of [thinnest - 0.1, thickest + 0.1])
      expect(() => effluxS(each, mm2S)).toThrow(RangeError);
  });
});

describe('from cup to cup', () => {
  test('Ford 4 at 64 s reads the same liquid as Zahn 3 at 27 s (standards maker’s table, 230 mm2/s)', () => {
    const there = betweenCups(cup('ford-4'), 64, cup('zahn-3'));
    expect(there.ok && Math.abs(there.value - 27)).toBeLessThan(0.3);
  });
  test.each([
    { from: 'ford-4', seconds: 64, to: 'zahn-5', kind: 'too-thin-for-cup' }, // 230 of 460-1840 mm2/s
    { from: 'ford-4', seconds: 64, to: 'ford-2', kind: 'too-thick-for-cup' }, // 230 of 32-118 mm2/s
    { from: 'ford-4', seconds: 10, to: 'zahn-2', kind: 'outside-its-cup' },
  ] as const)('$from at $seconds s in $to: $kind', ({ from, seconds, to, kind }) => {
    expect(betweenCups(cup(from), seconds, cup(to))).toMatchObject({ ok: false, failure: { kind } });
  });
});

test('dynamic viscosity is kinematic times density: 100 mm2/s at 0.95 g/mL is 95 mPa s', () => {
  expect(dynamicViscosityMPaS(100, 950)).toBeCloseTo(95, 12);
});
