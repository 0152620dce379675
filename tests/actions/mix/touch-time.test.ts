import { expect, test } from 'vitest';
import { touchTimeS } from '../../../src/actions/mix/touch-time';
import type { JarFilm } from '../../../src/shop/jar/film';

/** The thinner blend of the drying model's own table (estimator.md), 15 % volume solids. */
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

test('a single coat is dry to touch within the trade’s 5 to 15 min, a thicker one later', () => {
  // The trade's timing: dry to touch 5 - 15 min (common practice, no source); here 15 um dry
  const minutes = (touchTimeS(FILM) ?? Number.NaN) / 60;
  expect(minutes).toBeGreaterThan(5);
  expect(minutes).toBeLessThan(15);
  expect(touchTimeS(FILM, 150e-6)).toBeGreaterThan(minutes * 60);
});

test('a finish that does not dry by solvent alone gives no such time', () => {
  expect(touchTimeS({ ...FILM, finish: 'waterborne' })).toBeUndefined();
});
