import { fail, type Result, succeed } from '../result';
import { faultsOf } from './check-bench';
import { compile, firstOpen } from './compile';
import type { Fault } from './fault';
import type { Plan } from './plan';
import type { Problem } from './search/problem';
import { type Found, search } from './search/search';
import { spellOut } from './spell-out';
import type { Bench, Piece } from './step';
import { summaries } from './summary';
import { openWindow, withScuff } from './windows/missed-window';
import { createOpeningTimes, type OpeningTimes } from './windows/opening-times';

/** The plan of a bench, or everything that stands in its way. The same bench always gives the same plan. */
export function planBench(asked: Bench): Result<Plan, readonly Fault[]> {
  const bench = { ...asked, pieces: asked.pieces.map(pastOfLeftOut) };
  const faults = faultsOf(bench);
  if (faults.length > 0) return fail(faults);
  const openingTimes = createOpeningTimes(bench.working, bench.now);
  const solved = solve(bench, openingTimes, new Set());
  return solved.ok ? succeed(toPlan(bench, openingTimes, solved.value)) : solved;
}

/** Of a piece that is left out only what is done: the person was busy with it, and its rags are there. */
const pastOfLeftOut = (piece: Piece): Piece =>
  piece.isLeftOut ? { ...piece, steps: piece.steps.slice(0, firstOpen(piece.steps)) } : piece;

interface Solved {
  readonly problem: Problem;
  readonly found: Found;
  /** The bench with a scuff in place of every window that is lost. */
  readonly bench: Bench;
  readonly scuffed: ReadonlySet<string>;
}

/** Looks for an order; when an open window cannot be kept it is given up, and the search goes on without it. */
function solve(
  bench: Bench,
  openingTimes: OpeningTimes,
  scuffed: ReadonlySet<string>,
): Result<Solved, readonly Fault[]> {
  const pieces = bench.pieces.map((piece) => (scuffed.has(piece.id) ? withScuff(piece, bench) : piece));
  const adapted = { ...bench, pieces };
  const problem = compile(adapted, openingTimes, 'likely');
  const found = search(problem);
  if (found.ok) return succeed({ problem, found: found.value, bench: adapted, scuffed });
  const stuck = pieces[found.failure.piece] as Piece;
  if (isScuffKept(stuck))
    return solve(
      withPiece(bench, { ...stuckAsAsked(bench, stuck), mayScuffAhead: true }),
      openingTimes,
      scuffed,
    );
  if (openWindow(stuck)) return solve(bench, openingTimes, new Set([...scuffed, stuck.id]));
  return fail([neverFits(stuck)]);
}

/** Whether a scuff to come is still kept close to its coat. */
const isScuffKept = ({ steps, mayScuffAhead }: Piece): boolean =>
  mayScuffAhead !== true && steps.some((step) => step.kind === 'work' && step.task === 'scuff' && !step.done);

const stuckAsAsked = ({ pieces }: Bench, { id }: Piece): Piece =>
  pieces.find((piece) => piece.id === id) as Piece;

const withPiece = (bench: Bench, changed: Piece): Bench => ({
  ...bench,
  pieces: bench.pieces.map((piece) => (piece.id === changed.id ? changed : piece)),
});

function neverFits(piece: Piece): Fault {
  const window = piece.steps.find((step) => step.kind === 'window' && !step.done);
  return window
    ? { kind: 'window-never-fits', pieceId: piece.id, stepId: window.id }
    : { kind: 'never-open', pieceId: piece.id };
}

function toPlan(asked: Bench, openingTimes: OpeningTimes, { problem, found, bench, scuffed }: Solved): Plan {
  const timed = { bench, problem, openingTimes, order: found.order, starts: found.starts };
  const steps = spellOut(timed);
  const withMissed = summaries(timed, steps).flatMap((piece, index) => {
    const { isLeftOut, ...own } = asked.pieces[index] as Piece;
    if (isLeftOut) return [];
    const window = scuffed.has(piece.pieceId) && openWindow(own);
    return [window ? { ...piece, missedWindows: [window.id] } : piece];
  });
  return { now: asked.now, steps, pieces: withMissed, isProved: found.isProved };
}
