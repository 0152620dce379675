import { DAY_MS } from '../units';
import { type Act, AWAITS } from './act';
import type { Facts } from './facts';
import type { Moment } from './moments';
import { type Verdict, verdictOn } from './verdict';

/** `now`: ready. `held`: only the person can clear it. `next`: within a day. `later`: not yet. */
export type Group = 'now' | 'held' | 'next' | 'later' | 'closed';

/** Where a piece stands: the next act with its verdict, and what is awaited. */
export interface Standing {
  readonly group: Group;
  /** On the next act; undefined where the piece is closed. */
  readonly verdict: Verdict | undefined;
  /** The moment of the film that the next act waits for; none before the first coat. */
  readonly moment: Moment | undefined;
  /** The moment awaited after it. */
  readonly after: Moment | undefined;
  /** When the last coat is dry to touch. */
  readonly touch: Moment | undefined;
  readonly sortMs: number;
}

/** So long after the last coat a piece counts as still being coated: a weekend does not end it (judgement, no source). */
const COATING_MS = 3 * DAY_MS;
const FAR_MS = Number.POSITIVE_INFINITY;

/** Where a piece stands, by its facts. */
export function standingOf(facts: Facts): Standing {
  const { closedMs, startedMs, moments } = facts;
  if (closedMs !== undefined) return closedStanding(closedMs);
  const acts = actsAhead(facts);
  const momentOf = (act: Act): Moment | undefined => moments.find(({ name }) => name === AWAITS[act]);
  const isReached = (act: Act): boolean => (momentOf(act)?.likelyMs ?? FAR_MS) <= facts.nowMs;
  const next = acts.findLast(isReached) ?? acts[0] ?? 'hand-over';
  const verdict = verdictOn({ act: next }, facts);
  const moment = momentOf(next);
  const after = acts
    .slice(acts.indexOf(next) + 1)
    .map(momentOf)
    .find((one) => one !== undefined && one.likelyMs > facts.nowMs);
  const sortMs = moment?.likelyMs ?? (facts.clock === 'no-coats' ? startedMs : FAR_MS);
  const touch = moments.find(({ name }) => name === 'touch');
  return { group: groupOf(verdict, facts.nowMs), verdict, moment, after, touch, sortMs };
}

/** A finished piece is judged no more. */
export const closedStanding = (closedMs: number): Standing => ({
  group: 'closed',
  verdict: undefined,
  moment: undefined,
  after: undefined,
  touch: undefined,
  sortMs: -closedMs,
});

/** What may come next, in its usual order; what was done since the last coat is past. */
function actsAhead({ coats, moments, nowMs }: Facts): readonly Act[] {
  const last = coats.at(-1);
  if (!last) return ['coat'];
  const isOpen = (act: Act): boolean =>
    moments.length === 0 || moments.some(({ name, state }) => name === AWAITS[act] && state !== 'done');
  const isCoating = nowMs - last.atMs < COATING_MS;
  const sandings = (['level-sand', 'rub-out'] as const).filter(isOpen);
  const isWaitingToCoat =
    isCoating || moments.some(({ name, likelyMs }) => name === 'recoat' && likelyMs > nowMs);
  const acts: readonly Act[] = [
    ...(isOpen('coat') && isWaitingToCoat ? (['coat'] as const) : []),
    ...sandings,
  ];
  return acts.length > 0 ? acts : ['hand-over'];
}

function groupOf({ word, until }: Verdict, nowMs: number): Group {
  if (word === 'ready') return 'now';
  if (word === 'hold') return 'held';
  return until && until.likelyMs - nowMs < DAY_MS ? 'next' : 'later';
}
