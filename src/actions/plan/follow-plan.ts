import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import { type Difference, difference } from '../../planner/difference';
import type { Fault } from '../../planner/fault';
import type { Plan } from '../../planner/plan';
import { planBench } from '../../planner/plan-bench';
import type { Bench } from '../../planner/step';
import type { Result } from '../../result';
import { MINUTE_MS } from '../../units';
import type { Settled } from '../outlook/settled';
import type { OpenShop } from '../shop';
import { benchNow } from './bench';
import { keepMove, keptMove } from './kept-move';

/** The plan of the bench as it is now. */
export interface Planned {
  readonly bench: Bench;
  readonly plan: Result<Plan, readonly Fault[]>;
}

export interface FollowedPlan {
  readonly planned: ReadonlySignal<Planned>;
  /** What the last entry moved, and why; undefined where it moved nothing. */
  readonly moved: ReadonlySignal<Difference | undefined>;
  /** The person has seen what moved. */
  seen(): void;
}

const followed = new WeakMap<OpenShop, FollowedPlan>();

/** The plan of a shop, made again with every entry, every estimate and every minute; one for each open shop. */
export function followPlan(open: OpenShop): FollowedPlan {
  const known = followed.get(open);
  if (known) return known;
  const fresh = follow(open);
  followed.set(open, fresh);
  return fresh;
}

function follow(open: OpenShop): FollowedPlan {
  const { settled, nowMs, needs } = open;
  const minuteMs = computed(() => Math.floor(nowMs.value / MINUTE_MS) * MINUTE_MS);
  const planned = computed((): Planned => {
    const bench = benchNow({ ...settled.value, nowMs: minuteMs.value, zone: needs.zone() });
    return { bench, plan: planBench(bench) };
  });
  return { planned, ...watchMoves(open, planned) };
}

/** After an entry the estimates come in within this time; what moves later was not moved by it. */
const SETTLES_MS = 5 * MINUTE_MS;

/**
 * Compares with the plan before the last entry, until the estimates have followed; time going by moves nothing by itself. What moved is
 * kept over a restart of the app, until the person has seen it or the next entry is logged.
 */
function watchMoves(open: OpenShop, planned: ReadonlySignal<Planned>) {
  const { which, shop, settled, nowMs } = open;
  const moved = signal<Difference | undefined>(undefined);
  const entries = () => shop.peek().entries.keys();
  let seen: Settled | undefined;
  let before: Plan | undefined;
  let latest: Plan | undefined;
  let untilMs = 0;
  const tell = (found: Difference | undefined): void => {
    moved.value = found;
    keepMove(which, entries(), found);
  };
  effect(() => {
    const now = settled.value;
    const { plan } = planned.value;
    // What is still being read in was logged before: it moves nothing.
    if (!plan.ok || !isReadIn(open)) return;
    if (!seen) moved.value = keptMove(which, entries());
    else if (now.shop !== seen.shop) {
      before = latest;
      untilMs = nowMs.peek() + SETTLES_MS;
    }
    if (before && now !== seen && nowMs.peek() <= untilMs)
      tell(worthSaying(difference(before, plan.value), before));
    seen = now;
    latest = plan.value;
  });
  const markSeen = (): void => {
    tell(undefined);
    before = undefined;
  };
  return { moved, seen: markSeen };
}

const isReadIn = ({ isWhole, shop, settled }: OpenShop): boolean =>
  isWhole.value && settled.value.shop === shop.value;

/** Less than this is not worth a word, minutes (judgement, no source). */
const LEAST_MINUTES = 5;

function worthSaying(found: Difference, before: Plan): Difference | undefined {
  // A piece that had nothing planned is planned for the first time: that is no move.
  const wasPlanned = (pieceId: string): boolean =>
    before.steps.some((step) => step.pieceId === pieceId && !step.isDone);
  const pieces = found.pieces.filter(
    ({ pieceId, minutes }) => Math.abs(minutes) >= LEAST_MINUTES && wasPlanned(pieceId),
  );
  const moved = found.moved.filter(
    ({ from, to, stepId }) =>
      Math.abs(to - from) >= LEAST_MINUTES &&
      before.steps.some((step) => step.stepId === stepId && !step.isDone),
  );
  return pieces.length + moved.length === 0 ? undefined : { ...found, pieces, moved };
}
