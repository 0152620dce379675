import * as v from 'valibot';
import { LIMITS } from '../../limits';
import { typed } from '../../typed';
import { entryOf } from '../envelope';

const UNIT_SYSTEMS = ['metric', 'us'] as const;

export const SETTINGS_KINDS = {
  'settings-changed': entryOf('settings-changed', {
    patch: v.object({
      units: v.exactOptional(v.picklist(UNIT_SYSTEMS)),
      altitude: v.exactOptional(typed(LIMITS.altitude)),
      sandingTemperature: v.exactOptional(typed(LIMITS.temperature)),
    }),
  }),
};
