import { fail, type Result, succeed } from '../../result';
import type { Entry, Kind } from '../entry';
import { asCorrected } from '../fold/corrections';
import type { Shop } from '../fold/fold';
import type { Piece } from '../fold/piece/pieces';
import { CLOCKS_DIFFER_MS } from '../time/clock';
import { quantity } from '../typed';
import { AIR_RULES, type AirGround, airLeansOn, filterBeginningMs } from './admit-air';
import { MATCH_RULES, type MatchGround, matchLeansOn } from './admit-match';
import { MIX_RULES, type MixGround, mixLeansOn } from './admit-mix';
import { PLAN_RULES, type PlanGround } from './admit-plan';
import { onZone, ZONE_RULES, type ZoneGround, zoneLeansOn } from './admit-zone';
import { onJar, onOpenPiece, onPiece } from './piece-or-jar';

type Ground =
  | 'unknown-piece'
  | 'unknown-jar'
  | 'unknown-air'
  | 'too-wet'
  | 'unknown-entry'
  | 'piece-closed'
  | 'piece-there-already'
  | 'jar-there-already'
  | AirGround
  | MatchGround
  | MixGround
  | PlanGround
  | ZoneGround
  | 'not-last-pour'
  | 'already-struck'
  | 'still-used'
  | 'not-correctable';

/** Why an entry that is well formed does not fit the shop; instants in milliseconds since 1970. */
export type Refusal =
  | { readonly kind: 'in-the-future'; readonly latestMs: number }
  | { readonly kind: 'too-early' | 'ahead-of-clock'; readonly earliestMs: number; readonly latestMs: number }
  | { readonly kind: 'after-its-work'; readonly latestMs: number }
  | { readonly kind: Ground };

type Rules = {
  readonly [K in Kind]?: (entry: Extract<Entry, { kind: K }>, shop: Shop) => Ground | undefined;
};

const RULES: Rules = {
  'piece-started': ({ piece }, { pieces }) => (pieces.has(piece) ? 'piece-there-already' : undefined),
  'piece-changed': onPiece,
  'piece-closed': onOpenPiece,
  ...MIX_RULES,
  ...AIR_RULES,
  ...MATCH_RULES,
  ...PLAN_RULES,
  ...ZONE_RULES,
  'jar-emptied': onJar,
  'coat-laid': (coat, shop) => {
    if (wetM(coat) > WETTEST_M) return 'too-wet';
    if (coat.air !== undefined && shop.entries.get(coat.air)?.kind !== 'air-read') return 'unknown-air';
    return onJar(coat, shop) ?? onOpenPiece(coat, shop);
  },
  sanded: onOpenPiece,
  checked: onOpenPiece,
  'ground-laid': onOpenPiece,
  corrected: ({ entry: id, to }, shop) => {
    const entry = asItStands(id, shop);
    if (!entry) return 'unknown-entry';
    if (shop.struck.has(id)) return 'already-struck';
    const next = asCorrected(entry, to);
    if (!next) return 'not-correctable';
    if (to.jar !== undefined && !shop.jars.has(to.jar)) return 'unknown-jar';
    if (to.piece !== undefined && !shop.pieces.has(to.piece)) return 'unknown-piece';
    return to.zoneId === undefined ? undefined : onZone(next, shop);
  },
  'hold-overridden': onOpenPiece,
  struck: ({ entry: id }, shop) => {
    const entry = asItStands(id, shop);
    if (!entry) return 'unknown-entry';
    if (shop.struck.has(id)) return 'already-struck';
    return isLeantOn(entry, shop)
      ? 'still-used'
      : (zoneLeansOn(entry, shop) ??
          mixLeansOn(entry, shop) ??
          airLeansOn(entry, shop) ??
          matchLeansOn(entry, shop));
  },
};

/** An entry by its id, corrected where it was. */
const asItStands = (id: string, { corrected, entries }: Shop): Entry | undefined =>
  corrected.get(id)?.entry ?? entries.get(id);

/** More than this in one coat runs off or is a slip of the finger, m (judgement, no source). */
const WETTEST_M = 2e-3;

/** The wet film of all passes of a coat, m; of one said by its usual build, none. */
function wetM({ film }: Extract<Entry, { kind: 'coat-laid' }>): number {
  if (film.by === 'usual') return 0;
  return film.by === 'wet' ? quantity(film.wetFilm).si : film.passes * quantity(film.perPass).si;
}

