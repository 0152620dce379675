import type { Span } from './span';
import type { Weather, WorkingTimes } from './windows/working-times';

/** How long something takes, minutes: ten times out of a hundred sooner, as a rule, ten out of a hundred later. */
export interface Band {
  readonly earliest: number;
  readonly likely: number;
  readonly late: number;
}

export type Task =
  | 'clean'
  | 'scuff'
  | 'flash-coat'
  | 'coat'
  | 'toner-coat'
  | 'opaque-coat'
  | 'seal'
  | 'drop-fill'
  | 'pad'
  | 'spirit-off'
  | 'pore-fill'
  | 'grain-seal'
  | 'filler-paste'
  | 'glue'
  | 'level-sand'
  | 'rub-out'
  | 'other';

export type WaitFor =
  | 'flash-off'
  | 'recoat'
  | 'shrink-back'
  | 'level-sand'
  | 'rub-out'
  | 'cure'
  | 'rest'
  | 'filler-dry'
  | 'paste-soft'
  | 'clamped';

/** What a gate asks of the film. */
export type GateCheck = 'no-print' | 'powders' | 'sink' | 'colour' | 'look-over';

interface AnyStep {
  readonly id: string;
  /** When it really was; kept as it is. An end in the future says that it is going on. */
  readonly done?: Span;
}

/** Needs the person. In the booth it needs the gun too, and the piece is moved away afterwards. */
export interface WorkStep extends AnyStep {
  readonly kind: 'work';
  readonly task: Task;
  readonly place: 'bench' | 'booth';
  readonly minutes: number;
  /** Minutes the person is still busy afterwards, moving the piece; the coat has ended before them. */
  readonly moveMinutes?: number;
  /** Counts among the coats a day. */
  readonly isCoat?: boolean;
  /** A minute before which it does not begin. */
  readonly notBefore?: number;
}

/** Needs only time, day and night. */
export interface WaitStep extends AnyStep {
  readonly kind: 'wait';
  readonly until: WaitFor;
  readonly minutes: Band;
  /** The moment it waits for, UTC minutes, where that is known: then it ends then, however late it began. */
  readonly ends?: Band;
}

/** A check that must pass before the next step. */
export interface GateStep extends AnyStep {
  readonly kind: 'gate';
  readonly check: GateCheck;
  readonly minutes: number;
  /** Minutes to wait after a check that did not pass. */
  readonly againAfterMinutes: number;
  /** When the checks that did not pass were made. */
  readonly failedAt: readonly number[];
  /** So many checks that did not pass, and waiting has not helped. */
  readonly mostFailures: number;
}

/** What follows may begin so long after what went before, and no later than so long after it. */
export interface WindowStep extends AnyStep {
  readonly kind: 'window';
  readonly fromMinutes: number;
  readonly untilMinutes: number;
  /** Work to be done first, the next day, when the window was missed. */
  readonly scuffMinutes: number;
}

/** Nothing is sprayed until the air is fit. */
export interface HoldStep extends AnyStep {
  readonly kind: 'hold';
  readonly against: Weather;
}

export type Step = WorkStep | WaitStep | GateStep | WindowStep | HoldStep;

/** A piece on the bench; its steps follow one another in the order of the list. Times in minutes since 1970 UTC. */
export interface Piece {
  readonly id: string;
  /** As the person sets it; what the model says stands in the waits. */
  readonly coatsADay: number;
  readonly steps: readonly Step[];
  readonly notBefore?: number;
  /** When it was promised for. */
  readonly promised?: number;
  /** Its scuffs cannot be kept close to the coats after them. */
  readonly mayScuffAhead?: boolean;
  /** Something of what is to come is held: no date stands until it is cleared. */
  readonly isHeld?: boolean;
  /** What it waits for could not be worked out: only what is done of it stands in the plan. */
  readonly isLeftOut?: boolean;
  /** What it waits for is being worked out: until then its waits are what was worked out last, or the usual ones. */
  readonly isAwaited?: boolean;
}

/** All there is to plan, at one moment. */
export interface Bench {
  readonly now: number;
  readonly working: WorkingTimes;
  readonly pieces: readonly Piece[];
}
