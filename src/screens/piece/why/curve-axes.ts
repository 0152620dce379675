import type { Estimate } from '../../../estimator/estimate';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import type { ChartAxis } from '../../../parts/time/line-chart';
import { timeTicks } from '../../../parts/time/since-axis';
import { SINCE_WORDS } from '../../../words/piece/since';
import type { UnitSystem } from '../../../words/quantities';

/** What a curve of a piece is drawn from. */
export interface CurveProps {
  readonly piece: Piece;
  readonly units: UnitSystem;
  readonly estimate: Estimate;
  readonly startMs: number;
  readonly nowMs: number;
}

/** Time since the last coat on a growing scale: minutes and months both have room. */
export interface TimeAlong {
  readonly axis: ChartAxis;
  /** Of a second on the history's clock. */
  readonly at: (timeS: number) => number;
  readonly marks: readonly { readonly x: number; readonly label: string }[];
  /** Points of the curve nearest to each tick: the rows of its table. */
  readonly rows: readonly { readonly index: number; readonly label: string }[];
}

/** The time axis of a piece's curves. */
export function timeAlong({ piece, estimate, startMs, nowMs }: CurveProps): TimeAlong {
  const { timeS } = estimate.curve;
  const lastCoatS = ((piece.coats.at(-1)?.atMs ?? startMs) - startMs) / 1000;
  const at = (moment: number): number => Math.log10(Math.max(moment - lastCoatS, 1));
  const [min, max] = [at(timeS[0] ?? lastCoatS), at(timeS.at(-1) ?? lastCoatS)];
  const isInside = (x: number): boolean => x >= min && x <= max;
  const ticks = timeTicks(min, max);
  const now = at((nowMs - startMs) / 1000);
  return {
    at,
    axis: {
      label: SINCE_WORDS.since,
      min,
      max,
      ticks,
    },
    marks: isInside(now) ? [{ x: now, label: SINCE_WORDS.now }] : [],
    rows: ticks.map(({ at: log, label }) => ({ index: nearest(timeS, lastCoatS + 10 ** log), label })),
  };
}

function nearest(times: readonly number[], wanted: number): number {
  const after = times.findIndex((time) => time >= wanted);
  return after === -1 ? times.length - 1 : after;
}