/** Whether striking this entry would leave work on a piece, or from a jar, with nothing under it. */
function isLeantOn(entry: Entry, shop: Shop): boolean {
  if (entry.kind === 'piece-started') return firstWorkMs(entry, shop) !== undefined;
  return (
    entry.kind === 'jar-filled' &&
    [...shop.pieces.values()].some(({ coats }) => coats.some(({ jar }) => jar === entry.jar))
  );
}

/** Everything done to a piece. */
const workOn = ({ coats, sandings, checks, grounds }: Piece): readonly { readonly atMs: number }[] => [
  ...coats,
  ...sandings,
  ...checks,
  ...grounds,
];

/** When the thing that this entry is about came to be. A jar may be written down after its first coat. */
function beginningMs(entry: Entry, shop: Shop): number | undefined {
  const { pieces, jars, weighUps } = shop;
  if (entry.kind === 'jar-emptied' || entry.kind === 'jar-weighed' || entry.kind === 'jar-drawn')
    return jars.get(entry.jar)?.filledMs;
  if (entry.kind === 'poured') return weighUps.get(entry.weighUp)?.begunMs;
  if ('match' in entry && entry.kind !== 'match-described') return shop.matches.get(entry.match)?.begunMs;
  if ('piece' in entry && entry.kind !== 'piece-started') return pieces.get(entry.piece)?.startedMs;
  return filterBeginningMs(entry, shop);
}

/** When the first work was logged on what this entry began: it cannot have begun later. */
function firstWorkMs(entry: Entry, { pieces, weighUps }: Shop): number | undefined {
  if (entry.kind === 'weigh-up-begun') return weighUps.get(entry.weighUp)?.pours[0]?.atMs;
  const piece = entry.kind === 'piece-started' ? pieces.get(entry.piece) : undefined;
  const work = piece && workOn(piece).map(({ atMs }) => atMs);
  return work && work.length > 0 ? Math.min(...work) : undefined;
}

/** When the newest coat or sanding under this one was logged, 0 where there is none: a coat of a clock that was ahead must not end up on top of it. */
function workUnderMs(entry: Entry, { pieces }: Shop): number {
  if (entry.kind !== 'coat-laid' && entry.kind !== 'sanded' && entry.kind !== 'checked') return 0;
  const piece = pieces.get(entry.piece);
  return Math.max(piece?.coats.at(-1)?.atMs ?? 0, piece?.sandings.at(-1)?.atMs ?? 0);
}

function timeRefusal(entry: Entry, shop: Shop, nowMs: number): Refusal | undefined {
  const atMs = Date.parse(entry.at);
  const earliestMs = beginningMs(entry, shop);
  if (earliestMs === undefined || atMs >= earliestMs) return undefined;
  return { kind: earliestMs > nowMs ? 'ahead-of-clock' : 'too-early', earliestMs, latestMs: nowMs };
}

/** The time of a corrected entry is judged only where the correction moves it, or moves what it is about. */
function correctionRefusal(
  { entry: id, to }: Extract<Entry, { kind: 'corrected' }>,
  shop: Shop,
  nowMs: number,
): Refusal | undefined {
  const before = asItStands(id, shop);
  const entry = before && asCorrected(before, to);
  if (!entry || (to.at === undefined && to.piece === undefined && to.jar === undefined)) return undefined;
  if (to.at !== undefined && Date.parse(to.at) > nowMs) return { kind: 'in-the-future', latestMs: nowMs };
  const latestMs = firstWorkMs(entry, shop);
  if (latestMs !== undefined && Date.parse(entry.at) > latestMs) return { kind: 'after-its-work', latestMs };
  return timeRefusal(entry, shop, nowMs);
}

/** The entry, when it fits the shop as it is; otherwise why not, with the times that would be accepted. */
export function admit(entry: Entry, shop: Shop, nowMs: number): Result<Entry, Refusal> {
  if (Date.parse(entry.at) > nowMs) return fail({ kind: 'in-the-future', latestMs: nowMs });
  const rule = RULES[entry.kind] as ((entry: Entry, shop: Shop) => Ground | undefined) | undefined;
  const ground: Ground | undefined = rule?.(entry, shop) ?? onZone(entry, shop);
  if (ground) return fail({ kind: ground });
  const underMs = workUnderMs(entry, shop);
  if (underMs > nowMs + CLOCKS_DIFFER_MS)
    return fail({ kind: 'ahead-of-clock', earliestMs: underMs, latestMs: nowMs });
  const refusal =
    entry.kind === 'corrected' ? correctionRefusal(entry, shop, nowMs) : timeRefusal(entry, shop, nowMs);
  return refusal ? fail(refusal) : succeed(entry);
}
