import type { AirSpan, StackEvent, StackHistory } from './history';
import { type Mark, readsOn } from './mark';

/** Where the marches of stacks stood, so that a new reading or a new coat marches only what is new. */
export interface KeptStacks {
  /** The furthest mark of a run of this stack that lies before anything in its history is different. */
  markOf(stack: string, run: string, history: StackHistory): Mark | undefined;
  keep(stack: string, run: string, history: StackHistory, marks: readonly Mark[]): void;
}

interface KeptRun {
  readonly history: StackHistory;
  readonly marks: readonly Mark[];
}

/** What is kept at most, in numbers of eight bytes: 48 MB. */
const MOST_NUMBERS = 6e6;
const COLUMNS = 7;

/** Keeps marks until there are too many; then the stack that was looked at longest ago goes. */
export function createKeptStacks(most = MOST_NUMBERS): KeptStacks {
  const stacks = new Map<string, Map<string, KeptRun>>();
  let numbers = 0;

  function drop(stack: string): void {
    for (const run of stacks.get(stack)?.values() ?? []) numbers -= sizeOf(run);
    stacks.delete(stack);
  }

  return {
    markOf(stack, run, history) {
      const kept = stacks.get(stack)?.get(run);
      if (!kept) return undefined;
      const sameS = sameUntilS(kept.history, history);
      // What went before the last event was marched as covered: gone on from there, nothing differs from a march from the start.
      return kept.marks.findLast(
        ({ nowS, eventsDone }) => nowS <= sameS && eventsDone < history.events.length,
      );
    },
    keep(stack, run, history, marks) {
      const runs = stacks.get(stack) ?? new Map<string, KeptRun>();
      const before = runs.get(run);
      if (before) numbers -= sizeOf(before);
      const furthest = marks.at(-1);
      const trace = furthest && readsOn(furthest);
      const kept = { history, marks: marks.map((mark) => ({ ...mark, trace: trace ?? mark.trace })) };
      runs.set(run, kept);
      stacks.delete(stack);
      stacks.set(stack, runs); // the newest last
      numbers += sizeOf(kept);
      for (const [oldest] of stacks) {
        if (numbers <= most || oldest === stack) break;
        drop(oldest);
      }
    },
  };
}

const sizeOf = ({ marks }: KeptRun): number =>
  marks.reduce(
    (sum, { film }) => sum + film.nodes * (4 + 2 * film.solvents),
    COLUMNS * (marks.at(-1)?.length ?? 0),
  );

/** Until when two histories are the same, s; before all time where they are not of one ground, without end where nothing is different. */
function sameUntilS(one: StackHistory, other: StackHistory): number {
  if (JSON.stringify(groundOf(one)) !== JSON.stringify(groundOf(other))) return Number.NEGATIVE_INFINITY;
  return Math.min(
    firstOther(one.events, other.events, ({ atS }: StackEvent) => atS),
    firstOther(one.air, other.air, ({ fromS }: AirSpan) => fromS),
  );
}

const groundOf = ({ binder, solvents, openBaseM, panelEffusivity }: StackHistory) => [
  binder,
  solvents,
  openBaseM,
  panelEffusivity,
];

/** When the first line comes that only one of two lists has; the first of all holds since ever. */
function firstOther<Line>(one: readonly Line[], other: readonly Line[], atS: (line: Line) => number): number {
  const longest = Math.max(one.length, other.length);
  for (let k = 0; k < longest; k++) {
    const [a, b] = [one[k], other[k]];
    if (a !== undefined && b !== undefined && isSame(a, b)) continue;
    if (k === 0) return Number.NEGATIVE_INFINITY;
    return Math.min(...[a, b].flatMap((line) => (line === undefined ? [] : [atS(line)])));
  }
  return Number.POSITIVE_INFINITY;
}

const isSame = <Line>(a: Line, b: Line): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);
