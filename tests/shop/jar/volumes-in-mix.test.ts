import { expect, test } from 'vitest';
import { type AddedPart, volumesInMix } from '../../../src/shop/jar/volumes-in-mix';

const added = (of: AddedPart['of'], si: number): AddedPart => ({ of, percent: { si } });

// By definition: a share of the mix is of the finished mix, and the three fill it.
test.each([
  { thinning: added('mix', 0.3), retarder: added('mix', 0.1), volumes: [0.6, 0.3, 0.1] },
  { thinning: added('lacquer', 0.5), retarder: added('mix', 0.1), volumes: [0.6, 0.3, 0.1] },
  { thinning: added('mix', 0.25), retarder: added('lacquer', 0.25), volumes: [0.6, 0.25, 0.15] },
])('$thinning.of and $retarder.of make $volumes', ({ volumes, ...jar }) => {
  const { lacquer, thinner, retarder } = volumesInMix(jar);
  for (const [i, volume] of [lacquer, thinner, retarder].entries())
    expect(volume).toBeCloseTo(volumes[i] as number, 12);
});
