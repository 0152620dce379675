import { describe, expect, test } from 'vitest';
import { labToXyz } from '../../../src/science/colour/lab';
import { hasYellowness, yellownessE313 } from '../../../src/science/colour/yellowness';
import e313 from '../../reference/yellowness-e313.json';

describe('yellownessE313', () => {
  // Check values of an open colour library citing ASTM E313-15e1.
  const checks = e313.checks.filter(({ method }) => method.startsWith('E313 D65') || method === 'E313 C/2');
  test.each(checks)('$method $XYZ', ({ method, XYZ, YI }) => {
    const [X = 0, Y = 0, Z = 0] = XYZ;
    const white = method === 'E313 C/2' ? 'C/2' : 'D65/2';
    expect(yellownessE313({ white, X, Y, Z })).toBeCloseTo(YI, 4);
  });

  test('covers the four checks', () => {
    expect(checks).toHaveLength(4);
  });

  // Computed from the standard's formula outside this project, two decimals.
  test.each(e313.computed_cream_series)('cream $lab', ({ lab, YI_E313_D65_2, YI_E313_D65_10 }) => {
    const [L = 0, a = 0, b = 0] = lab;
    expect(yellownessE313(labToXyz({ white: 'D65/2', L, a, b }))).toBeCloseTo(YI_E313_D65_2, 2);
    expect(yellownessE313(labToXyz({ white: 'D65/10', L, a, b }))).toBeCloseTo(YI_E313_D65_10, 2);
  });

  test('is not given for other lights', () => {
    expect(hasYellowness({ white: 'A/10', X: 1, Y: 1, Z: 1 })).toBe(false);
    expect(hasYellowness({ white: 'C/10', X: 1, Y: 1, Z: 1 })).toBe(true);
  });
});
