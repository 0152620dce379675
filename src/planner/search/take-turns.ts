import type { Urgency } from './fill-in';
import type { Operation, Problem } from './problem';
import { endBefore, readyAt } from './time-order';

/** A run of coats joined by windows begins only if it may be kept waiting so long, minutes: others will want the person meanwhile. */
const LEEWAY = 60;

/** A window that is open already comes before everything else, the one that closes first before the others. */
const AHEAD_OF_ALL = Number.MAX_SAFE_INTEGER;

const NEVER = Number.POSITIVE_INFINITY;

/** Gives the starts, into `starts`; false when a window closes all the same. */
export type Turns = (urgency: Urgency, starts: Float64Array) => boolean;

/**
 * Goes through time: whenever the person is free, the piece that wants it most is served, of those that can begin at once; nobody stands
 * idle while anything can be done. What the turns need to know of a problem is worked out once, for thousands of tries.
 */
export function createTurns(problem: Problem): Turns {
  const { operations, chains, personFree } = problem;
  const follower = Int32Array.from(operations, (_, id) =>
    operations[id + 1]?.previous === id ? id + 1 : -1,
  );
  const isHead = operations.map(
    (operation, id) => !isJoined(operation) && isJoined(operations[follower[id] as number]),
  );
  const next = new Int32Array(chains.length);
  const soon = new Float64Array(chains.length); // none begins sooner
  const wish = new Float64Array(chains.length);

  /** While it is too late in the day for one operation, it is for all that take as long at the same place. */
  function postpone(id: number, start: number): void {
    const { openings, minutes } = operations[id] as Operation;
    for (let piece = 0; piece < soon.length; piece++) {
      if ((soon[piece] as number) >= start) continue;
      const other = operations[next[piece] as number] as Operation;
      if (other.openings === openings && other.minutes >= minutes) soon[piece] = start;
    }
  }

  function queue(piece: number, id: number, urgency: Urgency, starts: Float64Array): void {
    next[piece] = id;
    const operation = operations[id];
    if (!operation) {
      soon[piece] = NEVER;
      return;
    }
    const before = endBefore(problem, operation, starts);
    const ready = readyAt(problem, operation, before, starts);
    soon[piece] = ready;
    wish[piece] = isJoined(operation)
      ? AHEAD_OF_ALL - before - operation.latestMinutes
      : urgency(piece, id, ready);
  }

  return (urgency, starts) => {
    for (let piece = 0; piece < chains.length; piece++)
      queue(piece, chains[piece]?.operations[0] ?? -1, urgency, starts);
    for (let left = operations.length, free = personFree; left > 0; ) {
      const piece = mostWanted(soon, wish, free);
      if (piece < 0) {
        free = least(soon);
        if (free === NEVER) return false;
        continue;
      }
      const id = next[piece] as number;
      const operation = operations[id] as Operation;
      const start = operation.openings.fit(free, operation.minutes);
      if (start > free) {
        postpone(id, start);
        continue;
      }
      if (isHead[id] && !hasLeeway(problem, id, free, starts)) {
        soon[piece] = operation.openings.fit(free + LEEWAY / 2, operation.minutes);
        continue;
      }
      if (start > endBefore(problem, operation, starts) + operation.latestMinutes) return false;
      starts[id] = start;
      free = start + operation.minutes + operation.moveMinutes;
      left--;
      queue(piece, follower[id] as number, urgency, starts);
    }
    return true;
  };
}

/** Whether a window joins an operation to the one before. */
const isJoined = (operation: Operation | undefined): boolean =>
  operation !== undefined && operation.latestMinutes !== NEVER;

/** The piece with the greatest wish of those that can begin, or -1. */
function mostWanted(soon: Float64Array, wish: Float64Array, free: number): number {
  let best = -1;
  let most = Number.NEGATIVE_INFINITY;
  for (let piece = 0; piece < soon.length; piece++) {
    if ((soon[piece] as number) > free || (wish[piece] as number) <= most) continue;
    best = piece;
    most = wish[piece] as number;
  }
  return best;
}

/** The smallest of all; Infinity of none. */
function least(values: Float64Array): number {
  let found = NEVER;
  for (let i = 0; i < values.length; i++) if ((values[i] as number) < found) found = values[i] as number;
  return found;
}

/** Whether all windows of a run are kept, also if its head begins a leeway later and then nobody else wants the person. */
function hasLeeway(problem: Problem, head: number, from: number, starts: Float64Array): boolean {
  const { operations } = problem;
  const { openings, minutes } = operations[head] as Operation;
  starts[head] = from + LEEWAY;
  if (openings.fit(from + LEEWAY, minutes) > from + LEEWAY) return false;
  for (let id = head + 1; operations[id]?.previous === id - 1 && isJoined(operations[id]); id++) {
    const operation = operations[id] as Operation;
    const before = endBefore(problem, operation, starts);
    const free = before + (operations[id - 1] as Operation).moveMinutes;
    const ready = Math.max(readyAt(problem, operation, before, starts), free);
    starts[id] = operation.openings.fit(ready, operation.minutes);
    if ((starts[id] as number) > before + operation.latestMinutes) return false;
  }
  return true;
}
