import type { AirReading } from '../../../logbook/fold/shop/air';
import { LIMITS } from '../../../logbook/limits';
import { type Draft, draftProblem } from '../../../parts/fields/typed-field';
import type { UnitSystem } from '../../../words/quantities';

/** The air of a coat: as read before, read again, or not known. */
export interface AirDraft {
  readonly from: 'last' | 'again' | 'unknown';
  readonly temperature: Draft<'C' | 'F'>;
  readonly humidity: Draft<'%'>;
  readonly movement: AirReading['movement'];
}

/** The last reading, ready to be changed; not known where there is none. */
export const airFrom = (last: AirReading | undefined, units: UnitSystem): AirDraft => ({
  from: last ? 'last' : 'unknown',
  temperature: (last?.temperature.typed as Draft<'C' | 'F'>) ?? {
    text: '',
    unit: units === 'us' ? 'F' : 'C',
  },
  humidity: (last?.humidity.typed as Draft<'%'>) ?? { text: '', unit: '%' },
  movement: last?.movement ?? 'gentle',
});

/** Whether the air as said can be logged. */
export const isAirWhole = ({ from, temperature, humidity }: AirDraft): boolean =>
  from !== 'again' ||
  (!draftProblem(temperature, LIMITS.temperature) && !draftProblem(humidity, LIMITS.humidity));
