import { readTyped } from '../../logbook/as-typed';
import { LIMITS } from '../../logbook/limits';
import type { Typed } from '../../logbook/typed';
import { fail, type Result, succeed } from '../../result';
import { relativeHumidityFromDewPoint } from '../../science/air/dew-point';
import { relativeHumidityFromWetBulb } from '../../science/air/wet-bulb';
import { shopPressurePa } from '../../shop/air/pressure';
import { toCelsius } from '../../units';
import { LOGBOOK_WORDS } from '../../words/frame/logbook';
import type { ActionNeeds, Logged, Said } from '../log';
import type { Refused } from '../refused';
import { readAir } from './log-air';

/** How the humidity was found: read off, or from a dew point or a wet thermometer. */
export type HumidityBy = 'shown' | 'dew-point' | 'wet-bulb';

export type AirSaid = Omit<Said<'air-read'>, 'humidity' | 'humidityFrom'> & {
  /** Per cent where it was read off; else the temperature of the dew point or of the wet thermometer. */
  readonly damp: Typed;
  readonly by: HumidityBy;
};

/** Notes the air in the shop, from whichever instrument there is. */
export async function readAirBy(
  needs: ActionNeeds,
  { damp, by, ...said }: AirSaid,
  atMs?: number,
): Logged<'air-read'> {
  if (by === 'shown') {
    const shown = damp as Said<'air-read'>['humidity'];
    return readAir(needs, { ...said, humidity: shown }, atMs);
  }
  const pressurePa = shopPressurePa(needs.logbook.shop.value.settings);
  const { correction: _, ...uncorrected } = said;
  const found = humidityFrom(by, said.temperature, damp, pressurePa);
  if (!found.ok) return fail({ sentence: found.failure, fields: { damp: found.failure } } satisfies Refused);
  return readAir(
    needs,
    {
      ...uncorrected,
      humidity: { text: String(Math.round(found.value * 1000) / 10), unit: '%' },
      humidityFrom: { by, temperature: damp as Said<'air-read'>['temperature'] },
    },
    atMs,
  );
}

/** The humidity, a fraction, that follows from a dew point or a wet bulb, or why none can. */
export function humidityFrom(
  by: 'dew-point' | 'wet-bulb',
  air: Typed,
  damp: Typed,
  pressurePa: number,
): Result<number, string> {
  const airRead = readTyped(air, LIMITS.temperature);
  const dampRead = readTyped(damp, LIMITS.temperature);
  if (!airRead.ok) return airRead;
  if (!dampRead.ok) return dampRead;
  const airC = toCelsius(airRead.value);
  const dampC = toCelsius(dampRead.value);
  if (dampC > airC) return fail(by === 'dew-point' ? LOGBOOK_WORDS.dewAboveAir : LOGBOOK_WORDS.wetAboveDry);
  const humidity =
    by === 'dew-point' ? relativeHumidityFromDewPoint(airC, dampC) : fromWick(airC, dampC, pressurePa);
  return humidity === undefined || humidity * 100 < LIMITS.humidity.lowest
    ? fail(LOGBOOK_WORDS.wetTooLow)
    : succeed(humidity);
}

/** Undefined where no air is dry enough: the formula names its range by throwing. */
function fromWick(airC: number, wickC: number, pressurePa: number): number | undefined {
  try {
    return relativeHumidityFromWetBulb(airC, wickC, pressurePa);
  } catch (thrown) {
    if (thrown instanceof RangeError) return undefined;
    throw thrown;
  }
}
