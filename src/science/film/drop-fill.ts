import { assertWithin } from '../assert-within';

/** A chip or fissure to fill drop by drop, SI. */
export interface Chip {
  readonly depthM: number;
  readonly areaM2: number;
  /** Height of the wet mound over the depth still open: 1 is flush, 1.5 the most that stays put (common practice, no source). */
  readonly moundFactor: number;
  readonly volumeSolids: number;
  /** Fraction of the depth that may stay open at the end. */
  readonly rest: number;
}

/**
 * Applications of a drop fill until no more than the rest of the depth is open, a whole number.
 *
 * Source: each drop leaves the fraction 1 - m s of the depth open, so n = ln(rest)/ln(1 - m s); derived (common practice, no source).
 * Valid: m s under 1. Left out: solvent still in the fill, which sinks further: dry it before levelling.
 */
export function dropFillApplications({
  moundFactor,
  volumeSolids,
  rest,
}: Omit<Chip, 'depthM' | 'areaM2'>): number {
  assertWithin('Mound factor', moundFactor, 1, 1.5, 'times the open depth');
  assertWithin('Volume solids', volumeSolids, 0.001, 0.65, 'of the liquid');
  assertWithin('Rest', rest, 1e-6, 1, 'of the depth');
  const applications = Math.log(rest) / Math.log(1 - moundFactor * volumeSolids);
  return Math.max(0, Math.ceil(applications - 1e-9)); // an exact whole number needs no extra drop for rounding
}

/** Liquid that the applications of a drop fill take, m3, without what stays on the brush. */
export function dropFillVolumeM3(chip: Chip): number {
  const open = (1 - chip.moundFactor * chip.volumeSolids) ** dropFillApplications(chip);
  return (chip.areaM2 * chip.depthM * (1 - open)) / chip.volumeSolids;
}
