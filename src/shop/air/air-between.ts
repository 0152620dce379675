import { USUAL_SHOP } from '../../estimator/usual-shop';
import type { AirReading, Forecast } from '../../logbook/fold/shop/air';
import { DAY_MS, HOUR_MS } from '../../units';
import { type AirFrom, forecastAir, nextNightMs } from './forecast';

/** A reading speaks for the air of a working day, no longer (judgement, no source). */
export const READING_HOLDS_MS = 8 * HOUR_MS;
/** How far ahead the air is laid out: a year and a bit. */
export const AIR_AHEAD_MS = 400 * DAY_MS;
const USUAL_AIR = { temperatureK: USUAL_SHOP.temperatureK, movement: 'gentle' } as const;

/** The air as it was read, from the last reading before an instant on: what is older says nothing of it, and there may be ten years of that. */
export function airAsRead(readings: readonly AirReading[], fromMs: number): AirFrom[] {
  const first = Math.max(
    0,
    readings.findLastIndex(({ atMs }) => atMs <= fromMs),
  );
  return readings.slice(first).map(asRead);
}
export const asRead = ({ atMs, temperature, movement }: AirReading): AirFrom => ({
  atMs,
  temperatureK: temperature.si,
  movement,
});

/**
 * The air from one instant to another: as it was read, and between the readings as the forecast has it.
 *
 * A reading holds until the next one, at most eight hours and until the forecast's night. Without a forecast its temperature
 * holds on, in still air: the fan goes home with the finisher.
 * @param readings in time order
 */
export function airLog(
  readings: readonly AirFrom[],
  forecast: Forecast | undefined,
  fromMs: number,
  untilMs: number,
): readonly AirFrom[] {
  const log: AirFrom[] = [];
  let toldUntilMs = fromMs;
  let last: AirFrom | undefined;
  const fillUntil = (endMs: number): void => {
    if (toldUntilMs >= endMs) return;
    if (forecast) log.push(...forecastAir(forecast, toldUntilMs, endMs));
    else log.push({ ...untold(last, readings), atMs: toldUntilMs });
    toldUntilMs = endMs;
  };
  for (const [index, reading] of readings.entries()) {
    if (reading.atMs >= untilMs) break;
    const startMs = Math.max(reading.atMs, fromMs);
    fillUntil(startMs);
    const endMs = Math.min(endOfHold(reading, forecast), readings[index + 1]?.atMs ?? untilMs, untilMs);
    if (endMs > startMs) {
      log.push({ ...reading, atMs: startMs });
      toldUntilMs = endMs;
    }
    last = reading;
  }
  fillUntil(untilMs);
  return log;
}

const untold = (last: AirFrom | undefined, readings: readonly AirFrom[]) =>
  last ? ({ ...last, movement: 'still' } as const) : (readings[0] ?? USUAL_AIR);

const endOfHold = ({ atMs }: AirFrom, forecast: Forecast | undefined): number =>
  Math.min(atMs + READING_HOLDS_MS, forecast ? nextNightMs(forecast, atMs) : Number.POSITIVE_INFINITY);
