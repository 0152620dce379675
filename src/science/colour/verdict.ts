import { deltaE00 } from './delta-e-00';
import type { MeanReading } from './readings/readings';
import type { White } from './white-points';

/** Where the repair lies; the more the eye rests there, the stricter. */
export type Place = 'open-panel' | 'edge' | 'hidden';

/**
 * Largest deltaE00 that passes, by place.
 * Source: edge and hidden are the 50:50 perceptibility and acceptability of Paravina et al. 2015 (dental shades);
 * a plain panel is stricter by common practice, no source (0.5 to 0.7).
 */
export const TOLERANCE_E00: Record<Place, number> = { 'open-panel': 0.6, edge: 0.8, hidden: 1.8 };

/** What was read: a wet film or a photograph may be kept and ranked, and never passes. */
export interface Judged<W extends White = White> extends MeanReading<W> {
  readonly isDry: boolean;
  readonly by: 'instrument' | 'camera';
}

export type ColourVerdict =
  | {
      readonly kind: 'pass' | 'not-yet' | 'measure-again';
      readonly dE00: number;
      readonly uncertaintyE00: number;
    }
  | { readonly kind: 'wet' | 'camera-ranks-only'; readonly dE00: number };

/**
 * Whether the sample passes within the tolerance. When the limit lies inside the doubt of the sample's own mean, the answer is to
 * measure it again; a wet film or a photograph gets a difference and no verdict. Left out: the target's doubt. It is the same for
 * every trial, is told with the target, and measuring a trial again does not lessen it.
 * Throws a RangeError when the two are under different whites.
 */
export function verdict<W extends White>(
  sample: Judged<W>,
  target: NoInfer<Judged<W>>,
  toleranceE00: number,
): ColourVerdict {
  const dE00 = deltaE00<White>(sample.lab, target.lab);
  if (!sample.isDry || !target.isDry) return { kind: 'wet', dE00 };
  if (sample.by === 'camera' || target.by === 'camera') return { kind: 'camera-ranks-only', dE00 };
  const { uncertaintyE00 } = sample;
  if (Math.abs(dE00 - toleranceE00) < uncertaintyE00) return { kind: 'measure-again', dE00, uncertaintyE00 };
  return { kind: dE00 <= toleranceE00 ? 'pass' : 'not-yet', dE00, uncertaintyE00 };
}
