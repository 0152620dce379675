import * as v from 'valibot';
import { LIMITS } from '../limits';
import { typed } from '../typed';
import { ClockTime, entryOf } from './envelope';

export const MOVEMENTS = ['still', 'gentle', 'booth', 'strong'] as const;

const Movement = v.picklist(MOVEMENTS);

export const AIR_KINDS = {
  'air-read': entryOf('air-read', {
    temperature: typed(LIMITS.temperature),
    humidity: typed(LIMITS.humidity),
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
