import * as v from 'valibot';
import { LIMITS } from '../../limits';
import { typed } from '../../typed';
import { ClockTime, entryOf } from '../envelope';

export const MOVEMENTS = ['still', 'gentle', 'booth', 'strong'] as const;

const Movement = v.picklist(MOVEMENTS);

// How the humidity was found, where it was not read off: kept as it was typed.
const HumidityFrom = v.variant('by', [
  v.object({ by: v.literal('dew-point'), temperature: typed(LIMITS.temperature) }),
  v.object({ by: v.literal('wet-bulb'), temperature: typed(LIMITS.temperature) }),
]);

export const AIR_KINDS = {
  'air-read': entryOf('air-read', {
    temperature: typed(LIMITS.temperature),
    /** As the hygrometer shows it; worked out where `humidityFrom` says from what. */
    humidity: typed(LIMITS.humidity),
    humidityFrom: v.exactOptional(HumidityFrom),
    /** What is added to what the hygrometer shows, found when it was last checked. */
    correction: v.exactOptional(typed(LIMITS.humidityCorrection)),
    movement: Movement,
    pieceTemperature: v.exactOptional(typed(LIMITS.temperature)),
  }),
  'forecast-set': entryOf('forecast-set', {
    dayTemperature: typed(LIMITS.temperature),
    nightTemperature: typed(LIMITS.temperature),
    dayFrom: ClockTime,
    nightFrom: ClockTime,
    humidity: v.exactOptional(typed(LIMITS.humidity)),
    movement: Movement,
  }),
};
