import type { SlotBench, SlotPiece, SlotStep } from './slots';

// Tries every start of every step on every slot, idle slots included. It shares no reasoning with the planner: it walks through time
// and at each slot either does nothing or begins one step. States that are the same but worse are dropped, nothing else.

export type SlotCost = readonly [late: number, lastEnd: number, ends: number, starts: number];

interface State {
  readonly done: readonly number[];
  /** Slot from which the next step may begin, and the last at which it may. */
  readonly from: readonly number[];
  readonly until: readonly number[];
  readonly coatsToday: readonly number[];
  readonly cost: SlotCost;
}

/** The least cost of all plans, or none if there is none that costs no more than the limit. */
export function bruteForce(bench: SlotBench, limit: SlotCost): SlotCost | undefined {
  const lastSlot = Math.min(limit[1], 24 * 14);
  const waiting = Array.from({ length: lastSlot + 34 }, () => new Map<string, State[]>());
  let best: SlotCost | undefined;
  const zeros = bench.pieces.map(() => 0);
  const nothing = zeros.map(() => Number.POSITIVE_INFINITY);
  keep(
    bench,
    waiting,
    0,
    { done: zeros, from: zeros, until: nothing, coatsToday: zeros, cost: [0, 0, 0, 0] },
    limit,
  );
  for (let slot = 0; slot < waiting.length; slot++)
    for (const state of [...(waiting[slot]?.values() ?? [])].flat()) {
      if (state.done.every((done, i) => done === bench.pieces[i]?.steps.length)) {
        if (!best || compare(state.cost, best) < 0) best = state.cost;
        continue;
      }
      const next = nextOpen(bench, slot + 1);
      keep(bench, waiting, next, idle(state, slot, next), limit);
      for (const [index, it] of bench.pieces.entries()) {
        const begun = begin(bench, it, state, index, slot);
        if (begun) keep(bench, waiting, begun.free, begun.state, limit);
      }
    }
  return best;
}

export function compare(one: SlotCost, other: SlotCost): number {
  return one.map((value, i) => value - (other[i] as number)).find((difference) => difference !== 0) ?? 0;
}

/** Nothing can begin while the shop is closed, so doing nothing goes on until it opens. */
function nextOpen({ open, close }: SlotBench, slot: number): number {
  if (slot % 24 < open) return slot - (slot % 24) + open;
  return slot % 24 < close ? slot : slot - (slot % 24) + 24 + open;
}

function idle(state: State, slot: number, next: number): State {
  const isNewDay = Math.floor(next / 24) > Math.floor(slot / 24);
  return isNewDay ? { ...state, coatsToday: state.coatsToday.map(() => 0) } : state;
}

function begin(bench: SlotBench, it: SlotPiece, state: State, index: number, slot: number) {
  const step = it.steps[state.done[index] as number];
  if (!step || slot < (state.from[index] as number) || slot > (state.until[index] as number))
    return undefined;
  if (step.isCoat && (state.coatsToday[index] as number) >= it.coatsADay) return undefined;
  for (let during = slot; during < slot + step.duration; during++)
    if (!isOpen(bench, step, during)) return undefined;
  return { free: slot + step.duration + step.move, state: after(it, step, state, index, slot) };
}

function after(it: SlotPiece, step: SlotStep, state: State, index: number, slot: number): State {
  const end = slot + step.duration;
  const next = it.steps[(state.done[index] as number) + 1];
  const finish = end + it.finalWait;
  const [late, lastEnd, ends, starts] = state.cost;
  const cost: SlotCost = next
    ? [late, lastEnd, ends, starts + slot]
    : [
        late + Math.max(0, finish - (it.promised ?? finish)),
        Math.max(lastEnd, finish),
        ends + finish,
        starts + slot,
      ];
  const coats = state.coatsToday.with(index, (state.coatsToday[index] as number) + (step.isCoat ? 1 : 0));
  const isNewDay = Math.floor((end + step.move) / 24) > Math.floor(slot / 24);
  return {
    done: state.done.with(index, (state.done[index] as number) + 1),
    from: state.from.with(index, end + (next?.lag ?? 0)),
    until: state.until.with(index, end + (next?.lag ?? 0) + (next?.windowLength ?? Number.POSITIVE_INFINITY)),
    coatsToday: isNewDay ? coats.map(() => 0) : coats,
    cost,
  };
}

function isOpen({ open, close, closed, unfit }: SlotBench, step: SlotStep, slot: number): boolean {
  if (slot % 24 < open || slot % 24 >= close) return false;
  const isIn = ([from, length]: readonly [number, number]) => slot >= from && slot < from + length;
  return !step.inBooth || !(closed.some(isIn) || (step.isHeld && unfit.some(isIn)));
}

function keep(
  bench: SlotBench,
  waiting: Map<string, State[]>[],
  slot: number,
  state: State,
  limit: SlotCost,
): void {
  const known = waiting[slot];
  if (!known || state.until.some((until) => until < slot)) return;
  if (compare(atLeast(bench, state, slot), limit) > 0) return;
  const from = state.from.map((at) => Math.max(at, slot));
  const key = [state.done, from, state.until, state.coatsToday].join(';');
  const others = known.get(key) ?? [];
  const isWorse = (one: SlotCost, other: SlotCost) => one.every((value, i) => value >= (other[i] as number));
  if (others.some(({ cost }) => isWorse(state.cost, cost))) return;
  known.set(key, [...others.filter(({ cost }) => !isWorse(cost, state.cost)), state]);
}

/** The cost if from now on every piece went on with nothing in its way. */
function atLeast({ pieces }: SlotBench, { done, from, cost }: State, slot: number): SlotCost {
  let [late, lastEnd, ends, starts] = cost;
  for (const [index, { steps, finalWait, promised }] of pieces.entries()) {
    const left = steps.slice(done[index]);
    if (left.length === 0) continue;
    let at = Math.max(slot, from[index] as number);
    for (const [place, { duration, lag }] of left.entries()) {
      if (place > 0) at += lag;
      starts += at;
      at += duration;
    }
    late += Math.max(0, at + finalWait - (promised ?? Number.POSITIVE_INFINITY));
    lastEnd = Math.max(lastEnd, at + finalWait);
    ends += at + finalWait;
  }
  return [late, lastEnd, ends, starts];
}
