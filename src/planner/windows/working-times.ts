import type { ZoneOffset } from '../local-day';
import type { Span } from '../span';

/** From and to by the wall clock, minutes after midnight; past 1440 is the small hours of the next day. */
export interface Hours {
  readonly open: number;
  readonly close: number;
}

/** One weekday: when the person works, and when the booth may be used if that is less. */
export interface DayHours {
  readonly work: readonly Hours[];
  readonly booth?: readonly Hours[];
}

/** What a hold waits out: blush, air too damp, air too cold. */
export type Weather = 'blush' | 'damp' | 'cold';

/** A time when nothing is sprayed, or nothing is done at all. */
export interface Closure extends Span {
  readonly closes: 'spraying' | 'everything';
}

/** A stretch of the forecast in which the air is unfit. */
export interface UnfitAir extends Span {
  readonly because: Weather;
}

/** Where and when the work is done. One person, one gun. */
export interface WorkingTimes {
  /** Seven days, Monday first. */
  readonly week: readonly DayHours[];
  /** No spraying (the compressor is loud), every day by the wall clock. */
  readonly quiet?: Hours;
  readonly closures: readonly Closure[];
  readonly unfitAir: readonly UnfitAir[];
  readonly zone: ZoneOffset;
}
