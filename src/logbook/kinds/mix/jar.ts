import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { COUNTS, LIMITS } from '../../limits';
import { typed } from '../../typed';
import { CalendarDay, count, entryOf, Fraction, Id, Name, Note, TableKey } from '../envelope';

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
/** What a jar may hold that calls for a caution of its own, whatever its finish. */
export const CONTENTS = ['isocyanate', 'acid', 'oil', 'aerosol'] as const;
/** Catalysed lacquer dies in hours; the rest keeps for weeks to years. */
const LIVES = ['pot', 'shelf'] as const;
const JAR_TESTS = ['glass-plate'] as const;
/** Why a jar weighs less than it should. */
const MISSING = ['evaporated', 'used'] as const;

// Shares are worked out from parts or percents, so they may miss one by a rounding.
const ROUNDING = 0.005;
const sharesAddUp = (blend: readonly { readonly share: number }[]): boolean =>
  Math.abs(blend.reduce((sum, { share }) => sum + share, 0) - 1) <= ROUNDING;
const solventsDiffer = (blend: readonly { readonly solvent: string }[]): boolean =>
  new Set(blend.map(({ solvent }) => solvent)).size === blend.length;

/** Solvents by volume; the shares are fractions that add up to one. */
export const Blend = v.pipe(
  v.array(v.object({ solvent: TableKey, share: Fraction })),
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

const Life = v.object({ span: typed(LIMITS.life), as: v.picklist(LIVES) });
const FromJar = v.object({ jar: Id, volume: typed(LIMITS.volume) });

/**
 * What a jar holds is said as a product and what was added. A mix that was weighed up is a product of its own, with nothing added,
 * and names its weigh-up; two jars poured together name both.
 */
export const JAR_KINDS = {
  'jar-filled': entryOf(
    'jar-filled',
    {
      jar: Id,
      name: Name,
      product: Product,
      thinner: v.object({ name: Name, blend: Blend }),
      thinning: Thinning,
      retarder: v.exactOptional(Retarder),
      pigment: v.exactOptional(Pigment),
      amount: v.exactOptional(typed(LIMITS.volume)),
      density: v.exactOptional(typed(LIMITS.density)),
      life: v.exactOptional(Life),
      keepBack: v.exactOptional(typed(LIMITS.keepBack)),
      contains: v.exactOptional(v.array(v.picklist(CONTENTS))),
      weighUp: v.exactOptional(Id),
      boxedFrom: v.exactOptional(v.array(FromJar)),
      note: v.exactOptional(Note),
    },
    {
      /** It holds a tracer that fluoresces under light of this wavelength, nm. */
      tracerNm: v.exactOptional(count(COUNTS.tracerNm)),
      /** The day it was mixed, where that was before it came into this jar: its life counts from then. */
      mixedOn: v.exactOptional(CalendarDay),
      /** Shellac: flakes to alcohol. The volume solids are worked out from it. */
      cut: v.exactOptional(typed(LIMITS.cut)),
    },
  ),
  /** Content alone, without the jar. */
  'jar-weighed': entryOf('jar-weighed', {
    jar: Id,
    mass: typed(LIMITS.mass),
    missing: v.picklist(MISSING),
  }),
  'jar-drawn': entryOf('jar-drawn', { jar: Id, volume: typed(LIMITS.volume), note: v.exactOptional(Note) }),
  /** A smear on glass that dries hard in its time says that an old cut still does. */
  'jar-tested': entryOf('jar-tested', {
    jar: Id,
    test: v.picklist(JAR_TESTS),
    result: v.picklist(['passes', 'fails']),
  }),
  'jar-emptied': entryOf('jar-emptied', { jar: Id }),
};
