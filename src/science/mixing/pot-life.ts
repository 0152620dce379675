import { toKelvin } from '../../units';

/** The air from a moment on until the next span begins. */
export interface WarmSpan {
  readonly fromS: number;
  readonly temperatureK: number;
}

/** Lives are counted at 20 C. */
export const POT_LIFE_AT_K = toKelvin(20);
/** As {@link ageingRate} says. */
const DOUBLING_K = 10;

/**
 * How many times faster a lacquer ages in its pot than at 20 C.
 *
 * Source: twice as fast for 10 K (common practice, no source; an activation energy of about 50 kJ/mol at room temperature).
 * Valid: 5 to 40 C. Left out: the pot's own heat, moisture, age of the catalyst.
 */
export const ageingRate = (temperatureK: number): number =>
  2 ** ((temperatureK - POT_LIFE_AT_K) / DOUBLING_K);

/**
 * When a life counted at 20 C is over, s from the zero of the spans.
 * @param lifeS at 20 C
 * @param fromS when it began
 * @param spans in time order; the first also holds before it, the last for ever
 */
export function lifeEndS(lifeS: number, fromS: number, spans: readonly WarmSpan[]): number {
  let leftS = lifeS;
  let atS = fromS;
  let rate = ageingRate(spans[0]?.temperatureK ?? POT_LIFE_AT_K);
  for (const span of spans) {
    const untilS = Math.max(atS, span.fromS);
    const usedS = (untilS - atS) * rate;
    if (usedS >= leftS) break;
    leftS -= usedS;
    atS = untilS;
    rate = ageingRate(span.temperatureK);
  }
  return atS + leftS / rate;
}
