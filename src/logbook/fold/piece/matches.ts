import type { EntryInSi, Lines } from '../in-si';

/** A set of readings of one surface. */
export type ReadingSet = EntryInSi<'colour-read'>;
export type HidingReading = EntryInSi<'hiding-read'>;

type Description = Omit<EntryInSi<'match-described'>, 'id' | 'v' | 'kind' | 'at' | 'atMs' | 'zone' | 'match'>;

/** The jar as it was after so much had been added. */
export interface Trial {
  readonly id: string;
  readonly entry: string;
  /** From 1: the first is the white base alone. */
  readonly number: number;
  readonly mixedMs: number;
  readonly added: EntryInSi<'trial-mixed'>['added'];
  readonly note?: string;
  readonly readings: readonly ReadingSet[];
}

/** A target and the jar that is led to it. */
export interface Match extends Description {
  readonly id: string;
  readonly begunMs: number;
  readonly trials: readonly Trial[];
  /** Readings of all but trials: the target, a card, tints, a toner. */
  readonly readings: readonly ReadingSet[];
  readonly hiding: readonly HidingReading[];
  /** The trial that became a recipe, the newest where there are several. */
  readonly accepted: { readonly trial: string; readonly recipe: string; readonly atMs: number } | undefined;
  readonly putAwayMs: number | undefined;
}

type Growing<T> = {
  -readonly [Key in keyof T]: T[Key] extends readonly (infer Item)[] ? Item[] : T[Key];
};
type GrowingTrial = Omit<Trial, 'readings'> & { readonly readings: ReadingSet[] };
type GrowingMatch = Omit<Growing<Match>, 'trials'> & { trials: GrowingTrial[] };

/** The matches by id, in the order in which they were begun. */
export function foldMatches(lines: Lines) {
  const matches = new Map<string, GrowingMatch>();
  for (const line of lines.of('match-described')) {
    const match = matches.get(line.match);
    matches.set(line.match, describe(line, match ?? begin(line)));
  }
  for (const line of lines.of('trial-mixed')) {
    const trials = matches.get(line.match)?.trials;
    if (trials && !trials.some(({ id }) => id === line.trial)) trials.push(mix(line, trials.length + 1));
  }
  for (const line of lines.of('colour-read')) {
    const match = matches.get(line.match);
    const { of } = line;
    if (of.as === 'trial') match?.trials.find(({ id }) => id === of.trial)?.readings.push(line);
    else match?.readings.push(line);
  }
  for (const line of lines.of('hiding-read')) matches.get(line.match)?.hiding.push(line);
  for (const { match, trial, recipe, atMs } of lines.of('trial-accepted'))
    Object.assign(matches.get(match) ?? {}, { accepted: { trial, recipe, atMs } });
  for (const { match, atMs } of lines.of('match-put-away'))
    Object.assign(matches.get(match) ?? {}, { putAwayMs: atMs });
  return { matches: matches as unknown as ReadonlyMap<string, Match> };
}

const NOTHING_YET = { accepted: undefined, putAwayMs: undefined };

const begin = ({ match, atMs }: EntryInSi<'match-described'>) => ({
  ...NOTHING_YET,
  id: match,
  begunMs: atMs,
  trials: [],
  readings: [],
  hiding: [],
});

function describe(line: EntryInSi<'match-described'>, grown: ReturnType<typeof begin> | GrowingMatch) {
  const { match: id, id: _id, v: _v, kind: _kind, at: _at, zone: _zone, atMs: _atMs, ...said } = line;
  const { begunMs, trials, readings, hiding, accepted, putAwayMs } = grown;
  return { ...said, id, begunMs, trials, readings, hiding, accepted, putAwayMs } as GrowingMatch;
}

const mix = (line: EntryInSi<'trial-mixed'>, number: number): GrowingTrial => ({
  id: line.trial,
  entry: line.id,
  number,
  mixedMs: line.atMs,
  added: line.added,
  ...(line.note === undefined ? {} : { note: line.note }),
  readings: [],
});
