import type { StackEvent, StackHistory } from './history';
import type { Profile } from './simulate';

/** Moments that a finisher waits for, in the order in which they usually come. */
export const MILESTONES = ['touch', 'recoat', 'level', 'rubOut', 'settled'] as const;
export type Milestone = (typeof MILESTONES)[number];

/** A moment with its band: one in ten comes before `earliest`, one in ten after `late`. Seconds on the history's clock. */
export interface Band {
  readonly earliestS: number;
  readonly likelyS: number;
  /** Infinite where it is not reached within the time looked at. */
  readonly lateS: number;
}

/** What the person found when they tried the film. */
export interface Check {
  readonly atS: number;
  readonly test: 'print' | 'gum' | 'smell';
  readonly passes: boolean;
}

/** How this shop's film former compares with the default, as logarithms: of diffusivity, and of evaporation. */
export interface Belief {
  readonly mean: number;
  readonly spread: number;
}

export interface EstimateRequest {
  readonly history: StackHistory;
  readonly nowS: number;
  readonly checks: readonly Check[];
  /** What other pieces with this product have taught; the default prior where absent. */
  readonly belief?: Belief;
  /** The coat that would go on next, for what one more costs. */
  readonly nextCoat?: Extract<StackEvent, { kind: 'coat' }>;
  /** Other histories to compare with, by a name of the caller's: warmer, thinner, without retarder. */
  readonly whatIf?: readonly { readonly name: string; readonly history: StackHistory }[];
}

/** A curve of the film from the last coat on. All columns of one length; `low` and `high` are the band's runs. */
export interface Curve {
  readonly timeS: readonly number[];
  /** Solvent held, m3 per m2. */
  readonly heldM: readonly number[];
  readonly heldLowM: readonly number[];
  readonly heldHighM: readonly number[];
  /** How far the glass transition of the newest 20 um lies above the sanding room, K. */
  readonly hardnessK: readonly number[];
  readonly hardnessLowK: readonly number[];
  readonly hardnessHighK: readonly number[];
}

export interface Estimate {
  readonly milestones: { readonly [Name in Milestone]: Band };
  readonly curve: Curve;
  /** Layers at some forty moments from the first coat to the settled film, the one at `nowS` among them. */
  readonly profiles: readonly Profile[];
  readonly now: {
    readonly heldM: number;
    readonly dryM: number;
    /** Share by which the film over a pore or a scratch will still sink. */
    readonly stillToSink: number;
    readonly hardnessK: number;
    readonly filmK: number;
  };
  /** Later by so many seconds if `nextCoat` goes on now. */
  readonly oneMoreCoat?: { readonly levelS: number; readonly rubOutS: number };
  readonly whatIf: readonly { readonly name: string; readonly levelS: number; readonly rubOutS: number }[];
  /** Lowest temperature of the film after each coat, K, in the order of the coats: what blush is held against. */
  readonly coldestK: readonly number[];
  /** What the checks of this piece say of the diffusivity, for the belief of the shop. */
  readonly learned: Belief;
}

/** Milestones moved apart, with none settled before it may be rubbed out. */
export function settledLast(milestones: Estimate['milestones']): Estimate['milestones'] {
  const { rubOut, settled } = milestones;
  return {
    ...milestones,
    settled: {
      earliestS: Math.max(settled.earliestS, rubOut.earliestS),
      likelyS: Math.max(settled.likelyS, rubOut.likelyS),
      lateS: Math.max(settled.lateS, rubOut.lateS),
    },
  };
}
