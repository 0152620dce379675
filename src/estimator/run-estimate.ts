import { DAY_S } from '../units';
import {
  between,
  chancesOf,
  checkMarginK,
  EVAPORATION_SPREAD,
  EVAPORATION_STEP,
  PRIOR,
  quantile,
  RUN_AT,
  WEIGHED_AT,
  weigh,
} from './belief';
import {
  type Band,
  type Curve,
  type EstimateRequest,
  MILESTONES,
  type Milestone,
  type RawEstimate,
} from './estimate';
import { groupCoats } from './group-coats';
import type { StackHistory } from './history';
import type { KeptStacks } from './kept-stacks';
import { at, growing, LONGEST_S, lastWetS, secondsTo, TOLD } from './read-off';
import { type Budget, type Simulation, simulate } from './simulate';
import type { Trace } from './trace';

/** Nodes solved in all runs of an estimate: some five seconds on a desk, and four times what a dozen coats with their nights take. */
const MOST_WORK = 8e6;

/**
 * Everything that the screens say of a stack: milestones with their band, curves, layers, what one more coat costs.
 *
 * The stack is run at seven diffusivities and three evaporation rates. Milestones between the runs are interpolated in the
 * logarithm; the belief, sharpened by this piece's checks, weighs them.
 * @throws RangeError where the history has no coat
 * @throws TooMuchWorkError where it would take minutes
 */
export function runEstimate(request: EstimateRequest, kept?: KeptStacks): RawEstimate {
  const { checks } = request;
  const history = groupCoats(request.history);
  if (!history.events.some((event) => event.kind === 'coat'))
    throw new RangeError('The history has no coat.');
  const run = marcher({ ...request, history }, kept);
  const runs = RUN_AT.map((x) => run(history, x, 0).trace);
  const margins = checks.map((check) => runs.map((trace) => checkMarginK(trace, check, history.sandingK)));
  const learned = chancesOf(checks, margins);
  const weights = weigh(request.belief ?? PRIOR, learned);
  const rows = WEIGHED_AT.map((value, k) => ({ value, weight: weights[k] as number }));
  const likely = quantile(rows, 0.5);
  const faster = run(history, 0, EVAPORATION_STEP).trace;
  const slower = run(history, 0, -EVAPORATION_STEP).trace;
  const lastS = lastWetS(history);
  const milestones = Object.fromEntries(
    MILESTONES.map((milestone) => [milestone, bandOf(milestone, history, runs, faster, slower, weights)]),
  ) as { [Name in Milestone]: Band };
  const main = run(history, likely, 0, profileTimes(history, request.nowS, milestones.settled));

  const shiftOf = (other: StackHistory) => shift(main.trace, history, run(other, likely, 0).trace, other);
  const oneMoreCoat = request.nextCoat && shiftOf(withNextCoat(history, request.nextCoat));
  return {
    milestones,
    curve: curveOf(history, runs, rows, lastS),
    profiles: main.profiles,
    now: nowOf(main, history, request.nowS),
    ...(oneMoreCoat && { oneMoreCoat }),
    whatIf: (request.whatIf ?? []).flatMap(({ name, history: other }) => {
      const moved = shiftOf(groupCoats(other));
      return moved ? [{ name, ...moved }] : [];
    }),
    coldestK: coldest(main.trace, request.history),
    learned,
  };
}

/** Runs a stack at a diffusivity and an evaporation; all runs of an estimate share one budget. */
type March = (
  history: StackHistory,
  lnDiffusivity: number,
  lnTransfer: number,
  profileAtS?: readonly number[],
) => Simulation;

