import type { Openings } from './openings';

/** One thing for the person to do, with all that says when it may begin. Minutes since 1970 UTC. */
export interface Operation {
  readonly piece: number;
  /** Its place in the piece's list of steps. */
  readonly step: number;
  /** The operation before it on the same piece, or -1. */
  readonly previous: number;
  readonly isInBooth: boolean;
  readonly minutes: number;
  /** Minutes the person stays busy after its end. */
  readonly moveMinutes: number;
  /** At least so long after the end of the previous one; with none, after the chain's anchor. */
  readonly lagMinutes: number;
  /** At most so long after it; Infinity without a window. */
  readonly latestMinutes: number;
  readonly notBefore: number;
  /** The moment that a wait before it ends at, whenever that wait began. */
  readonly waitUntil: number;
  /** The coat on the same piece that must lie on an earlier day, or -1: the coats-a-day rule. */
  readonly dayAfter: number;
  readonly openings: Openings;
}

/** What is left to do on one piece. */
export interface Chain {
  readonly operations: readonly number[];
  /** When what went before ended: the last step done, or the moment the piece may be begun. */
  readonly anchor: number;
  readonly finalLagMinutes: number;
  /** The moment that a last wait ends at. */
  readonly finalUntil: number;
  readonly promised: number;
}

/** The planner's question in numbers: in which order does the one person do the operations? */
export interface Problem {
  readonly now: number;
  /** When the person is next free. */
  readonly personFree: number;
  readonly operations: readonly Operation[];
  readonly chains: readonly Chain[];
  readonly nextDayStart: (minute: number) => number;
}

/** How good a plan is: minutes late on promises, then last end, then sum of ends, then sum of starts. Less is better. */
export type Cost = readonly [late: number, lastEnd: number, ends: number, starts: number];

/** Whether the first cost is the better one. */
export function isBetter(one: Cost, other: Cost): boolean {
  for (let i = 0; i < one.length; i++) {
    const difference = (one[i] as number) - (other[i] as number);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

/** When a piece is finished if its operations start as given. */
export function chainEnd(
  problem: Problem,
  { operations, anchor, finalLagMinutes, finalUntil }: Chain,
  starts: ArrayLike<number>,
): number {
  const last = operations.at(-1);
  const end =
    last === undefined ? anchor : (starts[last] as number) + (problem.operations[last] as Operation).minutes;
  return Math.max(end + finalLagMinutes, finalUntil);
}

/** The cost of a plan in which the operations start as given. */
export function costOf(problem: Problem, starts: ArrayLike<number>): Cost {
  let late = 0;
  let lastEnd = 0;
  let ends = 0;
  for (const chain of problem.chains) {
    const end = chainEnd(problem, chain, starts);
    late += Math.max(0, end - chain.promised);
    lastEnd = Math.max(lastEnd, end);
    ends += end;
  }
  let sum = 0;
  for (let i = 0; i < problem.operations.length; i++) sum += starts[i] as number;
  return [late, lastEnd, ends, sum];
}
