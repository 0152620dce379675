import type { EntryInSi, Lines } from '../in-si';

export type AirReading = EntryInSi<'air-read'>;
export type Forecast = EntryInSi<'forecast-set'>;

/** Every air reading in time order, and the forecast set last. */
export const foldAir = (lines: Lines) => ({
  airReadings: lines.of('air-read'),
  forecast: lines.of('forecast-set').at(-1),
});