function marcher(
  { history: main, stack = '', checks }: EstimateRequest,
  kept: KeptStacks | undefined,
): March {
  const budget: Budget = { left: MOST_WORK };
  // A film that smells when it should long be hard says how slow it is, where every run is looked at until then.
  const lastCheckS = Math.max(0, ...checks.map(({ atS }) => atS));
  return (history, lnDiffusivity, lnTransfer, profileAtS) => {
    const { binder, air } = history;
    const scaled: StackHistory = {
      ...history,
      binder: { ...binder, glassDiffusivityM2S: binder.glassDiffusivityM2S * Math.exp(lnDiffusivity) },
      air: air.map((span) => ({ ...span, transferMS: span.transferMS * Math.exp(lnTransfer) })),
    };
    const name = `${lnDiffusivity} ${lnTransfer} ${profileAtS ? 'layers' : ''}`;
    // What is asked beside the history as it is goes on from where that stood, with its layers or without.
    const names = history === main ? [name] : [name, `${lnDiffusivity} ${lnTransfer} layers`];
    const marks = names.flatMap((one) => kept?.markOf(stack, one, history) ?? []);
    const lastProfileS = profileAtS?.at(-1) ?? 0;
    const lastLookS = Math.max(lastProfileS, lastCheckS);
    const marched = simulate(scaled, {
      untilS: Math.max(lastWetS(history) + LONGEST_S, lastLookS + 1),
      from: marks.sort((one, other) => other.nowS - one.nowS)[0],
      budget,
      ...(profileAtS && { profileAtS }),
      isDone: ({ baseTgK, biteTgK, timeS }) =>
        isRising(baseTgK) && // a deep base is softened long after the coat went on
        (baseTgK.at(-1) as number) > history.sandingK + 1 &&
        (biteTgK.at(-1) as number) > history.sandingK + 13 &&
        (timeS.at(-1) as number) > lastLookS,
    });
    if (history === main) kept?.keep(stack, name, history, marched.marks);
    return marched;
  };
}

const isRising = (column: readonly number[]): boolean =>
  (column.at(-1) as number) > (column.at(-2) ?? Number.POSITIVE_INFINITY);

function bandOf(
  milestone: Milestone,
  history: StackHistory,
  runs: readonly Trace[],
  faster: Trace,
  slower: Trace,
  weights: readonly number[],
): Band {
  const logs = runs.map((trace) => Math.log(secondsTo(trace, history, milestone)));
  const span =
    Math.log(secondsTo(faster, history, milestone)) - Math.log(secondsTo(slower, history, milestone));
  const slope = Number.isFinite(span) ? span / (2 * EVAPORATION_STEP) : 0;
  const rows = WEIGHED_AT.flatMap((x, k) =>
    NORMAL.map((z) => ({
      value: between(logs, x) + slope * z * EVAPORATION_SPREAD,
      weight: (weights[k] as number) / NORMAL.length,
    })),
  );
  const lastS = lastWetS(history);
  const seconds = (share: number) => lastS + Math.exp(quantile(rows, share));
  return { earliestS: seconds(0.1), likelyS: seconds(0.5), lateS: seconds(0.9) };
}

/**
 * A standard normal in fifteen parts of like weight, each at its middle: a tenth, a half and nine tenths of one that stands alone come out as they are.
 * Source: quantiles at (k + 1/2)/15 (as in NIST/SEMATECH e-Handbook, 1.3.6.7.1).
 */
const LOWER_HALF = [-1.8339, -1.2816, -0.9674, -0.7279, -0.5244, -0.3407, -0.1679];
const NORMAL = [...LOWER_HALF, 0, ...LOWER_HALF.map((z) => -z)];

