import { fail, type Result, succeed } from '../../result';
import { DAY_MINUTES } from '../../units';
import { fillIn, type Urgency } from './fill-in';
import { improve } from './improve';
import { type Cost, chainEnd, costOf, isBetter, type Operation, type Problem } from './problem';
import { type Ordered, searchExact } from './search-exact';
import { createTurns } from './take-turns';
import { endBefore, readyAt } from './time-order';

/** Up to so many operations the best order of all is looked for. */
const MOST_EXACT = 14;

/** How many operations may be filled in, in all, while the urgency of the pieces is varied. */
const MOST_FILLED = 25_000;
/** How many may be begun in turn, which is much quicker. */
const MOST_TURNS = 240_000;
/** More tries than this find next to nothing on a small bench. */
const MOST_TRIES = 3000;

/** The order found, and whether it is proved that there is no better. */
export interface Found extends Ordered {
  readonly isProved: boolean;
}

/** A good order for the operations, the best one if they are few; or the piece whose windows cannot be kept. */
export function search(problem: Problem): Result<Found, { readonly piece: number }> {
  const rest = aloneRest(problem);
  const attempt = createAttempt(problem);
  let best: Timing | undefined;
  let bestRule: Rule | undefined;
  for (const rule of rules(problem, rest)) {
    const tried = attempt(rule);
    if (!tried.ok) {
      if (rule.served === 'soonest') continue; // a window missed in haste is kept by the others
      return tried;
    }
    if (best && !isBetter(tried.value.cost, best.cost)) continue;
    best = copied(tried.value);
    bestRule = rule;
  }
  if (problem.operations.length <= MOST_EXACT) {
    const exact = searchExact(problem, inOrder(best as Timing));
    if (exact.isProved) return succeed({ ...exact.best, isProved: true });
    best = exact.best;
  }
  const varied = vary(problem, attempt, { rule: bestRule as Rule, known: best as Timing });
  return succeed({ ...improve(problem, inOrder(varied)), isProved: false });
}

interface Rule {
  readonly urgency: Urgency;
  /** Which piece is served next: the most urgent of all, or of those that can begin soonest, so that nobody stands idle. */
  readonly served: 'most-urgent' | 'soonest';
}

/**
 * The longest way to go first; the latest to end first; who is ready first; the order of the list. And of those that can begin soonest
 * the one with the longest way to go, some of the short ones among the long; also with all coats before all else, while the booth is open.
 */
function rules(problem: Problem, rest: Float64Array): Rule[] {
  const restOf = (operation: number) => rest[operation] as number;
  const urgencies: Urgency[] = [
    (_, operation) => restOf(operation),
    (_, operation, ready) => ready + restOf(operation),
    (_, operation, ready) => restOf(operation) / 10_000 - ready,
    (piece) => -piece,
  ];
  const early = EARLY_SHARES.flatMap((share) => AMONG.map((among) => someEarly(problem, rest, share, among)));
  return [
    ...urgencies.map((urgency) => ({ urgency, served: 'most-urgent' }) as const),
    ...[...early, ...early.map((urgency) => boothFirst(problem, urgency))].map(
      (urgency) => ({ urgency, served: 'soonest' }) as const,
    ),
  ];
}

/** More than the longest way to go, minutes. */
const AHEAD = 10 * 365 * DAY_MINUTES;

const boothFirst =
  ({ operations }: Problem, urgency: Urgency): Urgency =>
  (piece, id, ready) =>
    urgency(piece, id, ready) + ((operations[id] as Operation).isInBooth ? AHEAD : 0);

/** How many of the pieces with the shortest way to go are begun among the longer ones. */
const EARLY_SHARES = [0, 0.1, 0.2, 0.3, 0.4] as const;
/** They are begun as if only so many of all had a shorter way to go. */
const AMONG = [0.6, 0.8] as const;

/** With all short ones last, nothing is ready in the middle, while the coats are done and the films rest. */
function someEarly({ chains }: Problem, rest: Float64Array, share: number, among: number): Urgency {
  const ways = chains.map(({ operations: [first = -1] }) => rest[first] ?? 0);
  const sorted = ways.toSorted((one, other) => one - other);
  const early = sorted[Math.round(share * sorted.length) - 1] ?? -1;
  const sooner = (sorted[Math.floor(among * (sorted.length - 1))] as number) - early;
  return (piece, operation) =>
    (rest[operation] as number) + ((ways[piece] as number) <= early ? Math.max(0, sooner) : 0);
}

