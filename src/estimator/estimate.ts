import type { StackEvent, StackHistory } from './history';
import type { Profile } from './profile';

/** Moments that a finisher waits for, in the order in which they usually come. */
export const MILESTONES = ['touch', 'recoat', 'level', 'rubOut', 'settled'] as const;
export type Milestone = (typeof MILESTONES)[number];

declare const known: unique symbol;
/** A number that was looked at and is one: it may be without end, and is never NaN. Made by `known.ts` alone. */
export type Known = number & { readonly [known]: true };

/** A moment with its band: one in ten comes before `earliest`, one in ten after `late`. Seconds on the history's clock. */
export interface Band<Value extends number = number> {
  readonly earliestS: Value;
  readonly likelyS: Value;
  /** Infinite where it is not reached within the time looked at. */
  readonly lateS: Value;
}

/** What the person found when they tried the film. */
export interface FilmCheck {
  readonly atS: number;
  readonly test: 'print' | 'gum' | 'smell';
  readonly passes: boolean;
}

/** How this shop's film former compares with the default, as logarithms: of diffusivity, and of evaporation. */
export interface Belief<Value extends number = number> {
  readonly mean: Value;
  readonly spread: Value;
}

export interface EstimateRequest {
  /** Whose stack it is, so that what was worked out of it before can be gone on from. */
  readonly stack?: string;
  readonly history: StackHistory;
  readonly nowS: number;
  readonly checks: readonly FilmCheck[];
  /** What other pieces with this product have taught; the default prior where absent. */
  readonly belief?: Belief;
  /** The coat that would go on next, for what one more costs. */
  readonly nextCoat?: Extract<StackEvent, { kind: 'coat' }>;
  /** Other histories to compare with, by a name of the caller's: warmer, thinner, without retarder. */
  readonly whatIf?: readonly { readonly name: string; readonly history: StackHistory }[];
}

/** A curve of the film from the last coat on. All columns of one length; `low` and `high` are the band's runs. */
export interface Curve<Value extends number = number> {
  readonly timeS: readonly Value[];
  /** Solvent held, m3 per m2. */
  readonly heldM: readonly Value[];
  readonly heldLowM: readonly Value[];
  readonly heldHighM: readonly Value[];
  /** How far the glass transition of the newest 20 um lies above the sanding room, K. */
  readonly hardnessK: readonly Value[];
  readonly hardnessLowK: readonly Value[];
  readonly hardnessHighK: readonly Value[];
}

/** What is said of a stack, before it was looked at for numbers that are none. */
export interface EstimateOf<Value extends number> {
  readonly milestones: { readonly [Name in Milestone]: Band<Value> };
  readonly curve: Curve<Value>;
  /** Layers at some forty moments from the first coat to the settled film, the one at `nowS` among them. */
  readonly profiles: readonly Profile[];
  readonly now: {
    readonly heldM: Value;
    readonly dryM: Value;
    /** Share by which the film over a pore or a scratch will still sink. */
    readonly stillToSink: Value;
    readonly hardnessK: Value;
    readonly filmK: Value;
  };
  /** Later by so many seconds if `nextCoat` goes on now; absent where neither comes within the time looked at. */
  readonly oneMoreCoat?: { readonly levelS: Value; readonly rubOutS: Value };
  readonly whatIf: readonly { readonly name: string; readonly levelS: Value; readonly rubOutS: Value }[];
  /** Lowest temperature of the film after each coat, K, in the order of the coats: what blush is held against. */
  readonly coldestK: readonly Value[];
  /** What the checks of this piece say of the diffusivity, for the belief of the shop: the logarithm of their chance at each that is weighed. */
  readonly learned: readonly Value[];
}

export type RawEstimate = EstimateOf<number>;
export type Estimate = EstimateOf<Known>;

/** Milestones moved apart, with none settled before it may be rubbed out. */
export function settledLast(milestones: RawEstimate['milestones']): RawEstimate['milestones'] {
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
