/** The moments a finisher waits for, as the estimator names them. */
export type MomentName = 'touch' | 'recoat' | 'level' | 'rubOut' | 'settled';

/** What each moment is called before its time: "Recoat from 14:20". */
export const MOMENT_WORDS: Record<MomentName, string> = {
  touch: 'Dry to touch from',
  recoat: 'Recoat from',
  level: 'Level-sand from',
  rubOut: 'Rub out from',
  settled: 'Hard by',
};

/** When a film sinks no more: its full cure where it cures; otherwise only once the late end of its band is over. */
interface Hardening {
  readonly isCure?: boolean | undefined;
  readonly lateMs: number;
  /** A check has found it soft, whatever the date. */
  readonly isFoundSoft?: boolean | undefined;
}

/** Whether a film may be called fully hardened; lacquer that loses solvent alone goes on sinking after the likely time. */
export const isFullyHard = ({ isCure, lateMs, isFoundSoft }: Hardening, nowMs: number): boolean =>
  isFoundSoft !== true && (isCure === true || nowMs >= lateMs);

/** What a moment is called, claiming no more than is known. */
export const momentWords = (moment: Hardening & { readonly name: MomentName }, nowMs: number): string =>
  moment.name === 'settled' && isFullyHard(moment, nowMs) ? 'Fully hardened by' : MOMENT_WORDS[moment.name];

/** How far a moment has come; a shape stands beside each. */
export const MOMENT_STATE = {
  waiting: 'Wait',
  perhaps: 'Perhaps',
  reached: 'Ready',
  done: 'Done',
} as const;

/** Said of a moment whose band has begun. */
export const PERHAPS_HINT = 'Within its band: try it where it won’t show.';

/** Said once of a moment that falls on another day than when it was last looked at. */
export const MOMENT_WAS = (day: string): string => `Moved: it was ${day}.`;

/** A band in one sentence, for who cannot see it. */
export const bandSentence = (what: string, likely: string, earliest: string, late: string): string =>
  `${what} ${likely}; between ${earliest} and ${late}.`;
