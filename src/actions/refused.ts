import type { AppendFailure } from '../logbook/logbook';
import { sentenceFor } from '../logbook/sentence';
import { fail, type Result } from '../result';

/** Why nothing was done, in sentences for the person. */
export interface Refused {
  /** The whole of it. */
  readonly sentence: string;
  /** What belongs beside a field, by the field's place in the entry: `film.wetFilm`, `at`. */
  readonly fields: Readonly<Record<string, string>>;
  /** The page where it can be put right in one tap; that page leads back. Left out where a field of the form itself is to blame. */
  readonly way?: WayTo;
}

/** The parts of an address, the place first. */
export type WayTo = readonly [place: 'bench' | 'mix' | 'match' | 'air' | 'plan' | 'more', ...rest: string[]];

/** Where what was refused can be put right: in a field of the same form, or on a page of the app. */
type WayOut = { readonly field: string } | { readonly to: WayTo };

const AT = { field: 'at' } as const;
const BENCH = { to: ['bench'] } as const;
const MIX = { to: ['mix'] } as const;
const MATCH = { to: ['match'] } as const;
const ROOM = { to: ['air', 'filters'] } as const;
const PLAN = { to: ['plan'] } as const;
const STORAGE = { to: ['more'] } as const;

/** The way out of each refusal. A new kind of failure does not compile without its way. */
const WAYS_OUT: { readonly [K in Exclude<AppendFailure['kind'], 'faulty'>]: WayOut } = {
  'in-the-future': AT,
  'too-early': AT,
  'ahead-of-clock': AT,
  'after-its-work': AT,
  'not-correctable': BENCH,
  'unknown-piece': BENCH,
  'piece-closed': BENCH,
  'piece-there-already': BENCH,
  'unknown-zone': BENCH,
  'outline-crosses': { field: 'outline' },
  'photo-there-already': BENCH,
  'unknown-photo': BENCH,
  'unknown-toner': BENCH,
  'unknown-entry': BENCH,
  'already-struck': BENCH,
  'still-used': BENCH,
  'unknown-jar': MIX,
  'jar-there-already': MIX,
  'too-wet': { field: 'film.passes' },
  'unknown-air': { to: ['air'] },
  'unknown-ingredient': { to: ['mix', 'ingredient', 'new'] },
  'contains-itself': { to: ['mix', 'ingredient'] },
  'unknown-recipe': MIX,
  'unknown-weigh-up': MIX,
  'not-last-pour': MIX,
  'weigh-up-over': MIX,
  'no-such-line': MIX,
  'unknown-match': MATCH,
  'unknown-trial': MATCH,
  'trial-there-already': MATCH,
  'unknown-filter': ROOM,
  'filter-there-already': ROOM,
  'unknown-step': PLAN,
  'unknown-closure': PLAN,
  full: STORAGE,
  'no-answer': STORAGE,
  damaged: STORAGE,
  unavailable: STORAGE,
};

/** Refusals that a form may show beside a field as well as the way to the page. */
const FIELD_TOO: { readonly [K in AppendFailure['kind']]?: string } = {
  'unknown-piece': 'piece',
  'piece-closed': 'piece',
  'unknown-jar': 'jar',
  'unknown-air': 'air',
  'too-wet': 'film.passes',
};

/** The failure in sentences; times are written for the zone. */
export function refuse(failure: AppendFailure, zone: string): Result<never, Refused> {
  const sentence = sentenceFor(failure, (atMs) => clockAndDay(atMs, zone));
  if (failure.kind === 'faulty') {
    const fields = Object.fromEntries(failure.issues.map(({ path, problem }) => [path, problem]));
    return fail({ sentence, fields });
  }
  const way: WayOut = WAYS_OUT[failure.kind];
  const field = 'field' in way ? way.field : FIELD_TOO[failure.kind];
  return fail({
    sentence,
    fields: field === undefined ? {} : { [field]: sentence },
    ...('to' in way ? { way: way.to } : {}),
  });
}

const clockAndDay = (atMs: number, timeZone: string): string =>
  new Intl.DateTimeFormat('en-GB', { timeZone, dateStyle: 'medium', timeStyle: 'short' }).format(atMs);
