import { type ActionNeeds, type Logged, log } from '../log';

/** Stops showing a caution, or shows it again; the logbook refuses it for those that are always shown. */
export const silenceCaution = (
  needs: ActionNeeds,
  caution: string,
  silenced: boolean,
): Logged<'caution-silenced'> => log(needs, 'caution-silenced', { caution, silenced });
