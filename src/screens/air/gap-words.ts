import { numberWords, type UnitSystem } from '../../words/quantities';

/** A difference of temperature to a tenth: "1.2 K" or, in US units, "2.2 °F". */
export const gapWords = (kelvin: number, units: UnitSystem): string =>
  units === 'us' ? `${numberWords((kelvin * 9) / 5, 1)} °F` : `${numberWords(kelvin, 1)} K`;
