import type { Estimate } from '../../estimator/estimate';

export type PieceId = string;

/** What is known of when a piece may be touched again. */
export type Outlook =
  | { readonly state: 'no-coats' }
  | { readonly state: 'computing' }
  | { readonly state: 'failed'; readonly message: string }
  | {
      readonly state: 'ready';
      readonly estimate: Estimate;
      /** The zero of the estimate's clock, milliseconds since 1970. */
      readonly startMs: number;
      /** An entry has changed it since; the next one is on its way. */
      readonly stale: boolean;
    };
