import { assertWithin } from '../assert-within';
import { REFERENCE_AIR, type RoomAir, type Vapour, vapourVolumeM3 } from './vapour';

/** A vapour that burns. */
export interface FlammableVapour extends Vapour {
  /** Lower explosive limit, volume fraction in air: 0.017 is 1.7 %. */
  readonly lelFraction: number;
}

/** Share of the lower explosive limit that air in a spraying area is kept under (29 CFR 1910.94(c)(6)(ii); NFPA 33). */
const FIRE_SHARE_OF_LEL = 0.25;

/**
 * Lower explosive limit of the vapours of a blend together, volume fraction in air.
 *
 * Source: H. Le Chatelier 1891; as in H. F. Coward, G. W. Jones, US Bureau of Mines Bulletin 503 (1952).
 * Valid: at least one vapour with some mass; limits above 0 and up to 100 %.
 * Accuracy: good for vapours that burn alike; limits themselves differ between tables by 10 to 20 %.
 * Left out: warmth, which lowers the limit (about 8 % for 100 K, from memory); mist, which burns below it; the order
 * in which the solvents leave.
 */
export function blendLelFraction(vapours: readonly FlammableVapour[]): number {
  let volumeM3 = 0;
  let reachM3 = 0; // the air that this vapour makes just explosive
  for (const vapour of vapours) {
    assertWithin('Lower explosive limit', vapour.lelFraction, 0.001, 1, '(volume fraction)');
    const ownM3 = vapourVolumeM3(vapour);
    volumeM3 += ownM3;
    reachM3 += ownM3 / vapour.lelFraction;
  }
  if (!(reachM3 > 0)) throw new RangeError('A blend without vapour has no explosive limit.');
  return volumeM3 / reachM3;
}

/**
 * Clean air, in m3, that must mix with these vapours to keep them under a share of their explosive limit.
 *
 * Source: 29 CFR 1910.94(c)(6)(ii), note to Table G-11: 4 (100 - LEL) V / LEL; limit of the blend by Le Chatelier.
 * Valid: as blendLelFraction; a share above 0 and up to 1.
 * Accuracy: that of the limit.
 * Left out: uneven mixing. Vapour is heavy and lies low: near the gun and the floor it is far above the average.
 */
export function airForFireM3(
  vapours: readonly FlammableVapour[],
  air: RoomAir = REFERENCE_AIR,
  shareOfLel: number = FIRE_SHARE_OF_LEL,
): number {
  assertWithin('Share of the explosive limit', shareOfLel, 0.01, 1, '(fraction)');
  const lel = blendLelFraction(vapours);
  const volumeM3 = vapours.reduce((sum, vapour) => sum + vapourVolumeM3(vapour, air), 0);
  return ((1 - lel) * volumeM3) / (shareOfLel * lel);
}
