import type { AppendFailure } from '../logbook/logbook';
import { sentenceFor } from '../logbook/sentence';
import { fail, type Result } from '../result';

/** Why nothing was done, in sentences for the person. */
export interface Refused {
  /** The whole of it. */
  readonly sentence: string;
  /** What belongs beside a field, by the field's place in the entry: `film.wetFilm`, `at`. */
  readonly fields: Readonly<Record<string, string>>;
}

const FIELD: { readonly [K in AppendFailure['kind']]?: string } = {
  'in-the-future': 'at',
  'too-early': 'at',
  'unknown-piece': 'piece',
  'piece-closed': 'piece',
  'unknown-jar': 'jar',
  'unknown-air': 'air',
};

/** The failure in sentences; times are written for the zone. */
export function refuse(failure: AppendFailure, zone: string): Result<never, Refused> {
  const sentence = sentenceFor(failure, (atMs) => clockAndDay(atMs, zone));
  if (failure.kind === 'faulty') {
    const fields = Object.fromEntries(failure.issues.map(({ path, problem }) => [path, problem]));
    return fail({ sentence, fields });
  }
  const field = FIELD[failure.kind];
  return fail({ sentence, fields: field === undefined ? {} : { [field]: sentence } });
}

const clockAndDay = (atMs: number, timeZone: string): string =>
  new Intl.DateTimeFormat('en-GB', { timeZone, dateStyle: 'medium', timeStyle: 'short' }).format(atMs);
