import { expect, test } from 'vitest';
import { transferRatio } from '../../../src/science/solvents/evaporation';
import { solvent } from '../../../src/science/solvents/solvents';

test('a lighter molecule crosses the air faster; the scale is butyl acetate', () => {
  expect(transferRatio(solvent('n-butyl-acetate'))).toBe(1);
  expect(transferRatio(solvent('acetone'))).toBeCloseTo(1.29, 2); // (0.1058/0.0722)^(2/3), by hand
  expect(transferRatio(solvent('dpnb'))).toBeLessThan(1);
});
