import type { Shop } from '../../logbook/fold/fold';
import type { Jar, JarTest } from '../../logbook/fold/mix/jars';
import type { Quantity } from '../../logbook/typed';
import { ageingRate, lifeEndS, POT_LIFE_AT_K, type WarmSpan } from '../../science/mixing/pot-life';
import { HOUR_MS } from '../../units';
import { sheetOf } from '../stack/sheet-times';
import type { Finish } from './own-solvents';

const shelf = (months: string) => ({ text: months, unit: 'months', as: 'shelf' }) as const;
const pot = (hours: string) => ({ text: hours, unit: 'h', as: 'pot' }) as const;

/** How long a mix of each finish usually keeps, where nobody says otherwise; the label outranks it (common practice, no source). */
export const USUAL_LIFE = {
  nitrocellulose: shelf('12'),
  acrylic: shelf('12'),
  cab: shelf('12'),
  shellac: shelf('6'),
  waterborne: shelf('12'),
  precatalysed: shelf('6'),
  conversion: pot('8'),
  urethane: pot('4'),
} as const satisfies Readonly<Record<Finish, unknown>>;

/** A jar takes long to warm and cool: a reading speaks for it half a day (judgement, no source). */
const READING_HOLDS_MS = 12 * HOUR_MS;

/** When a jar's pot or shelf life ends, with how warm it was taken to be. */
export interface JarLife {
  readonly as: 'pot' | 'shelf';
  /** From when it counts: when it was mixed. */
  readonly fromMs: number;
  readonly endMs: number;
  /** The end if it had stood at 20 C. */
  readonly coolEndMs: number;
  /** Where the data sheet says it: its words, at its temperature. */
  readonly sheet?: { readonly potLife: Quantity; readonly temperature: Quantity };
}

/** The end of a jar's life in the air it stood in, by the readings and then the forecast; undefined where none was said. */
export function jarLife(jar: Jar, shop: Shop): JarLife | undefined {
  const said = sheetLife(jar, shop) ?? ownLife(jar);
  if (!said) return undefined;
  const { coolS, ...life } = said;
  const fromMs = mixedMs(jar);
  const endS = lifeEndS(coolS, fromMs / 1000, warmSpans(shop));
  return { ...life, fromMs, endMs: endS * 1000, coolEndMs: fromMs + coolS * 1000 };
}

/** When a jar was mixed: the noon of the day that was said, else when it was filled. */
export const mixedMs = ({ mixedOn, filledMs }: Jar): number =>
  mixedOn === undefined ? filledMs : Math.min(filledMs, Date.parse(`${mixedOn}T12:00:00Z`));

/** What the newest glass-plate test found; undefined where none was made. */
export const glassPlate = ({ tests }: Jar): JarTest | undefined =>
  tests.findLast(({ test }) => test === 'glass-plate');

/** Whether a jar's life is over and no glass-plate test has passed since. */
export function isPast(jar: Jar, shop: Shop, nowMs: number): boolean {
  const life = jarLife(jar, shop);
  if (!life || nowMs < life.endMs) return false;
  const tested = glassPlate(jar);
  return tested?.result !== 'passes' || tested.atMs < life.endMs;
}

/** A life counted at 20 C, and who says it. */
type SaidLife = Pick<JarLife, 'as' | 'sheet'> & { readonly coolS: number };

const ownLife = ({ life }: Jar): SaidLife | undefined => life && { as: life.as, coolS: life.span.si };

/** The pot life of the product's sheet, from the sheet's temperature to 20 C. A pot poured together is as old as its older half. */
function sheetLife(jar: Jar, shop: Shop): SaidLife | undefined {
  const sheet = jar.boxedFrom ? undefined : sheetOf(jar.id, shop);
  if (!sheet?.potLife) return undefined;
  const { potLife, temperature } = sheet;
  return { as: 'pot', coolS: potLife.si * ageingRate(temperature.si), sheet: { potLife, temperature } };
}

/** How warm the shop was: each reading until the next, at most half a day; then the forecast's mean, or 20 C. */
function warmSpans({ airReadings, forecast }: Shop): WarmSpan[] {
  const usualK = forecast ? (forecast.dayTemperature.si + forecast.nightTemperature.si) / 2 : POT_LIFE_AT_K;
  const spans = airReadings.flatMap(({ atMs, temperature }, i) => {
    const nextMs = airReadings[i + 1]?.atMs ?? Number.POSITIVE_INFINITY;
    const own = { fromS: atMs / 1000, temperatureK: temperature.si };
    const endMs = atMs + READING_HOLDS_MS;
    return endMs < nextMs ? [own, { fromS: endMs / 1000, temperatureK: usualK }] : [own];
  });
  return [{ fromS: 0, temperatureK: usualK }, ...spans];
}
