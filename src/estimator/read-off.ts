import { DAY_S } from '../units';
import type { Milestone } from './estimate';
import type { StackHistory } from './history';
import type { Trace } from './trace';

/** Nothing is looked for beyond: what has not come by then is said to be late without end. */
export const LONGEST_S = 500 * DAY_S;
/** How finely curves and layers are told, and how soon after the last coat a curve begins. */
export const TOLD = { ofCurve: 48, ofLayers: 40, fromS: 30 } as const;

/** Times that grow by one ratio from the first to the last. */
export function growing(first: number, last: number, count: number): number[] {
  const ratio = Math.max(1, last / first) ** (1 / (count - 1));
  return Array.from({ length: count }, (_, k) => first * ratio ** k);
}

/** How far above or below the room the glass transition must lie, K: common practice, no source. */
export const THRESHOLD_K = {
  /** Viscosity 1e3 Pa s at the surface: WLF, correspondence from memory of a coatings textbook. */
  touch: -54,
  /** It takes a wet coat without trapping or sagging. */
  recoat: -14,
  /** It powders and does not gum: dry paper heats the film. */
  level: 8,
  rubOut: 12,
  /** From here it sinks only slowly. */
  settled: 0,
  /** Viscosity 1e7 Pa s: a pressed thumb leaves no print. As for touch. */
  print: -21,
} as const;

/** How far a film is past a milestone at a step of its trace, K: negative before, positive after. */
export function marginK(trace: Trace, k: number, milestone: Milestone, sandingK: number): number {
  const airK = trace.airK[k] as number;
  const threshold = THRESHOLD_K[milestone];
  switch (milestone) {
    case 'touch':
      return (trace.surfaceTgK[k] as number) - airK - threshold;
    case 'recoat':
      return (trace.biteTgK[k] as number) - airK - threshold;
    case 'settled':
      return (trace.baseTgK[k] as number) - sandingK - threshold;
    case 'level':
    case 'rubOut':
      return (trace.biteTgK[k] as number) - sandingK - threshold;
  }
}

/**
 * Seconds from the last coat to a milestone; Infinity where the trace does not reach it.
 *
 * The base counts as settled from the last time on that it goes up through its threshold: under a fresh coat an old finish starts
 * hard, is softened, and hardens again. And no film is settled that may not be rubbed out.
 */
export function secondsTo(trace: Trace, history: StackHistory, milestone: Milestone): number {
  if (milestone !== 'settled') return rises(trace, history, milestone)[0] ?? Number.POSITIVE_INFINITY;
  const isUp = marginK(trace, trace.timeS.length - 1, milestone, history.sandingK) >= 0;
  const last = isUp ? rises(trace, history, milestone).at(-1) : undefined;
  return Math.max(last ?? Number.POSITIVE_INFINITY, secondsTo(trace, history, 'rubOut'));
}

/** Every time that the film goes up through a milestone after the last coat, s from it; at once where it is past it then. */
function rises(trace: Trace, history: StackHistory, milestone: Milestone): number[] {
  const lastS = lastWetS(history);
  const found: number[] = [];
  let before = Number.NaN;
  for (let k = 0; k < trace.timeS.length; k++) {
    const at = trace.timeS[k] as number;
    if (at <= lastS) continue;
    const margin = marginK(trace, k, milestone, history.sandingK);
    if (margin >= 0 && !(before >= 0)) {
      const from = Math.max(lastS, trace.timeS[k - 1] ?? lastS);
      const share = before < 0 ? before / (before - margin) : 1;
      found.push(from + share * (at - from) - lastS);
    }
    before = margin;
  }
  return found;
}

/** When wet material last went on, s. */
export function lastWetS({ events }: StackHistory): number {
  return events.reduce((last, event) => (event.kind === 'sand' ? last : Math.max(last, event.atS)), 0);
}

/** A column of the trace at a moment, between its steps. */
export function at(trace: Trace, column: readonly number[], timeS: number): number {
  const { timeS: times } = trace;
  let low = 0;
  let high = times.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((times[middle] as number) <= timeS) low = middle;
    else high = middle;
  }
  const from = times[low] ?? timeS;
  const to = times[high] ?? timeS;
  const share = to > from ? Math.min(1, Math.max(0, (timeS - from) / (to - from))) : 0;
  const a = column[low] ?? 0;
  return a + share * ((column[high] ?? a) - a);
}
