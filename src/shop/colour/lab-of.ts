import type { ReadingSet } from '../../logbook/fold/piece/matches';
import { type Lab, xyzToLab } from '../../science/colour/lab';
import { type Spectrum, spectrumFault, spectrumToLab } from '../../science/colour/spectrum';
import { type SpectralWhite, WEIGHTS_10NM } from '../../science/colour/weights-10nm';
import type { White } from '../../science/colour/white-points';
import { hexToLab } from './screen-colour';

/** One reading as it is kept. */
export type ReadingValue = ReadingSet['readings'][number];

/** Whether a spectrum can be turned into a colour under this light. */
export const isSpectral = (white: White): white is SpectralWhite => Object.hasOwn(WEIGHTS_10NM, white);

/** The colour of a reading under the light it was taken in; undefined where it has none under that light. */
export function labOf(value: ReadingValue, white: White): Lab | undefined {
  switch (value.as) {
    case 'lab':
      return { white, L: value.L.si, a: value.a.si, b: value.b.si };
    case 'xyz':
      return xyzToLab({ white, X: value.X.si, Y: value.Y.si, Z: value.Z.si });
    case 'hex':
      return white === 'D65/2' ? hexToLab(value.hex) : undefined;
    case 'spectrum':
      return isSpectral(white) && !spectrumFault(value) ? spectrumToLab(value, white) : undefined;
    case 'photo':
      return { white, L: value.L, a: value.a, b: value.b };
  }
}

const sameSteps = (one: Spectrum, other: Spectrum): boolean =>
  one.startNm === other.startNm &&
  one.stepNm === other.stepNm &&
  one.reflectance.length === other.reflectance.length;

/** The mean of spectra read at the same wavelengths; undefined when one of the readings is no such spectrum. */
export function meanSpectrum(values: readonly ReadingValue[]): Spectrum | undefined {
  const spectra = values.flatMap((value) => (value.as === 'spectrum' ? [value] : []));
  const [first] = spectra;
  if (!first || spectra.length < values.length || !spectra.every((one) => sameSteps(one, first)))
    return undefined;
  const { startNm, stepNm } = first;
  const reflectance = first.reflectance.map(
    (_, i) => spectra.reduce((sum, one) => sum + (one.reflectance[i] ?? 0), 0) / spectra.length,
  );
  return { startNm, stepNm, reflectance };
}
