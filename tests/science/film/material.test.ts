import { describe, expect, test } from 'vitest';
import { volumeSolidsOfCut } from '../../../src/science/film/cut';
import { materialByRate, materialFor } from '../../../src/science/film/material';
import { thinnedOfLacquer } from '../../../src/science/film/thinning';

describe('a job by the spreading rate of a sheet', () => {
  const job = { areaM2: 4, coats: 2, rateM2M3: 10_000, gunHoldUpM3: 15e-6, fillings: 2 };

  test('4 m2 at 10 m2/L: 0.4 L a coat, 0.8 L for two, and 30 mL in the gun, by hand', () => {
    const { perCoatM3, sprayedM3, mixedM3 } = materialByRate(job);
    expect(perCoatM3).toBeCloseTo(0.4e-3, 12);
    expect(sprayedM3).toBeCloseTo(0.8e-3, 12);
    expect(mixedM3).toBeCloseTo(0.83e-3, 12);
  });

  test('is the job by wet film whose film and losses make that rate', () => {
    const { rateM2M3, ...rest } = job;
    const byFilm = materialFor({ ...rest, wetFilmM: 40e-6, transferEfficiency: 0.4 }); // 40 um / 0.4 is 1 L over 10 m2
    expect(byFilm.mixedM3).toBeCloseTo(materialByRate({ ...rest, rateM2M3 }).mixedM3, 12);
  });

  test('refuses a rate in m2/L', () => {
    expect(() => materialByRate({ ...job, rateM2M3: 10 })).toThrow(RangeError);
  });
});

test.each([
  { why: 'a cut in pounds a gallon times a thousand', run: () => volumeSolidsOfCut(2000) },
  { why: 'a cut of less than nothing', run: () => volumeSolidsOfCut(-1) },
  { why: 'more thinner than any mix', run: () => thinnedOfLacquer(100) },
])('refuses $why', ({ run }) => {
  expect(run).toThrow(RangeError);
});
