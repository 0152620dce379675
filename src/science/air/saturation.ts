import { toKelvin } from '../../units';
import { assertWithin } from '../assert-within';

/** The range of the saturation formulas, in °C. */
export const SATURATION_LIMITS_C = { lowest: -100, highest: 200 } as const;

/** Here ice and water have the same vapour pressure, so the two formulas meet without a step. */
const TRIPLE_POINT_C = 0.01;

/**
 * Vapour pressure of saturated air, in Pa: over liquid water above the triple point, over ice below it.
 *
 * Source: R. W. Hyland, A. Wexler 1983, as in ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 5 (ice) and 6 (water).
 * Valid: -100 to 200 °C.
 * Accuracy: within 0.03 % of the ASHRAE table from -20 to 50 °C.
 * Left out: supercooled water; the slight rise that air of ordinary pressure brings (0.4 %).
 */
export function saturationPressurePa(temperatureC: number): number {
  const { lowest, highest } = SATURATION_LIMITS_C;
  assertWithin('Temperature', temperatureC, lowest, highest, '°C');
  const T = toKelvin(temperatureC);
  return Math.exp(temperatureC <= TRIPLE_POINT_C ? lnPressureOverIce(T) : lnPressureOverWater(T));
}

/** Equation 5. */
function lnPressureOverIce(T: number): number {
  return (
    -5.6745359e3 / T +
    6.3925247 +
    T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 + T * -9.484024e-13))) +
    4.1635019 * Math.log(T)
  );
}

/** Equation 6. */
function lnPressureOverWater(T: number): number {
  return (
    -5.8002206e3 / T +
    1.3914993 +
    T * (-4.8640239e-2 + T * (4.1764768e-5 + T * -1.4452093e-8)) +
    6.5459673 * Math.log(T)
  );
}
