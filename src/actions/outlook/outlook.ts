import type { Estimate } from '../../estimator/estimate';

export type PieceId = string;

/** What is known of when a piece may be touched again. */
export type Outlook =
  | { readonly state: 'no-coats' }
  | { readonly state: 'computing' }
  | { readonly state: 'failed'; readonly message: string }
  /** As it was last worked out, kept on this phone: shown until it is worked out again. */
  | {
      readonly state: 'kept';
      readonly estimate: Pick<Estimate, 'milestones' | 'profiles'>;
      readonly startMs: number;
      /** What of the piece it was worked out from. */
      readonly key: string;
    }
  | {
      readonly state: 'ready';
      readonly estimate: Estimate;
      /** The zero of the estimate's clock, milliseconds since 1970. */
      readonly startMs: number;
      /** An entry has changed it since; the next one is on its way. */
      readonly stale: boolean;
    };
