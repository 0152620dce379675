import { deltaE00 } from './delta-e-00';
import { type Spectrum, spectrumToLab } from './spectrum';
import type { SpectralWhite } from './weights-10nm';

/** Daylight, a filament lamp and a white LED, all for the 10 degree observer: lights that differ as much as a home's do. */
const EVERYDAY_LIGHTS = ['D65/10', 'A/10', 'LED-B3/10'] as const satisfies readonly SpectralWhite[];

/** The difference of two surfaces under one light, in deltaE00. */
export interface LightDifference {
  readonly white: SpectralWhite;
  readonly dE00: number;
}

/** The difference of two surfaces under each light in deltaE00, worst first. Throws a RangeError without a light. */
export function worstOfLights(
  sample: Spectrum,
  target: Spectrum,
  whites: readonly SpectralWhite[] = EVERYDAY_LIGHTS,
): readonly [LightDifference, ...LightDifference[]] {
  const [worst, ...others] = whites
    .map((white) => ({ white, dE00: deltaE00(spectrumToLab(sample, white), spectrumToLab(target, white)) }))
    .sort((one, other) => other.dE00 - one.dE00);
  if (!worst) throw new RangeError('At least one light is needed to compare two surfaces.');
  return [worst, ...others];
}
