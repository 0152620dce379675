import { assertWithin } from '../assert-within';
import { asOfMix, type Thinning } from './thinning';

/** A job to mix for, SI. */
export interface SprayJob {
  readonly areaM2: number;
  readonly coats: number;
  readonly wetFilmM: number;
  /** Share of what leaves the gun that stays on the piece: 0.25 to 0.45 on thin objects, 0.30 to 0.50 on furniture (practice). */
  readonly transferEfficiency: number;
  /** What stays in gun and cup at each filling: 10 to 20 mL (common practice, no source). */
  readonly gunHoldUpM3: number;
  readonly fillings: number;
}

/** Mix ready to spray, m3. */
export interface Material {
  /** Leaves the gun in one coat. */
  readonly perCoatM3: number;
  /** Leaves the gun in all. */
  readonly sprayedM3: number;
  /** To be mixed: sprayed, and what stays in the gun. */
  readonly mixedM3: number;
}

/**
 * Mix that a spray job takes, m3.
 *
 * Source: area x wet film / transfer efficiency, UFC 3-190-06 (there by dry film and solids). Left out: spills, strainer.
 */
export function materialFor(job: SprayJob): Material {
  assertWithin('Transfer efficiency', job.transferEfficiency, 0.01, 1, 'of what is sprayed');
  const perCoatM3 = (job.areaM2 * job.wetFilmM) / job.transferEfficiency;
  const sprayedM3 = perCoatM3 * job.coats;
  return { perCoatM3, sprayedM3, mixedM3: sprayedM3 + job.gunHoldUpM3 * job.fillings };
}

/** A job by the spreading rate of a sheet: what a volume covers, losses as the sheet counts them. */
export interface RateJob extends Omit<SprayJob, 'wetFilmM' | 'transferEfficiency'> {
  /** m2/m3 (a thousandth of it is m2/L). */
  readonly rateM2M3: number;
}

/** Mix that a job takes by a spreading rate, m3: area / rate. */
export function materialByRate(job: RateJob): Material {
  assertWithin('Spreading rate', job.rateM2M3, 100, 100_000, 'm2/m3');
  const perCoatM3 = job.areaM2 / job.rateM2M3;
  const sprayedM3 = perCoatM3 * job.coats;
  return { perCoatM3, sprayedM3, mixedM3: sprayedM3 + job.gunHoldUpM3 * job.fillings };
}

/** Lacquer and thinner that make a volume of mix, m3. Left out: the small change of volume on mixing. */
export function lacquerAndThinner(
  mixedM3: number,
  thinning: Thinning,
): { lacquerM3: number; thinnerM3: number } {
  const thinnerM3 = mixedM3 * asOfMix(thinning).fraction;
  return { lacquerM3: mixedM3 - thinnerM3, thinnerM3 };
}
