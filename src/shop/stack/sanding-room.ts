import { USUAL_SHOP } from '../../estimator/usual-shop';
import type { Shop } from '../../logbook/fold/fold';

/** How warm the room is in which a film is sanded, and who says so. */
export interface SandingRoom {
  readonly temperatureK: number;
  readonly from: 'setting' | 'usual' | 'forecast' | 'reading';
}

/**
 * What hardness is held against: what the person set, else the warmest of an ordinary room, the day of the forecast and the last
 * reading. A film that was judged in the cold gums when it comes into a warm room, so a cold shop makes everything later.
 */
export function sandingRoom({
  settings,
  forecast,
  airReadings,
}: Pick<Shop, 'settings' | 'forecast' | 'airReadings'>): SandingRoom {
  const set = settings.sandingTemperature?.si;
  if (set !== undefined) return { temperatureK: set, from: 'setting' };
  const rooms: SandingRoom[] = [
    { temperatureK: USUAL_SHOP.temperatureK, from: 'usual' },
    { temperatureK: forecast?.dayTemperature.si ?? 0, from: 'forecast' },
    { temperatureK: airReadings.at(-1)?.temperature.si ?? 0, from: 'reading' },
  ];
  return rooms.reduce((warmest, room) => (room.temperatureK > warmest.temperatureK ? room : warmest));
}
