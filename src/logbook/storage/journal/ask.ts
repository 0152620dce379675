import type { Row } from '../database';

/** Keys whose value the database could not give. */
export type Unread = readonly string[] | 'all';

/** What is asked of the worker that keeps the journal. */
export type Ask =
  | { readonly ask: 'append'; readonly rows: readonly Row[] }
  | { readonly ask: 'compare'; readonly unread: Unread };

/** What comparing the journal with the database has found. */
export interface Compared {
  /** What the journal has and the database has not, or cannot read. */
  readonly lost: readonly Row[];
  /** How many rows the journal holds. */
  readonly size: number;
}

export interface Asked {
  readonly number: number;
  readonly name: string;
  readonly question: Ask;
}
export interface Answered {
  readonly number: number;
  /** Undefined where it could not be done. */
  readonly value: Compared | true | undefined;
}
