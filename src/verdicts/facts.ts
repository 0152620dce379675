import type { FinishName } from '../estimator/finishes/traits';
import type { Coat, Ground, Piece } from '../logbook/fold/piece/pieces';
import type { LEAD_FINDINGS } from '../logbook/kinds/piece/spot-test';
import type { Hazard } from '../reminders/cautions';
import type { OldFinish } from '../science/old-finish/old-finish';
import type { OldFinishSign } from '../science/old-finish/signs';
import type { SandingRule } from '../shop/stack/old-finish';
import type { BandMs } from '../words/times';
import type { Act } from './act';
import type { Moment } from './moments';

/** What the rules look at: plain values, so that a test is a row. Instants in milliseconds since 1970, temperatures in K, films in m. */
export interface Facts {
  readonly nowMs: number;
  readonly startedMs: number;
  readonly closedMs: number | undefined;
  readonly base: Piece['base'];
  readonly coats: readonly CoatFact[];
  readonly sandings: readonly Pick<Piece['sandings'][number], 'atMs' | 'stage' | 'removed'>[];
  readonly checks: readonly Pick<Piece['checks'][number], 'atMs' | 'test' | 'result'>[];
  /** Whether there are moments, and why not. */
  readonly clock: 'no-coats' | 'computing' | 'failed' | 'ready';
  readonly moments: readonly Moment[];
  /** The jar asked about, or the one that was used last. */
  readonly jar: JarFact | undefined;
  readonly air: AirFact;
  /** The room that hardness is held against. */
  readonly sandingK: number;
  /** What lies above the next thing that sanding must not reach; undefined where there is no film. */
  readonly above: AboveFact | undefined;
  readonly promisedMs: number | undefined;
  readonly oldFinish: OldFinishFact;
  /** Dry film of the finish, and the most that it may have; undefined where there is no limit. */
  readonly build: BuildFact | undefined;
  /** When the recoat window closes; undefined where it has no upper end. */
  readonly windowEnd: BandMs | undefined;
  /** What is still to be done, in its order. */
  readonly coming: readonly Act[];
  readonly overrides: readonly OverrideFact[];
  /** Filler, sealer and glue, in time order. */
  readonly grounds: readonly GroundFact[];
}

/** Something beside the finish that waits by itself. */
export interface GroundFact {
  readonly ground: Ground['ground'];
  readonly atMs: number;
  readonly until: BandMs;
  /** Its own sheet says so, or the person did. */
  readonly isSaid: boolean;
}

export interface CoatFact {
  readonly atMs: number;
  readonly how: Coat['how'];
  /** Undefined where the jar is not in this logbook. */
  readonly finish: FinishName | undefined;
}

export interface JarFact {
  readonly name: string;
  readonly finish: FinishName;
  readonly hazards: readonly Hazard[];
  /** From when it ages. */
  readonly mixedMs: number;
  /** The end of its pot or shelf life, where one was said. */
  readonly lifeEndMs?: number | undefined;
  readonly lifeAs?: 'pot' | 'shelf' | undefined;
  /** When it dried on a glass plate, where that was what its newest test found. */
  readonly dryOnGlassMs?: number | undefined;
}

export interface AirFact {
  /** As read last, within a working day. */
  readonly now?:
    | { readonly atMs: number; readonly temperatureK: number; readonly humidity: number }
    | undefined;
  /** What a film of the jar does in that air; undefined where it does not blush. */
  readonly blush?: 'stays-clear' | 'may-blush' | 'blushes' | undefined;
  /** The coldest that the shop was in the last days. */
  readonly coldestK?: number | undefined;
  /** The forecast's night. */
  readonly nightK?: number | undefined;
}

export interface AboveFact {
  readonly what: 'colour' | 'wood' | 'old-finish';
  /** Dry film above it, m. */
  readonly filmM: number;
}

export interface OldFinishFact {
  readonly finish: OldFinish;
  readonly signs: readonly OldFinishSign[];
  /** Whether somebody said how it looks. */
  readonly isSeen: boolean;
  /** The instant of the newest answer on which this rests; undefined where there is none. */
  readonly knownMs: number | undefined;
  readonly sanding: SandingRule;
  readonly lead: (typeof LEAD_FINDINGS)[number] | undefined;
  readonly leadMs: number | undefined;
}

export interface BuildFact {
  readonly totalDryM: number;
  readonly limitM: number;
  /** Of the coat that would go on next, taken as the last one. */
  readonly nextDryM: number;
}

/** A hold that the person set aside in writing. */
export interface OverrideFact {
  readonly rule: string;
  readonly reason: string;
  readonly atMs: number;
}
