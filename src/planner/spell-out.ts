import { anchorOf, firstOpen, isHandwork, notBefore } from './compile';
import type { Bound, PlannedStep } from './plan';
import type { Operation, Problem } from './search/problem';
import { endBefore, readyAt } from './search/time-order';
import type { Bench, Piece, Step } from './step';
import type { OpeningTimes } from './windows/opening-times';
import { recoatWindow } from './windows/recoat-window';
import type { UnfitAir, Weather } from './windows/working-times';

/** What the spelling out of a plan needs to know. */
export interface Timed {
  readonly bench: Bench;
  readonly problem: Problem;
  readonly openingTimes: OpeningTimes;
  readonly order: readonly number[];
  readonly starts: Float64Array;
}

/** Every step of every piece with its times and with what decides them. */
export function spellOut(timed: Timed): PlannedStep[] {
  return timed.bench.pieces.flatMap((piece, index) => spellOutPiece(timed, piece, index));
}

function spellOutPiece(timed: Timed, piece: Piece, index: number): PlannedStep[] {
  const open = firstOpen(piece.steps);
  const anchor = anchorOf(piece, timed.bench.now);
  const operations = timed.problem.chains[index]?.operations ?? [];
  const beginning: Bound = anchor > timed.bench.now ? { by: 'set-date' } : { by: 'now' };
  let cursor = anchor;
  let next = 0;
  return piece.steps.map((step, at) => {
    const before = piece.steps[at - 1];
    const about = { pieceId: piece.id, stepId: step.id, kind: step.kind, step, isDone: at < open };
    if (at < open) {
      const span = step.done ?? { from: anchor, to: anchor };
      return { ...about, start: span.from, end: span.to, bound: { by: 'done' } };
    }
    const follows: Bound = before ? { by: 'step', stepId: before.id } : beginning;
    if (!isHandwork(step)) {
      const start = cursor;
      cursor = quietEnd(step, start, timed.bench.working.unfitAir);
      const closes = step.kind === 'window' ? { closes: recoatWindow(start, step).closes } : {};
      return { ...about, start, end: cursor, bound: follows, ...closes };
    }
    const id = operations[next++] as number;
    const start = timed.starts[id] as number;
    cursor = start + step.minutes;
    return { ...about, start, end: cursor, bound: boundOf(timed, id, piece, follows) };
  });
}

/** When a step that does not need the person ends. */
function quietEnd(
  step: Exclude<Step, { kind: 'work' | 'gate' }>,
  start: number,
  unfitAir: readonly UnfitAir[],
): number {
  switch (step.kind) {
    case 'wait':
      return step.ends ? Math.max(start, step.ends.likely) : start + step.minutes.likely;
    case 'window':
      return recoatWindow(start, step).opens;
    case 'hold':
      return fitFrom(start, step.against, unfitAir);
  }
}

function fitFrom(start: number, against: Weather, unfitAir: readonly UnfitAir[]): number {
  const spell = unfitAir.find(({ because, from, to }) => because === against && from <= start && start < to);
  return spell ? fitFrom(spell.to, against, unfitAir) : start;
}

/** The last of the reasons why an operation does not begin earlier. */
function boundOf(timed: Timed, id: number, piece: Piece, follows: Bound): Bound {
  const { problem, starts } = timed;
  const operation = problem.operations[id] as Operation;
  const start = starts[id] as number;
  const before = endBefore(problem, operation, starts);
  const ready = readyAt(problem, operation, before, starts);
  const person = personBusyUntil(timed, id);
  const asked = Math.max(ready, person.until);
  const open = operation.openings.fit(asked, operation.minutes);
  const isWait = ready === Math.max(before + operation.lagMinutes, operation.waitUntil);
  const own = isWait ? follows : ownBound(timed, operation, ready);
  if (start > open) return { by: 'window' };
  if (own.by === 'coats-a-day' && ready >= person.until) return own; // the next day begins at midnight, and the shop opens later
  if (open > asked) return shutBy(timed, id, piece, asked);
  return person.until > ready ? person.bound : own;
}

/** What the piece itself waits for when it is not the step before. */
function ownBound({ bench }: Timed, { piece, step }: Operation, ready: number): Bound {
  const { steps, coatsADay } = bench.pieces[piece] as Piece;
  const asked = steps[step];
  if (asked && isHandwork(asked) && ready === notBefore(asked)) return { by: 'set-date' };
  return ready === bench.now ? { by: 'now' } : { by: 'coats-a-day', coatsADay };
}

function personBusyUntil(
  { bench, problem, order, starts }: Timed,
  id: number,
): { until: number; bound: Bound } {
  const busyId = order[order.indexOf(id) - 1];
  if (busyId === undefined) return { until: problem.personFree, bound: { by: 'now' } };
  const busy = problem.operations[busyId] as Operation;
  const until = (starts[busyId] as number) + busy.minutes + busy.moveMinutes;
  const piece = bench.pieces[busy.piece] as Piece;
  return { until, bound: { by: 'person', pieceId: piece.id, stepId: piece.steps[busy.step]?.id ?? '' } };
}

/** Whether it is the weather or the hours that keep an operation waiting; at the bench it is never the weather. */
function shutBy({ problem, bench, openingTimes }: Timed, id: number, piece: Piece, asked: number): Bound {
  const { previous, step, minutes, isInBooth } = problem.operations[id] as Operation;
  const from = previous < 0 ? firstOpen(piece.steps) : (problem.operations[previous] as Operation).step;
  const inAnyAir = openingTimes('booth').fit(asked, minutes);
  const isUnfit = (against: Weather): boolean =>
    bench.working.unfitAir.some(
      (air) => air.because === against && air.from < inAnyAir + minutes && inAnyAir < air.to,
    );
  const held = piece.steps
    .slice(from, step)
    .filter((before) => before.kind === 'hold')
    .find(({ against }) => isUnfit(against));
  return held && isInBooth ? { by: 'hold', against: held.against } : { by: 'closed' };
}
