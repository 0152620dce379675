import { fail, type Result, succeed } from '../../result';
import type { Entry, Kind } from '../entry';
import type { Shop } from '../fold/fold';
import { AIR_RULES, type AirGround, airLeansOn, filterBeginningMs } from './admit-air';
import { MATCH_RULES, type MatchGround, matchLeansOn } from './admit-match';
import { MIX_RULES, type MixGround, mixLeansOn } from './admit-mix';
import { PLAN_RULES, type PlanGround } from './admit-plan';

/** Why an entry that is well formed does not fit the shop; instants in milliseconds since 1970. */
export type Refusal =
  | { readonly kind: 'in-the-future'; readonly latestMs: number }
  | { readonly kind: 'too-early'; readonly earliestMs: number; readonly latestMs: number }
  | { readonly kind: 'unknown-piece' | 'unknown-jar' | 'unknown-air' | 'unknown-entry' }
  | { readonly kind: 'piece-closed' | 'piece-there-already' | 'jar-there-already' }
  | { readonly kind: AirGround | MatchGround | PlanGround }
  | { readonly kind: MixGround | 'not-last-pour' }
  | { readonly kind: 'already-struck' | 'still-used' };

type Rules = {
  readonly [K in Kind]?: (entry: Extract<Entry, { kind: K }>, shop: Shop) => Ground | undefined;
};
type Ground = Exclude<Refusal['kind'], 'in-the-future' | 'too-early'>;

const onOpenPiece = ({ piece: id }: { readonly piece: string }, { pieces }: Shop): Ground | undefined => {
  const piece = pieces.get(id);
  if (!piece) return 'unknown-piece';
  return piece.closedMs === undefined ? undefined : 'piece-closed';
};

const RULES: Rules = {
  'piece-started': ({ piece }, { pieces }) => (pieces.has(piece) ? 'piece-there-already' : undefined),
  'piece-changed': ({ piece }, { pieces }) => (pieces.has(piece) ? undefined : 'unknown-piece'),
  'piece-closed': onOpenPiece,
  ...MIX_RULES,
  ...AIR_RULES,
  ...MATCH_RULES,
  ...PLAN_RULES,
  'jar-emptied': ({ jar }, { jars }) => (jars.has(jar) ? undefined : 'unknown-jar'),
  'coat-laid': (coat, shop) => {
    if (!shop.jars.has(coat.jar)) return 'unknown-jar';
    if (coat.air !== undefined && shop.entries.get(coat.air)?.kind !== 'air-read') return 'unknown-air';
    return onOpenPiece(coat, shop);
  },
  sanded: onOpenPiece,
  checked: onOpenPiece,
  struck: ({ entry: id }, shop) => {
    const entry = shop.entries.get(id);
    if (!entry) return 'unknown-entry';
    if (shop.struck.has(id)) return 'already-struck';
    return isLeantOn(entry, shop)
      ? 'still-used'
      : (mixLeansOn(entry, shop) ?? airLeansOn(entry, shop) ?? matchLeansOn(entry, shop));
  },
};

/** Whether striking this entry would leave work on a piece, or from a jar, with nothing under it. */
function isLeantOn(entry: Entry, { pieces, jars }: Shop): boolean {
  if (entry.kind === 'piece-started') {
    const piece = pieces.get(entry.piece);
    return piece !== undefined && piece.coats.length + piece.sandings.length + piece.checks.length > 0;
  }
  if (entry.kind === 'jar-filled' && jars.has(entry.jar))
    return [...pieces.values()].some(({ coats }) => coats.some(({ jar }) => jar === entry.jar));
  return false;
}

/** When the thing that this entry is about came to be. A jar may be written down after its first coat. */
function beginningMs(entry: Entry, shop: Shop): number | undefined {
  const { pieces, jars, weighUps } = shop;
  if (entry.kind === 'jar-emptied' || entry.kind === 'jar-weighed' || entry.kind === 'jar-drawn')
    return jars.get(entry.jar)?.filledMs;
  if (entry.kind === 'poured') return weighUps.get(entry.weighUp)?.begunMs;
  if ('match' in entry && entry.kind !== 'match-described') return shop.matches.get(entry.match)?.begunMs;
  if ('piece' in entry) return pieces.get(entry.piece)?.startedMs;
  return filterBeginningMs(entry, shop);
}

/** The entry, when it fits the shop as it is; otherwise why not, with the times that would be accepted. */
export function admit(entry: Entry, shop: Shop, nowMs: number): Result<Entry, Refusal> {
  const atMs = Date.parse(entry.at);
  if (atMs > nowMs) return fail({ kind: 'in-the-future', latestMs: nowMs });
  const rule = RULES[entry.kind] as ((entry: Entry, shop: Shop) => Ground | undefined) | undefined;
  const ground = rule?.(entry, shop);
  if (ground) return fail({ kind: ground });
  const earliestMs = beginningMs(entry, shop);
  if (earliestMs !== undefined && atMs < earliestMs)
    return fail({ kind: 'too-early', earliestMs, latestMs: nowMs });
  return succeed(entry);
}
