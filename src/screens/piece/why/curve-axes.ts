import type { Estimate } from '../../../estimator/estimate';
import type { Piece } from '../../../logbook/fold/pieces';
import type { ChartAxis } from '../../../parts/time/line-chart';
import { DAY_S, HOUR_S, MINUTE_S } from '../../../units';
import { WHY_WORDS } from '../../../words/piece/why';
import type { UnitSystem } from '../../../words/quantities';

/** What a curve of a piece is drawn from. */
export interface CurveProps {
  readonly piece: Piece;
  readonly units: UnitSystem;
  readonly estimate: Estimate;
  readonly startMs: number;
  readonly nowMs: number;
}

const TICKS = [
  { atS: MINUTE_S, label: WHY_WORDS.ticks.minute },
  { atS: 10 * MINUTE_S, label: WHY_WORDS.ticks.tenMinutes },
  { atS: HOUR_S, label: WHY_WORDS.ticks.hour },
  { atS: DAY_S, label: WHY_WORDS.ticks.day },
  { atS: 7 * DAY_S, label: WHY_WORDS.ticks.week },
  { atS: 30 * DAY_S, label: WHY_WORDS.ticks.month },
  { atS: 365 * DAY_S, label: WHY_WORDS.ticks.year },
];

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
  const ticks = TICKS.filter(({ atS }) => isInside(Math.log10(atS)));
  const now = at((nowMs - startMs) / 1000);
  return {
    at,
    axis: {
      label: WHY_WORDS.since,
      min,
      max,
      ticks: ticks.map(({ atS, label }) => ({ at: Math.log10(atS), label })),
    },
    marks: isInside(now) ? [{ x: now, label: WHY_WORDS.now }] : [],
    rows: ticks.map(({ atS, label }) => ({ index: nearest(timeS, lastCoatS + atS), label })),
  };
}

function nearest(times: readonly number[], wanted: number): number {
  const after = times.findIndex((time) => time >= wanted);
  return after === -1 ? times.length - 1 : after;
}

/** Four or so round steps from the lowest to the highest value. */
export function roundTicks(lowest: number, highest: number, label: (value: number) => string) {
  const rough = (highest - lowest) / 4 || 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 2.5, 5, 10].find((one) => one * power >= rough) ?? 10) * power;
  const first = Math.ceil(lowest / step);
  const count = Math.floor(highest / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, n) => ({
    at: (first + n) * step,
    label: label((first + n) * step),
  }));
}
