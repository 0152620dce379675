import { expect, test } from 'vitest';
import { finishTraits } from '../../../src/estimator/finishes/traits';

// Common practice, no source: lacquers and shellac melt in, blush and take retarder; waterborne does none of it; what cures has a
// latest time for its next coat, and blushes as long as its solvent cools it.
test.each([
  { finish: 'nitrocellulose', is: 'melts in, blushes, takes retarder' },
  { finish: 'acrylic', is: 'melts in, blushes, takes retarder' },
  { finish: 'cab', is: 'melts in, blushes, takes retarder' },
  { finish: 'shellac', is: 'melts in, blushes, takes retarder' },
  { finish: 'waterborne', is: '' },
  { finish: 'precatalysed', is: 'blushes, takes retarder, has a window' },
  { finish: 'conversion', is: 'blushes, takes retarder, has a window' },
  { finish: 'urethane', is: 'blushes, takes retarder, has a window' },
] as const)('$finish: $is', ({ finish, is }) => {
  const { meltsIn, blushes, takesRetarder, hasWindow } = finishTraits(finish);
  const said = [
    meltsIn && 'melts in',
    blushes && 'blushes',
    takesRetarder && 'takes retarder',
    hasWindow && 'has a window',
  ].filter(Boolean);
  expect(said.join(', ')).toBe(is);
});
