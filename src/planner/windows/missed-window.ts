import { firstOpen } from '../compile';
import { nextDayStart } from '../local-day';
import type { Bench, Piece, Step, WindowStep } from '../step';

/** The id of the scuff that stands in for a window that was missed. */
const scuffId = (windowId: string): string => `${windowId}:scuff`;

/** The window that is open now on a piece: between the last step done and the first one that needs the person. */
export function openWindow({ steps }: Piece): WindowStep | undefined {
  for (const step of steps.slice(firstOpen(steps))) {
    if (step.kind === 'window') return step;
    if (step.kind === 'work' || step.kind === 'gate') return undefined;
  }
  return undefined;
}

/** The piece with its open window given up: it is scuffed the next day, and then goes on. */
export function withScuff(piece: Piece, { now, working }: Bench): Piece {
  const window = openWindow(piece);
  if (!window) return piece;
  const scuff: Step = {
    kind: 'work',
    id: scuffId(window.id),
    task: 'scuff',
    place: 'bench',
    minutes: window.scuffMinutes,
    notBefore: nextDayStart(now, working.zone),
  };
  return { ...piece, steps: piece.steps.flatMap((step) => (step === window ? [scuff] : [step])) };
}
