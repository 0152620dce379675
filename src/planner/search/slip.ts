import { type Chain, chainEnd, type Operation, type Problem } from './problem';
import { timeOrder } from './time-order';

/** A step that ends later than planned. */
export interface Slip {
  readonly piece: number;
  /** Its place in the piece's list of steps. */
  readonly step: number;
  readonly minutes: number;
}

/** Ends of all pieces when a step slips and the work is done in the same order; undefined when a window would be missed. */
export function slippedEnds(problem: Problem, order: readonly number[], slip: Slip): number[] | undefined {
  const slipped = lengthened(problem, slip);
  const starts = new Float64Array(problem.operations.length);
  const isKept = timeOrder(slipped, order, starts, new Float64Array(starts.length));
  return isKept ? slipped.chains.map((chain) => chainEnd(slipped, chain, starts)) : undefined;
}

/** A wait for a moment ends later by as much; a moment that is none stays none. */
const later = (moment: number, minutes: number): number => (moment === 0 ? 0 : moment + minutes);

function lengthened(problem: Problem, { piece, step, minutes }: Slip): Problem {
  const chain = problem.chains[piece] as Chain;
  const id = chain.operations.find((candidate) => (problem.operations[candidate] as Operation).step >= step);
  if (id === undefined) {
    const slipped = {
      ...chain,
      finalLagMinutes: chain.finalLagMinutes + minutes,
      finalUntil: later(chain.finalUntil, minutes),
    };
    return { ...problem, chains: problem.chains.with(piece, slipped) };
  }
  const operation = problem.operations[id] as Operation;
  const slipped = {
    ...operation,
    lagMinutes: operation.lagMinutes + minutes,
    waitUntil: later(operation.waitUntil, minutes),
  };
  return { ...problem, operations: problem.operations.with(id, slipped) };
}
