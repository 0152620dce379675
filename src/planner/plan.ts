import type { Step } from './step';
import type { Weather } from './windows/working-times';

/** What decides when a step begins. */
export type Bound =
  /** It is done, or it follows at once on the step before. */
  | { readonly by: 'done' }
  | { readonly by: 'step'; readonly stepId: string }
  | { readonly by: 'now' }
  | { readonly by: 'set-date' }
  /** The person is busy with another step. */
  | { readonly by: 'person'; readonly pieceId: string; readonly stepId: string }
  | { readonly by: 'closed' }
  | { readonly by: 'hold'; readonly against: Weather }
  | { readonly by: 'coats-a-day'; readonly coatsADay: number }
  /** It waits so that the next coat still falls into its window. */
  | { readonly by: 'window' };

/** One step with its likely times, minutes since 1970 UTC. */
export interface PlannedStep {
  readonly pieceId: string;
  readonly stepId: string;
  readonly kind: Step['kind'];
  /** The step itself; also one the planner put in, such as a scuff for a window that was missed. */
  readonly step: Step;
  readonly start: number;
  readonly end: number;
  readonly isDone: boolean;
  readonly bound: Bound;
  /** Of a window: the last minute at which what follows may begin. */
  readonly closes?: number;
}

/** The step that takes the most of what is left, and what it costs if it ends a day later. */
export interface Dominant {
  readonly stepId: string;
  readonly minutes: number;
  /** Minutes by which this piece is ready later; undefined when its window would be missed. */
  readonly costOfADay: number | undefined;
  /** What the step after it waits for besides, and so takes up the day. */
  readonly absorbedBy: Bound | undefined;
}

/** What the owner should hear about a promise. */
export type PromiseState = 'none' | 'kept' | 'soft' | 'tight' | 'missed' | 'past' | 'held';

/** When a piece is ready, minutes since 1970 UTC. */
export interface PlannedPiece {
  readonly pieceId: string;
  readonly earliest: number;
  readonly likely: number;
  readonly reserveMinutes: number;
  /** Likely plus reserve, moved on to a time when someone is at work. */
  readonly promise: number;
  readonly dominant: Dominant | undefined;
  readonly promiseState: PromiseState;
  /** Something of what is to come is held: no date may be promised. */
  readonly isHeld: boolean;
  /** Windows that can no longer be kept: a scuff is planned for the next day. */
  readonly missedWindows: readonly string[];
}

/** The plan of a bench. The same bench always gives the same plan. */
export interface Plan {
  readonly now: number;
  readonly steps: readonly PlannedStep[];
  readonly pieces: readonly PlannedPiece[];
  /** Whether it is proved that no other order is better. */
  readonly isProved: boolean;
}
