import { FINISH_LAWS } from '../../estimator/finishes/finish-law';
import type { Shop } from '../../logbook/fold/fold';
import { toMinute } from '../../planner/local-day';
import { joined, type Span } from '../../planner/span';
import type { UnfitAir, Weather } from '../../planner/windows/working-times';
import { dewPointMarginK } from '../../science/air/blush';
import { DAY_MS, HOUR_MS, toCelsius, toKelvin } from '../../units';
import { ownBlush } from '../air/blush-seen';
import { forecastAir } from '../air/forecast';
import { latestAir } from '../air/measured-air';

/** Beyond it a forecast says nothing of a single day (common practice, no source). */
const AHEAD_MS = 10 * DAY_MS;
/** A reading speaks for the coming air so long (judgement, no source). */
const READING_MS = 2 * HOUR_MS;
// The strictest finish of all.
const { lowestK: COLDEST_K, highestHumidity: DAMPEST = 1 } = FINISH_LAWS.waterborne.shop;
const WEATHERS: readonly Weather[] = ['blush', 'damp', 'cold'];

interface Air {
  readonly temperatureC: number;
  readonly humidity: number | undefined;
  /** How far the piece is above the dew point, K. */
  readonly marginK: number | undefined;
}

/** The stretches in which the air is unfit, by the last reading and the forecast; minutes since 1970. */
export function unfitAir(shop: Shop, nowMs: number): readonly UnfitAir[] {
  const { careK } = ownBlush(shop).limits;
  const spells = [...readSpell(shop, nowMs), ...forecastSpells(shop, nowMs)]; // in order: the forecast begins where the reading ends
  return WEATHERS.flatMap((because) => {
    const unfit = spells.filter(({ air }) => isUnfit(air, because, careK)).map(({ span }) => span);
    return joined(unfit).map((span) => ({ ...span, because }));
  });
}

interface Spell {
  readonly span: Span;
  readonly air: Air;
}

function readSpell(shop: Shop, nowMs: number): Spell[] {
  const read = latestAir(shop);
  const endMs = read ? read.reading.atMs + READING_MS : 0;
  if (!read || endMs <= nowMs) return [];
  const air = { temperatureC: read.airC, humidity: read.humidity, marginK: read.marginK };
  return [{ span: { from: toMinute(read.reading.atMs), to: toMinute(endMs) }, air }];
}

function forecastSpells({ forecast, airReadings }: Shop, nowMs: number): Spell[] {
  if (!forecast) return [];
  const readMs = (airReadings.at(-1)?.atMs ?? 0) + READING_MS;
  const endMs = nowMs + AHEAD_MS;
  const spells = forecastAir(forecast, Math.max(nowMs, readMs), endMs);
  return spells.map(({ atMs, temperatureK }, index) => ({
    span: { from: toMinute(atMs), to: toMinute(spells[index + 1]?.atMs ?? endMs) },
    air: forecastOf(toCelsius(temperatureK), forecast.humidity?.si),
  }));
}

function forecastOf(temperatureC: number, humidity: number | undefined): Air {
  const marginK = humidity === undefined ? undefined : dewPointMarginK(temperatureC, temperatureC, humidity);
  return { temperatureC, humidity, marginK };
}

function isUnfit({ temperatureC, humidity, marginK }: Air, because: Weather, careK: number): boolean {
  if (because === 'cold') return toKelvin(temperatureC) < COLDEST_K;
  if (because === 'damp') return humidity !== undefined && humidity > DAMPEST;
  return marginK !== undefined && marginK < careK;
}
