import { type Band, type Estimate, MILESTONES, type Milestone } from '../estimator/estimate';
import type { Piece } from '../logbook/fold/piece/pieces';
import { MINUTE_MS } from '../units';
import type { BandMs } from '../words/times';

/** How far a moment has come: `perhaps` lies between its early end and its likely time, `done` was followed by the act it allows. */
export type MomentState = 'waiting' | 'perhaps' | 'reached' | 'done';

/** A milestone of a piece as an instant with its band, in milliseconds since 1970. */
export interface Moment extends BandMs {
  readonly name: Milestone;
  readonly state: MomentState;
  /** Settled by its cure, not by losing solvent alone. */
  readonly isCure?: true;
  /** Settled, whatever the date: a check has found the film soft. */
  readonly isFoundSoft?: true;
}

/** An estimate that was worked out, and the zero of its clock, milliseconds since 1970. */
export interface WorkedOut {
  readonly startMs: number;
  readonly estimate: Pick<Estimate, 'milestones'> & { readonly law?: unknown };
}

/** The milestones of a piece in their usual order; none while they are not worked out. */
export function momentsOf(piece: Worked, workedOut: WorkedOut | undefined, nowMs: number): readonly Moment[] {
  if (!workedOut) return [];
  const { estimate, startMs } = workedOut;
  const isDone: Partial<Record<Milestone, boolean>> = {
    recoat: isSanded(piece, 'level') || isSanded(piece, 'rub-out'),
    level: isSanded(piece, 'level') || isSanded(piece, 'rub-out'),
    rubOut: isSanded(piece, 'rub-out'),
  };
  return MILESTONES.map((name) => {
    const band = bandMs(startMs, estimate.milestones[name]);
    return {
      name,
      ...band,
      state: isDone[name] ? 'done' : stateAt(nowMs, band),
      ...(name === 'settled' && estimate.law !== undefined && { isCure: true as const }),
    };
  });
}

/** A band in seconds after an instant as instants, in milliseconds since 1970: whole minutes, up, so that every page says the same. */
export function bandMs(startMs: number, { earliestS, likelyS, lateS }: Band): BandMs {
  const after = (seconds: number): number => Math.ceil((startMs + seconds * 1000) / MINUTE_MS) * MINUTE_MS;
  return { earliestMs: after(earliestS), likelyMs: after(likelyS), lateMs: after(lateS) };
}

interface Worked {
  readonly coats: readonly { readonly atMs: number }[];
  readonly sandings: readonly Pick<Piece['sandings'][number], 'atMs' | 'stage'>[];
}

/** Whether a film was sanded so since its last coat. */
export function isSanded({ coats, sandings }: Worked, stage: Piece['sandings'][number]['stage']): boolean {
  const lastCoatMs = coats.at(-1)?.atMs ?? Number.NEGATIVE_INFINITY;
  return sandings.some((sanding) => sanding.stage === stage && sanding.atMs > lastCoatMs);
}

function stateAt(nowMs: number, { earliestMs, likelyMs }: BandMs): MomentState {
  if (nowMs < earliestMs) return 'waiting';
  return nowMs < likelyMs ? 'perhaps' : 'reached';
}
