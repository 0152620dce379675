import { fail, type Result, succeed } from '../../result';
import { asOfMix, type ThinnedOfMix, type Thinning, thinnedOfMix } from '../film/thinning';
import type { Cup } from './cups';
import { type CupFailure, readCup } from './efflux';

/** What a cup said of a lacquer thinned so far. */
export interface CupReading {
  readonly thinning: Thinning;
  readonly seconds: number;
}

export type TargetFailure =
  | CupFailure
  /** Two readings at one thinning say nothing of what thinner does. */
  | { readonly kind: 'thinned-alike' }
  /** The more thinned reading took longer: one of them is wrong, or the mix was warmer. */
  | { readonly kind: 'thicker-with-thinner' }
  /** The target is thicker than the lacquer without any thinner. */
  | { readonly kind: 'thinner-than-target' }
  /** It would take more thinner than is lacquer four times over: the line is not good that far. */
  | { readonly kind: 'out-of-reach' };

/** How much to thin, and whether that lies outside the two readings it was learned from. */
export interface TargetThinning {
  readonly thinning: ThinnedOfMix;
  readonly isExtrapolated: boolean;
}

/** No lacquer is sprayed thinner, as a share of the mix (judgement, no source). */
const MOST_THINNER = 0.8;

/**
 * Thinning at which a lacquer runs through the cup in the wanted time, learned from two readings with that thinner.
 *
 * Source: S. Arrhenius, Z. phys. Chem. 1 (1887) 285: ln ν is linear in the volume fraction of thinner; here through two readings.
 * Valid: between the readings and a little beyond, one cup, one temperature, one thinner.
 * Accuracy: no better than the cup. Left out: the bend of the line at high solids.
 */
export function thinningForTime(
  cup: Cup,
  [first, second]: readonly [CupReading, CupReading],
  targetS: number,
): Result<TargetThinning, TargetFailure> {
  const logs: number[] = [];
  for (const seconds of [first.seconds, second.seconds, targetS]) {
    const read = readCup(cup, seconds);
    if (!read.ok) return read;
    logs.push(Math.log(read.value));
  }
  const [logFirst, logSecond, logTarget] = logs as [number, number, number];
  const from = asOfMix(first.thinning).fraction;
  const to = asOfMix(second.thinning).fraction;
  if (from === to) return fail({ kind: 'thinned-alike' });
  const slope = (logSecond - logFirst) / (to - from);
  if (slope >= 0) return fail({ kind: 'thicker-with-thinner' });
  const fraction = from + (logTarget - logFirst) / slope;
  if (fraction < -1e-9) return fail({ kind: 'thinner-than-target' });
  if (fraction > MOST_THINNER) return fail({ kind: 'out-of-reach' });
  const isExtrapolated = fraction < Math.min(from, to) || fraction > Math.max(from, to);
  return succeed({ thinning: thinnedOfMix(Math.max(0, fraction)), isExtrapolated });
}

/** Thinner to add to a volume of mix to bring it from one thinning to another, in the unit of the volume; below 0: lacquer is wanted. */
export function thinnerToAdd(volume: number, from: Thinning, to: Thinning): number {
  const now = asOfMix(from).fraction;
  const wanted = asOfMix(to).fraction;
  return (volume * (wanted - now)) / (1 - wanted);
}