function curveOf(
  history: StackHistory,
  runs: readonly Trace[],
  rows: readonly { readonly value: number; readonly weight: number }[],
  lastS: number,
): Curve {
  const middle = runs[(runs.length - 1) / 2] as Trace;
  const endS = Math.min(
    ...runs.map((trace) => trace.timeS.at(-1) as number).filter((end) => end > lastS),
    lastS + LONGEST_S,
  );
  const reach = Math.max(endS, Math.min(middle.timeS.at(-1) as number, lastS + 120 * DAY_S)) - lastS;
  const timeS = growing(TOLD.fromS, reach, TOLD.ofCurve).map((after) => lastS + after);
  const along = (share: number, read: (trace: Trace, timeS: number) => number) => {
    const x = quantile(rows, share);
    return timeS.map((moment) =>
      between(
        runs.map((trace) => read(trace, moment)),
        x,
      ),
    );
  };
  const held = (trace: Trace, moment: number) => at(trace, trace.heldM, moment);
  const hardness = (trace: Trace, moment: number) => at(trace, trace.biteTgK, moment) - history.sandingK;
  const heldM = along(0.5, held);
  const hardnessK = along(0.5, hardness);
  // A fast run ends earlier than the likely one: from there the band closes.
  const least = (values: readonly number[], likely: readonly number[]) =>
    values.map((value, k) => Math.min(value, likely[k] as number));
  const most = (values: readonly number[], likely: readonly number[]) =>
    values.map((value, k) => Math.max(value, likely[k] as number));
  return {
    timeS,
    heldM,
    heldLowM: least(along(0.9, held), heldM),
    heldHighM: most(along(0.1, held), heldM),
    hardnessK,
    hardnessLowK: least(along(0.1, hardness), hardnessK),
    hardnessHighK: most(along(0.9, hardness), hardnessK),
  };
}

/** Just after every coat, on a growing scale after the last, and now. */
function profileTimes(history: StackHistory, nowS: number, settled: Band): number[] {
  const lastS = lastWetS(history);
  const afterCoats = history.events.filter((event) => event.kind === 'coat').map((event) => event.atS + 1);
  const reach = Math.min(Number.isFinite(settled.likelyS) ? settled.likelyS - lastS : LONGEST_S, 200 * DAY_S);
  const after = growing(60, Math.max(reach, 2 * DAY_S), TOLD.ofLayers).map((s) => lastS + s);
  const nowInside = nowS > (history.events[0]?.atS ?? 0) ? [nowS] : [];
  return [...afterCoats, ...after, ...nowInside].sort((a, b) => a - b);
}

function nowOf({ trace, profiles }: Simulation, history: StackHistory, nowS: number): RawEstimate['now'] {
  const profile = profiles.reduce((best, next) =>
    Math.abs(next.timeS - nowS) < Math.abs(best.timeS - nowS) ? next : best,
  );
  const dryM = profile.layers.reduce((sum, layer) => sum + layer.dryM, 0);
  const heldM = at(trace, trace.heldM, nowS);
  return {
    heldM,
    dryM,
    stillToSink: heldM / (heldM + dryM),
    hardnessK: at(trace, trace.biteTgK, nowS) - history.sandingK,
    filmK: at(trace, trace.filmK, nowS),
  };
}

function withNextCoat(
  history: StackHistory,
  nextCoat: NonNullable<EstimateRequest['nextCoat']>,
): StackHistory {
  const kept = history.events.filter((event) => event.atS <= nextCoat.atS);
  return { ...history, events: [...kept, nextCoat] };
}

/** How much later another stack may be level-sanded and rubbed out, s; undefined where neither comes within the time looked at. */
function shift(
  main: Trace,
  history: StackHistory,
  other: Trace,
  otherHistory: StackHistory,
): { levelS: number; rubOutS: number } | undefined {
  const late = (milestone: Milestone) => {
    const to = lastWetS(otherHistory) + secondsTo(other, otherHistory, milestone);
    return to - (lastWetS(history) + secondsTo(main, history, milestone));
  };
  const [levelS, rubOutS] = [late('level'), late('rubOut')];
  return Number.isNaN(levelS) || Number.isNaN(rubOutS) ? undefined : { levelS, rubOutS };
}

function coldest(trace: Trace, history: StackHistory): number[] {
  const coats = history.events.filter((event) => event.kind === 'coat').map((event) => event.atS);
  return coats.map((fromS, k) => {
    const toS = coats[k + 1] ?? (trace.timeS.at(-1) as number);
    let lowest = at(trace, trace.filmK, toS); // of a coat that was covered at once
    for (let step = 0; step < trace.timeS.length; step++) {
      const moment = trace.timeS[step] as number;
      if (moment > fromS && moment <= toS) lowest = Math.min(lowest, trace.filmK[step] as number);
    }
    return lowest;
  });
}
