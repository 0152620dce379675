import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../words/logbook';
import { COUNTS, LIMITS } from '../limits';
import { typed } from '../typed';
import { entryOf, Id, Name, Note, TableKey } from './envelope';

export const FINISHES = [
  'nitrocellulose',
  'acrylic',
  'cab',
  'shellac',
  'waterborne',
  'precatalysed',
  'conversion',
  'urethane',
] as const;
export const PIGMENT_SHAPES = ['grains', 'flakes'] as const;

// Shares are worked out from parts or percents, so they may miss one by a rounding.
const ROUNDING = 0.005;
const sharesAddUp = (blend: readonly { readonly share: number }[]): boolean =>
  Math.abs(blend.reduce((sum, { share }) => sum + share, 0) - 1) <= ROUNDING;
const solventsDiffer = (blend: readonly { readonly solvent: string }[]): boolean =>
  new Set(blend.map(({ solvent }) => solvent)).size === blend.length;

const Share = v.pipe(
  v.number(),
  v.check((share) => share > 0 && share <= 1, LOGBOOK_WORDS.notAShare),
);

/** Solvents by volume; the shares are fractions that add up to one. */
export const Blend = v.pipe(
  v.array(v.object({ solvent: TableKey, share: Share })),
  v.minLength(COUNTS.blendParts.lowest, LOGBOOK_WORDS.emptyBlend),
  v.maxLength(COUNTS.blendParts.highest, LOGBOOK_WORDS.longBlend(COUNTS.blendParts.highest)),
  v.check((blend) => solventsDiffer(blend), LOGBOOK_WORDS.solventTwice),
  v.check((blend) => sharesAddUp(blend), LOGBOOK_WORDS.sharesDoNotAddUp),
);

// A percentage of the lacquer and the same percentage of the mix are different amounts, with different limits.
const OF_LACQUER = v.literal('lacquer');
const OF_MIX = v.literal('mix');

const Thinning = v.variant('of', [
  v.object({ of: OF_LACQUER, percent: typed(LIMITS.thinningOfLacquer) }),
  v.object({ of: OF_MIX, percent: typed(LIMITS.thinningOfMix) }),
]);
const Retarder = v.variant('of', [
  v.object({ of: OF_LACQUER, solvent: TableKey, percent: typed(LIMITS.retarderOfLacquer) }),
  v.object({ of: OF_MIX, solvent: TableKey, percent: typed(LIMITS.retarderOfMix) }),
]);
const Pigment = v.object({
  shareOfSolids: typed(LIMITS.pigmentOfSolids),
  shape: v.picklist(PIGMENT_SHAPES),
  aspect: v.exactOptional(typed(LIMITS.flakeAspect)),
});
const Product = v.object({
  finish: v.picklist(FINISHES),
  volumeSolids: typed(LIMITS.volumeSolids),
  solvents: v.exactOptional(Blend),
});

export const JAR_KINDS = {
  'jar-filled': entryOf('jar-filled', {
    jar: Id,
    name: Name,
    product: Product,
    thinner: v.object({ name: Name, blend: Blend }),
    thinning: Thinning,
    retarder: v.exactOptional(Retarder),
    pigment: v.exactOptional(Pigment),
    note: v.exactOptional(Note),
  }),
  'jar-emptied': entryOf('jar-emptied', { jar: Id }),
};