/** When all operations begin, and what that costs. */
type Timing = Pick<Ordered, 'starts' | 'cost'>;

/** Times the operations by a rule; what taking turns gives lies in the scratch space. */
type Attempt = (rule: Rule) => Result<Timing, { readonly piece: number }>;

function createAttempt(problem: Problem): Attempt {
  const takeTurns = createTurns(problem);
  const scratch = new Float64Array(problem.operations.length);
  return ({ urgency, served }) => {
    if (served === 'soonest') {
      if (!takeTurns(urgency, scratch)) return fail({ piece: -1 });
      return succeed({ starts: scratch, cost: costOf(problem, scratch) });
    }
    const filled = fillIn(problem, urgency);
    if (!filled.ok) return fail({ piece: filled.piece });
    return succeed({ starts: filled.starts, cost: costOf(problem, filled.starts) });
  };
}

const copied = ({ starts, cost }: Timing): Timing => ({ starts: starts.slice(), cost });

/** The operations in the order of their starts. */
const inOrder = ({ starts, cost }: Timing): Ordered => ({
  order: Array.from(starts.keys()).sort((a, b) => (starts[a] as number) - (starts[b] as number)),
  starts,
  cost,
});

/** A change is kept if it is as good as what was kept so many changes ago (late acceptance; Burke and Bykov 2017, from memory). */
const MEMORY = 20;

/** Lets one piece after another take the place of another, or change places with it, and keeps what makes the plan better. */
function vary(
  problem: Problem,
  attempt: Attempt,
  { rule: { urgency, served }, known }: { rule: Rule; known: Timing },
): Timing {
  const pieces = [...problem.chains.keys()].filter((piece) => problem.chains[piece]?.operations.length);
  if (pieces.length < 2) return known;
  const own = problem.chains.map(({ operations: [first] }, piece) =>
    first === undefined ? 0 : urgency(piece, first, (problem.operations[first] as Operation).notBefore),
  );
  const place = [...own];
  const varied: Urgency = (piece, id, ready) =>
    urgency(piece, id, ready) + (place[piece] as number) - (own[piece] as number);
  const pick = numbers();
  const kept = Array.from({ length: MEMORY }, () => known.cost);
  let best = known;
  let last = known.cost;
  const most = (served === 'soonest' ? MOST_TURNS : MOST_FILLED) / problem.operations.length;
  for (let turn = 0; turn < Math.min(MOST_TRIES, most); turn++) {
    const one = pieces[pick(pieces.length)] as number;
    const other = pieces[pick(pieces.length)] as number;
    const before = [place[one], place[other]] as [number, number];
    place[one] = before[1] + pick(3) - 1;
    if (pick(2) === 0) place[other] = before[0];
    const tried = attempt({ urgency: varied, served });
    const slot = turn % MEMORY;
    if (tried.ok && !(isBetter(last, tried.value.cost) && isBetter(kept[slot] as Cost, tried.value.cost))) {
      last = tried.value.cost;
      if (isBetter(last, best.cost)) best = copied(tried.value);
    } else [place[one], place[other]] = before;
    kept[slot] = last;
  }
  return best;
}

/** The same row of numbers every time, so that the same bench gives the same plan (Numerical Recipes' quick generator). */
function numbers(): (most: number) => number {
  let state = 1;
  return (most) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * most);
  };
}

/** For every operation the minutes from its start to the end of its piece, if the piece had the person to itself. */
function aloneRest(problem: Problem): Float64Array {
  const starts = new Float64Array(problem.operations.length);
  const rest = new Float64Array(problem.operations.length);
  for (const chain of problem.chains) {
    for (const id of chain.operations) {
      const operation = problem.operations[id] as Operation;
      const ready = readyAt(problem, operation, endBefore(problem, operation, starts), starts);
      starts[id] = operation.openings.fit(Math.max(ready, problem.personFree), operation.minutes);
    }
    const end = chainEnd(problem, chain, starts);
    for (const id of chain.operations) rest[id] = end - (starts[id] as number);
  }
  return rest;
}
