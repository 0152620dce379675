import type { AirReading, Forecast } from '../../logbook/fold/shop/air';
import { zoneOffset } from '../../logbook/time/zone-offset';
import { atLocal, localDay, toInstantMs, toMinute } from '../../planner/local-day';
import { clockMinutes } from '../plan/clock-hours';

/** The air from an instant on, until the next. */
export interface AirFrom {
  readonly atMs: number;
  readonly temperatureK: number;
  readonly movement: AirReading['movement'];
}

/** The air that a forecast gives between two instants: as it is at the first, and every change after it. */
export function forecastAir(forecast: Forecast, fromMs: number, untilMs: number): readonly AirFrom[] {
  const changes: AirFrom[] = [];
  const zone = zoneOffset(forecast.zone);
  const lastDay = localDay(toMinute(untilMs), zone);
  for (let day = localDay(toMinute(fromMs), zone) - 1; day <= lastDay; day++)
    changes.push(...dayOf(forecast, day));
  changes.sort((one, other) => one.atMs - other.atMs);
  const current = changes.findLastIndex(({ atMs }) => atMs <= fromMs);
  return changes
    .slice(current)
    .filter(({ atMs }) => atMs < untilMs)
    .map((air) => (air.atMs < fromMs ? { ...air, atMs: fromMs } : air));
}

/** The next instant after this one at which the forecast's night begins. */
export function nextNightMs(forecast: Forecast, afterMs: number): number {
  const zone = zoneOffset(forecast.zone);
  const today = localDay(toMinute(afterMs), zone);
  const night = (day: number) => toInstantMs(atLocal(day, clockMinutes(forecast.nightFrom), zone));
  return night(today) > afterMs ? night(today) : night(today + 1);
}

const days = new WeakMap<Forecast, Map<number, readonly AirFrom[]>>();

/** The changes of one day. A forecast never changes, and every piece on the bench asks it for the same days. */
function dayOf(forecast: Forecast, day: number): readonly AirFrom[] {
  const known = days.get(forecast) ?? new Map<number, readonly AirFrom[]>();
  days.set(forecast, known);
  const changes = known.get(day) ?? changesOf(forecast, day);
  known.set(day, changes);
  return changes;
}

function changesOf(forecast: Forecast, day: number): readonly AirFrom[] {
  const { dayTemperature, nightTemperature, dayFrom, nightFrom, movement, zone } = forecast;
  const instantOf = (clock: string) => toInstantMs(atLocal(day, clockMinutes(clock), zoneOffset(zone)));
  const light: AirFrom = { atMs: instantOf(dayFrom), temperatureK: dayTemperature.si, movement };
  if (dayFrom === nightFrom) return [light];
  return [light, { atMs: instantOf(nightFrom), temperatureK: nightTemperature.si, movement }];
}
