import * as v from 'valibot';
import { LIMITS } from '../../limits';
import { typed } from '../../typed';
import { entryOf, Id } from '../envelope';

export const FLOW_ORIGINS = ['measured', 'rated'] as const;

export const ROOM_KINDS = {
  'room-described': entryOf('room-described', {
    volume: typed(LIMITS.roomVolume),
    airFlow: typed(LIMITS.airFlow),
    flowFrom: v.picklist(FLOW_ORIGINS),
    /** How far from perfect mixing: 1 to 10. */
    mixing: typed(LIMITS.mixingFactor),
    /** Lower explosive limit of the product, from its own data sheet. */
    explosiveLimit: v.exactOptional(typed(LIMITS.explosiveLimit)),
  }),
  /** `at` is when the gun was put down. */
  'spraying-ended': entryOf('spraying-ended', {
    lasted: typed(LIMITS.sprayTime),
    filters: v.array(Id),
  }),
};
