import { toKelvin } from '../units';

/**
 * A shop of which nothing was said, and in which the trade gives its times: 20 to 22 °C, 40 to 55 % humidity, a gentle draught as
 * mass transfer of n-butyl acetate, m/s (common practice, no source; the draught is fitted to it).
 */
export const USUAL_SHOP = { temperatureK: toKelvin(21), relativeHumidity: 0.5, transferMS: 1.2e-3 } as const;
/** Of wood: sqrt(k rho c) with k 0.15 W/(m K) and rho c 0.9 MJ/(m3 K) (from memory). */
export const WOOD_EFFUSIVITY = 370;
