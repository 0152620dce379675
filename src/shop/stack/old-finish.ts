import type { Shop } from '../../logbook/fold/fold';
import { NOTHING_KNOWN, type OldFinishRecord } from '../../logbook/fold/piece/old-finishes';
import { classifyOldFinish, type OldFinishFinding } from '../../science/old-finish/classify';

/** What is known of the old finish on a piece. */
export const oldFinishOf = (piece: string, { oldFinishes }: Pick<Shop, 'oldFinishes'>): OldFinishRecord =>
  oldFinishes.get(piece) ?? NOTHING_KNOWN;

/** What its drops and its look say. */
export const findingOf = ({ tests, seen }: OldFinishRecord): OldFinishFinding =>
  classifyOldFinish(
    tests.map(({ solvent, dwell, reading }) => ({ solvent, dwellS: dwell.si, reading })),
    {
      signs: seen?.signs ?? [],
      ...(seen && { isOpaque: seen.opaque }),
      ...(seen?.uv && { uv: seen.uv }),
      ...(seen?.madeAbout !== undefined && { madeAbout: seen.madeAbout }),
    },
  );

/** Whether there is more than one layer of it: so it was seen, or a drop moved the top one alone. */
export const hasLayers = ({ tests, seen }: OldFinishRecord): boolean =>
  (seen?.layers ?? 1) > 1 || tests.some(({ isTopOnly }) => isTopOnly);

/** How an old finish may be sanded. */
export type SandingRule = 'any' | 'test-first' | 'wet-only';

/**
 * Whether dry sanding is open: an opaque old finish is treated as lead until a test found none; where lead was found, or is
 * assumed, only wet.
 */
export function sandingRule({ seen, lead }: OldFinishRecord): SandingRule {
  if (lead?.finding === 'found' || lead?.finding === 'treat-as-lead') return 'wet-only';
  return seen?.opaque && lead?.finding !== 'none-found' ? 'test-first' : 'any';
}
