import { lifeEndS, type WarmSpan } from '../science/mixing/pot-life';
import { HOUR_S } from '../units';
import type { Shop } from './fold/fold';
import type { Jar } from './fold/jars';

const READING_HOLDS_MS = 12 * HOUR_S * 1000;
const USUAL_K = 293.15;

/** When a jar's pot or shelf life ends, with how warm it was taken to be. */
export interface JarLife {
  readonly as: 'pot' | 'shelf';
  readonly endMs: number;
  /** The end if it had stood at 20 C. */
  readonly coolEndMs: number;
}

/** The end of a jar's life in the air it stood in, by the readings and then the forecast; undefined where none was said. */
export function jarLife(jar: Jar, shop: Shop): JarLife | undefined {
  if (!jar.life) return undefined;
  const { as, span } = jar.life;
  const endS = lifeEndS(span.si, jar.filledMs / 1000, warmSpans(shop));
  return { as, endMs: endS * 1000, coolEndMs: jar.filledMs + span.si * 1000 };
}

/** How warm the shop was: each reading until the next, at most half a day; then the forecast's mean, or 20 C. */
function warmSpans({ airReadings, forecast }: Shop): WarmSpan[] {
  const usualK = forecast ? (forecast.dayTemperature.si + forecast.nightTemperature.si) / 2 : USUAL_K;
  const spans = airReadings.flatMap(({ atMs, temperature }, i) => {
    const nextMs = airReadings[i + 1]?.atMs ?? Number.POSITIVE_INFINITY;
    const own = { fromS: atMs / 1000, temperatureK: temperature.si };
    const endMs = atMs + READING_HOLDS_MS;
    return endMs < nextMs ? [own, { fromS: endMs / 1000, temperatureK: usualK }] : [own];
  });
  return [{ fromS: 0, temperatureK: usualK }, ...spans];
}
