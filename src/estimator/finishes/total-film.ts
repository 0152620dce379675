import { umToMetres } from '../../units';
import { FINISH_LAWS, isCuring } from './finish-law';

export type TotalFilm = 'within' | 'near' | 'over';

/** So near the limit counts as near: less than a usual coat is left, m (judgement, no source). */
const NEAR_M = umToMetres(15);

/** Most film that all coats together may have, m; undefined where a finish has no such limit. The sheet's own outranks it. */
export function totalLimitM(finish: string, sheetM?: number): number | undefined {
  if (sheetM !== undefined) return sheetM;
  return isCuring(finish) ? FINISH_LAWS[finish].totalLimitM : undefined;
}

/**
 * How a film stands to its limit: cured films that are built too high crack.
 * Source: common practice, 100 to 125 um for catalysed finishes; the lower end counts.
 */
export function totalFilm(dryM: number, limitM: number): TotalFilm {
  if (dryM > limitM) return 'over';
  return limitM - dryM < NEAR_M ? 'near' : 'within';
}
