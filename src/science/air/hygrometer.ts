import { assertWithin } from '../assert-within';
import { AIR_LIMITS } from './air-limits';

/**
 * Relative humidity of the air, a fraction, from what a hygrometer shows and the offset found when it was checked.
 * Kept to what air can have: an instrument that shows 0.99 and reads 0.03 low stands in saturated air.
 */
export function correctedRelativeHumidity(shown: number, offset: number): number {
  assertWithin('Hygrometer reading', shown, 0, 1, '(fraction)');
  assertWithin('Hygrometer correction', offset, -0.3, 0.3, '(fraction)');
  const { lowest, highest } = AIR_LIMITS.relativeHumidity;
  return Math.min(highest, Math.max(lowest, shown + offset));
}
