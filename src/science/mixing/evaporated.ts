import { fail, type Result, succeed } from '../../result';

export type ReweighFailure =
  /** More in the jar than was left: something was poured in, or a coat drew less than thought. */
  | { readonly kind: 'heavier-than-expected'; readonly byKg: number }
  /** More is missing than there was solvent: a coat was not marked, or something was spilled. */
  | { readonly kind: 'lost-more-than-solvent'; readonly byKg: number };

/** What a jar should hold. */
export interface JarContent {
  readonly massKg: number;
  readonly densityKgM3: number;
  readonly volumeSolids: number;
  /** Of its volatile part. */
  readonly solventDensityKgM3: number;
  /** What it had lost before: as much thinner may have been put back. */
  readonly lostKg: number;
}

/** What a jar holds once the loss is known; the loss is below nothing where thinner was put back. */
export interface Reweighed {
  readonly lostKg: number;
  readonly volumeSolids: number;
  readonly densityKgM3: number;
}

/**
 * A jar corrected by weighing it again: what is missing is taken to be solvent of the jar's own blend, and what was put back
 * of an earlier loss the same.
 *
 * Left out: the fast solvents leave first, so the loss is a little larger in volume, and what stays is slower.
 * @param weighedKg content alone, without the jar
 * @param divisionKg of the scale: differences under half of it are none
 */
export function reweighed(
  jar: JarContent,
  weighedKg: number,
  divisionKg: number,
): Result<Reweighed, ReweighFailure> {
  const missingKg = jar.massKg - weighedKg;
  if (missingKg < -jar.lostKg - divisionKg / 2)
    return fail({ kind: 'heavier-than-expected', byKg: -missingKg });
  const lostKg = Math.abs(missingKg) > divisionKg / 2 ? missingKg : 0;
  const volumeM3 = jar.massKg / jar.densityKgM3;
  const solidsM3 = volumeM3 * jar.volumeSolids;
  const lostM3 = lostKg / jar.solventDensityKgM3;
  if (lostM3 > volumeM3 - solidsM3) {
    return fail({
      kind: 'lost-more-than-solvent',
      byKg: (lostM3 - volumeM3 + solidsM3) * jar.solventDensityKgM3,
    });
  }
  const leftM3 = volumeM3 - lostM3;
  return succeed({ lostKg, volumeSolids: solidsM3 / leftM3, densityKgM3: (jar.massKg - lostKg) / leftM3 });
}
