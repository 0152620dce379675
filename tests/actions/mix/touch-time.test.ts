import { expect, test } from 'vitest';
import { touchTime } from '../../../src/actions/mix/touch-time';
import { answer } from '../../../src/estimator/run/answer';
import type { Estimator } from '../../../src/estimator/run/client';
import type { JarFilm } from '../../../src/shop/jar/film';

/** The thinner blend of the drying model's own table, 15 % volume solids. */
const FILM: JarFilm = {
  finish: 'nitrocellulose',
  volumeSolids: 0.15,
  solvents: [
    { id: 'acetone', share: 0.25 },
    { id: 'mek', share: 0.1 },
    { id: 'toluene', share: 0.3 },
    { id: 'isobutyl-acetate', share: 0.2 },
    { id: 'n-butyl-acetate', share: 0.1 },
    { id: '2-butoxyethanol', share: 0.05 },
  ],
  pigment: 0,
  passage: 1,
  ownSolvents: 'said',
  unknownSolvents: [],
};

/** The worker's own answer, given at once. */
const estimator: Pick<Estimator, 'estimate'> = {
  estimate(request) {
    const answered = answer(request);
    return {
      result: answered.ok ? Promise.resolve(answered.estimate) : Promise.reject(new Error(answered.message)),
      cancel() {},
    };
  },
};

test('a single coat is dry to touch within the trade’s 5 to 15 min, a thicker one later', async () => {
  // The trade's timing: dry to touch 5 - 15 min (common practice, no source); here 15 um dry
  const touch = await touchTime(FILM, estimator);
  const minutes = (touch?.likelyS ?? Number.NaN) / 60;
  expect(minutes).toBeGreaterThan(5);
  expect(minutes).toBeLessThan(15);
  expect(touch?.earliestS).toBeLessThan(minutes * 60);
  expect(touch?.lateS).toBeGreaterThan(minutes * 60);
  const thick = await touchTime(FILM, estimator, 150e-6);
  expect(thick?.likelyS).toBeGreaterThan(minutes * 60);
});

test('a finish that does not dry by solvent alone gives no such time', async () => {
  expect(await touchTime({ ...FILM, finish: 'waterborne' }, estimator)).toBeUndefined();
});

test.each([0, 1])('of a mix that is %d parts solids there is nothing that dries', async (volumeSolids) => {
  expect(await touchTime({ ...FILM, volumeSolids }, estimator)).toBeUndefined();
});
