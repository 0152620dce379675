import { assertWithin } from '../assert-within';
import { AIR_LIMITS } from './air-limits';
import { dewPointC, relativeHumidityFromDewPoint } from './dew-point';

/** How likely fast lacquer is to turn white, from the worst to the best. */
export type BlushOutlook = 'below-floor' | 'expect-blush' | 'care' | 'easy';

/** The dew-point margins of the piece, in K, from which the outlook gets better. */
export interface BlushLimits {
  readonly floorK: number;
  readonly careK: number;
  readonly easyK: number;
}

/**
 * The margins that hold until a person's own are known.
 * Source: floor 3 K, coating practice after ISO 8502-4; easy 11 K (20 °F), a wood-finishing practice rule for
 * nitrocellulose lacquer; care 5 K, common practice, no source.
 */
export const USUAL_BLUSH_LIMITS: BlushLimits = { floorK: 3, careK: 5, easyK: 11 };

/** How far the piece is above the dew point of the air around it, in K; below 0 there is dew on it already. */
export function dewPointMarginK(pieceC: number, airC: number, relativeHumidity: number): number {
  const { lowest, highest } = AIR_LIMITS.temperatureC;
  assertWithin('Temperature of the piece', pieceC, lowest, highest, '°C');
  return pieceC - dewPointC(airC, relativeHumidity);
}

/** What to expect of fast lacquer on a piece with this dew-point margin. A margin on a limit counts as the better side. */
export function blushOutlook(marginK: number, limits: BlushLimits = USUAL_BLUSH_LIMITS): BlushOutlook {
  assertWithin('Dew-point margin', marginK, -200, 200, 'K');
  if (marginK < limits.floorK) return 'below-floor';
  if (marginK < limits.careK) return 'expect-blush';
  return marginK < limits.easyK ? 'care' : 'easy';
}

/** Highest relative humidity of the air, a fraction, at which the piece still has this margin, in K. */
export function relativeHumidityForMargin(airC: number, pieceC: number, marginK: number): number {
  return relativeHumidityFromDewPoint(airC, Math.min(pieceC - marginK, airC));
}
