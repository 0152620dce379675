/** The moments a finisher waits for, as the estimator names them. */
export type Milestone = 'touch' | 'recoat' | 'level' | 'rubOut' | 'settled';

/** What each moment is called before its time: "Recoat from 14:20". */
export const MOMENT_WORDS: Record<Milestone, string> = {
  touch: 'Dry to touch from',
  recoat: 'Recoat from',
  level: 'Level-sand from',
  rubOut: 'Rub out from',
  settled: 'Fully hardened by',
};

/** How far a moment has come; a shape stands beside each. */
export const MOMENT_STATE = {
  waiting: 'Wait',
  perhaps: 'Perhaps',
  reached: 'Ready',
  done: 'Done',
} as const;

/** Said of a moment whose band has begun. */
export const PERHAPS_HINT = 'Within its band: try it where it won’t show.';

/** A band in one sentence, for who cannot see it. */
export const bandSentence = (what: string, likely: string, earliest: string, late: string): string =>
  `${what} ${likely}; between ${earliest} and ${late}.`;
