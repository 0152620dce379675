import type { Outlook } from '../../actions/outlook/outlook';
import { MILESTONES, type Milestone } from '../../estimator/estimate';
import type { Piece } from '../../logbook/fold/pieces';
import type { BandMs } from '../../words/times';

/** How far a moment has come: `perhaps` lies inside its band, `done` was followed by the act it allows. */
export type MomentState = 'waiting' | 'perhaps' | 'reached' | 'done';

/** A milestone of a piece as an instant with its band, in milliseconds since 1970. */
export interface Moment extends BandMs {
  readonly name: Milestone;
  readonly state: MomentState;
}

/** The milestones of a piece in their usual order; none while they are not worked out. */
export function momentsOf(piece: Piece, outlook: Outlook | undefined, nowMs: number): readonly Moment[] {
  if (outlook?.state !== 'ready') return [];
  const { estimate, startMs } = outlook;
  const lastCoatMs = piece.coats.at(-1)?.atMs ?? Number.NEGATIVE_INFINITY;
  const isSanded = (stage: string): boolean =>
    piece.sandings.some((sanding) => sanding.stage === stage && sanding.atMs > lastCoatMs);
  const isDone: Partial<Record<Milestone, boolean>> = {
    recoat: isSanded('level') || isSanded('rub-out'),
    level: isSanded('level') || isSanded('rub-out'),
    rubOut: isSanded('rub-out'),
  };
  return MILESTONES.map((name) => {
    const { earliestS, likelyS, lateS } = estimate.milestones[name];
    const [earliestMs, likelyMs, lateMs] = [earliestS, likelyS, lateS].map((s) => startMs + s * 1000) as [
      number,
      number,
      number,
    ];
    const state = isDone[name] ? 'done' : stateAt(nowMs, earliestMs, lateMs);
    return { name, earliestMs, likelyMs, lateMs, state };
  });
}

function stateAt(nowMs: number, earliestMs: number, lateMs: number): MomentState {
  if (nowMs < earliestMs) return 'waiting';
  return nowMs < lateMs ? 'perhaps' : 'reached';
}
