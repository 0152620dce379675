import type { BandMs } from '../words/times';
import type { REASON_WORDS } from '../words/verdicts/reasons';
import type { Act, Question } from './act';
import type { Facts } from './facts';

/** How much a reason weighs: only `wait` and `hold` change the word, and a hold before a wait. */
export type Weight = 'note' | 'caution' | 'wait' | 'hold';

/** What a person does to clear a hold; a page knows the way there. */
export type ClearedBy =
  | 'lead-test'
  | 'lead-found'
  | 'spot-test'
  | 'barrier'
  | 'check'
  | 'scuff'
  | 'look'
  | 'air'
  | 'jar';

/** Where a rule is from: the piece's own log, the estimate, a data sheet, or common practice without a source. */
export type ReasonSource = 'log' | 'estimate' | 'sheet' | 'practice';

/** What a rule found. */
export interface Finding {
  readonly weight: Weight;
  /** The key of its words. */
  readonly says: keyof typeof REASON_WORDS;
  /** Figures that its words tell. */
  readonly figures?: Figures;
  /** When it lapses by itself; a wait without it lasts until something else happens. */
  readonly until?: BandMs | undefined;
  readonly clearedBy?: ClearedBy;
  /** Where it is from, when not from where its rule is. */
  readonly source?: ReasonSource;
  /** When what it rests on was found: an override written before that says nothing of it. */
  readonly sinceMs?: number | undefined;
}

export interface Figures {
  readonly atMs?: number;
  readonly filmM?: number;
  readonly limitM?: number;
  readonly temperatureK?: number;
  readonly limitK?: number;
  readonly share?: number;
  readonly limitShare?: number;
  readonly jar?: string;
}

/** One thing that speaks for waiting, or for minding something. */
export interface Rule {
  /** A free key: an override names it. */
  readonly name: string;
  readonly acts: readonly Act[];
  readonly source: ReasonSource;
  /** Fire and isocyanate: nobody sets them aside. */
  readonly isNeverOverridden?: true;
  readonly look: (facts: Facts, question: Question) => Finding | undefined;
}

/** A finding with the rule that made it. */
export interface Reason extends Finding {
  readonly rule: string;
  readonly source: ReasonSource;
  readonly mayBeOverridden: boolean;
  /** What the person wrote when they set this hold aside. */
  readonly override?: { readonly reason: string; readonly atMs: number } | undefined;
}
