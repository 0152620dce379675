import { firstOpen } from './compile';
import type { Fault } from './fault';
import type { Bench, GateStep, Piece, Step, WaitStep, WindowStep, WorkStep } from './step';
import { longestUsualMinutes } from './windows/opening-times';

/** Everything that makes a bench impossible to plan, before any planning. */
export function faultsOf({ pieces, working }: Bench): Fault[] {
  const longest = {
    bench: longestUsualMinutes(working, 'bench'),
    booth: longestUsualMinutes(working, 'booth'),
  };
  if (longest.bench === 0) return [{ kind: 'no-working-hours' }];
  return pieces.flatMap((piece) => pieceFaults(piece, longest));
}

interface Longest {
  readonly bench: number;
  readonly booth: number;
}

function pieceFaults(piece: Piece, longest: Longest): Fault[] {
  const open = piece.steps.slice(firstOpen(piece.steps));
  const found = open.map((step, place) => stepFault(piece.id, step, open.slice(place + 1), longest));
  const noCoats: Fault[] = piece.coatsADay >= 1 ? [] : [{ kind: 'no-coats-a-day', pieceId: piece.id }];
  return [...noCoats, ...found.filter((fault) => fault !== undefined)];
}

function stepFault(pieceId: string, step: Step, later: readonly Step[], longest: Longest): Fault | undefined {
  switch (step.kind) {
    case 'work':
      return workFault(pieceId, step, longest);
    case 'gate':
      return gateFault(pieceId, step, longest);
    case 'wait':
      return waitFault(pieceId, step);
    case 'window':
      return windowFault(pieceId, step, later);
    case 'hold':
      return undefined;
  }
}

function workFault(pieceId: string, { id, minutes, place }: WorkStep, longest: Longest): Fault | undefined {
  if (longest[place] === 0) return { kind: 'no-booth-hours', pieceId, stepId: id };
  if (minutes <= longest[place]) return undefined;
  return { kind: 'step-too-long', pieceId, stepId: id, minutes, longestMinutes: longest[place] };
}

function gateFault(pieceId: string, gate: GateStep, longest: Longest): Fault | undefined {
  const failures = gate.failedAt.length;
  // Waiting no time at all after a failure asks the same question again for ever.
  const isStuck = failures > 0 && gate.againAfterMinutes <= 0;
  if (failures >= gate.mostFailures || isStuck)
    return { kind: 'gate-never-passes', pieceId, stepId: gate.id, failures };
  if (gate.minutes <= longest.bench) return undefined;
  return {
    kind: 'step-too-long',
    pieceId,
    stepId: gate.id,
    minutes: gate.minutes,
    longestMinutes: longest.bench,
  };
}

function waitFault(pieceId: string, { id, minutes }: WaitStep): Fault | undefined {
  const { earliest, likely, late } = minutes;
  const isInOrder = earliest >= 0 && earliest <= likely && likely <= late && late < Number.POSITIVE_INFINITY;
  return isInOrder ? undefined : { kind: 'band-out-of-order', pieceId, stepId: id };
}

function windowFault(pieceId: string, step: WindowStep, later: readonly Step[]): Fault | undefined {
  const windowMinutes = step.untilMinutes - step.fromMinutes;
  const next = later.find(({ kind }) => kind === 'work');
  const moveMinutes = next?.kind === 'work' ? (next.moveMinutes ?? 0) : 0;
  if (windowMinutes >= moveMinutes) return undefined;
  return { kind: 'window-too-short', pieceId, stepId: step.id, windowMinutes, moveMinutes };
}
