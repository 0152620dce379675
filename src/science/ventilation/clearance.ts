import { assertWithin } from '../assert-within';
import { assertMixingFactor } from './exposure';

/** A room that is being aired. */
export interface AiredRoom {
  readonly volumeM3: number;
  readonly airFlowM3S: number;
  /** 1 for perfect mixing to 10 for very poor. */
  readonly mixingFactor: number;
}

/**
 * Time, in s, until the air of a room holds no more than this fraction of the vapour that it held when the source ended.
 *
 * Source: E. N. Mutchler 1973 (purging rate), as in CDC, MMWR 43 (RR-13) 1994, Table S3-1: t = K ln(C1 / C2) / (Q / V).
 * Valid: a fraction left above 0 and up to 1, mixing factor 1 to 10.
 * Accuracy: half a minute against that table, which is rounded.
 * Left out: a wet piece and rags go on giving off vapour; pockets that the draught does not reach.
 */
export function clearanceTimeS(
  { volumeM3, airFlowM3S, mixingFactor }: AiredRoom,
  fractionLeft: number,
): number {
  assertWithin('Room', volumeM3, 0.1, 1e5, 'm3');
  assertWithin('Air flow', airFlowM3S, 1e-6, 1000, 'm3/s');
  assertWithin('Fraction left', fractionLeft, 1e-6, 1, '(fraction)');
  assertMixingFactor(mixingFactor);
  return ((mixingFactor * volumeM3) / airFlowM3S) * Math.log(1 / fractionLeft);
}
