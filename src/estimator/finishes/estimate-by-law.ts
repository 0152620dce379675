import { type Band, type Curve, MILESTONES, type RawEstimate, settledLast } from '../estimate';
import { known } from '../known';
import { growing, TOLD } from '../read-off';
import { type CuringFinish, FINISH_LAWS, type FinishLaw, type Spread } from './finish-law';
import { evidenceOf, learnedFrom, timesAfter } from './law-checks';
import type { LawEstimate, LawHistory, LawRequest, OfLaw } from './law-history';
import { layersOverTime, leftAt } from './layers';
import { type Progress, reachedS, valueAt } from './progress';
import { tgAtK } from './rates';
import { newest, runOf, totalDryM } from './run-of-law';
import {
  BY_DRYING,
  type LawMoment,
  momentTimes,
  runAtConditions,
  type Thresholds,
  thresholds,
} from './thresholds';

/** Softening by what is left of the volatiles, K (judgement, no source). */
const SOFTENING_K = 60;

/**
 * Everything that the screens say of a stack that dries by water or cures: milestones with their band, curves, layers.
 *
 * The newest coat decides; the coats below have come further. Thick coats dry slower in proportion; where solvent or water
 * leaves through the stack, hardening slows with a power of the whole film.
 * @throws RangeError where the history has no coat
 */
export function estimateByLaw(finish: CuringFinish, request: LawRequest): LawEstimate {
  const { history, nowS, checks = [], belief, nextCoat, whatIf = [] } = request;
  const law = FINISH_LAWS[finish];
  const times = momentTimes(law, history.sheet);
  const atConditions = runAtConditions(law, history.sheet);
  const evidence = evidenceOf(law, history, { times, run: atConditions }, checks);
  const untaught = thresholds(atConditions, times);
  const wanted = thresholds(atConditions, timesAfter(history, times, evidence, belief));
  const run = runOf(law, history);
  const milestones = settledLast(
    Object.fromEntries(
      MILESTONES.map((name) => [name, bandOf(name, wanted, run)]),
    ) as RawEstimate['milestones'],
  );
  const shift = (other: LawHistory): { levelS: number; rubOutS: number } | undefined => {
    const moved = runOf(law, other);
    const late = (name: 'level' | 'rubOut'): number =>
      bandOf(name, wanted, moved).likelyS - milestones[name].likelyS;
    const [levelS, rubOutS] = [late('level'), late('rubOut')];
    return Number.isNaN(levelS) || Number.isNaN(rubOutS) ? undefined : { levelS, rubOutS };
  };
  const oneMoreCoat = nextCoat && shift({ ...history, coats: [...history.coats, nextCoat] });
  return known<OfLaw>({
    milestones,
    curve: curveOf(law, history, { wanted, untaught }, run),
    profiles: layersOverTime(law, history, wanted, nowS),
    now: nowOf(law, history, { wanted, untaught }, run, nowS),
    ...(oneMoreCoat && { oneMoreCoat }),
    whatIf: whatIf.flatMap(({ name, history: other }) => {
      const moved = shift(other);
      return moved ? [{ name, ...moved }] : [];
    }),
    coldestK: history.coats.map(({ atS }) => airAt(history, atS).temperatureK),
    learned: [],
    law: {
      finish,
      learned: learnedFrom(evidence),
      ...(wanted.recoatUntil && { recoatUntil: bandOf('recoatUntil', wanted, run) }),
      lightUse: bandOf('lightUse', wanted, run),
      isScaledToSheet: history.sheet !== undefined,
      totalDryM: totalDryM(history),
      wasTooCold: wasTooCold(law, history, nowS),
    },
  });
}

function bandOf(moment: LawMoment, wanted: Thresholds, run: Progress): Band {
  const { low, typical, high } = wanted[moment] as Spread;
  const column = BY_DRYING.has(moment) ? run.dried : run.cured;
  const at = (value: number): number => reachedS(run, column, value);
  return { earliestS: at(low), likelyS: at(typical), lateS: at(high) };
}

const airAt = ({ air }: LawHistory, atS: number) => {
  const span = air.findLast(({ fromS }) => fromS <= atS) ?? air[0];
  if (!span) throw new RangeError('The history has no air.');
  return span;
};

function hardnessK(law: FinishLaw, left: number, cured: number, sandingK: number): number {
  return tgAtK(law, cured) - SOFTENING_K * left - sandingK;
}

/** How far a coat must have come as is believed now, and as the law has it for every product. */
interface HowFar {
  readonly wanted: Thresholds;
  readonly untaught: Thresholds;
}

function curveOf(law: FinishLaw, history: LawHistory, come: HowFar, run: Progress): Curve {
  const { wanted } = come;
  const { atS, volatileM } = newest(history);
  const endS = reachedS(run, run.cured, (wanted.settled as Spread).high);
  const reach = Number.isFinite(endS) ? endS - atS : (run.timeS.at(-1) as number) - atS;
  const timeS = growing(TOLD.fromS, reach, TOLD.ofCurve).map((after) => atS + after);
  const { fast, likely, slow } = paceOf(come);
  const held = (slower: number) =>
    timeS.map((s) => volatileM * leftAt(wanted, valueAt(run, run.dried, s) / slower));
  const hardness = (slower: { drying: number; cure: number }) =>
    timeS.map((s) =>
      hardnessK(
        law,
        leftAt(wanted, valueAt(run, run.dried, s) / slower.drying),
        Math.min(1, valueAt(run, run.cured, s) / slower.cure),
        history.sandingK,
      ),
    );
  return {
    timeS,
    heldM: held(1),
    heldLowM: held(fast.drying),
    heldHighM: held(slow.drying),
    hardnessK: hardness(likely),
    hardnessLowK: hardness(slow),
    hardnessHighK: hardness(fast),
  };
}

/** How much slower than the likely one the ends of the band dry, and how much slower than the untaught law each cures. */
function paceOf({ wanted, untaught }: HowFar) {
  const { recoat, level } = wanted as { recoat: Spread; level: Spread };
  const at = (end: keyof Spread) => ({
    drying: recoat[end] / recoat.typical,
    cure: level[end] / (untaught.level as Spread).typical,
  });
  return { fast: at('low'), likely: at('typical'), slow: at('high') };
}

function nowOf(
  law: FinishLaw,
  history: LawHistory,
  come: HowFar,
  run: Progress,
  nowS: number,
): RawEstimate['now'] {
  const { volatileM } = newest(history);
  const { likely } = paceOf(come);
  const left = leftAt(come.wanted, valueAt(run, run.dried, nowS));
  const cured = Math.min(1, valueAt(run, run.cured, nowS) / likely.cure);
  const dryM = totalDryM(history);
  const heldM = volatileM * left;
  return {
    heldM,
    dryM,
    stillToSink: dryM > 0 ? heldM / (heldM + dryM) : 0,
    hardnessK: hardnessK(law, left, cured, history.sandingK),
    filmK: airAt(history, nowS).temperatureK,
  };
}

/** Whether the newest coat stood too cold to form a film before it was dry. */
function wasTooCold({ formsFilmFromK, recoat }: FinishLaw, history: LawHistory, nowS: number): boolean {
  if (formsFilmFromK === undefined) return false;
  const { atS } = newest(history);
  const untilS = Math.min(nowS, atS + recoat.high);
  const { air } = history;
  return air.some(
    ({ fromS, temperatureK }, i) =>
      temperatureK < formsFilmFromK &&
      fromS < untilS &&
      (air[i + 1]?.fromS ?? Number.POSITIVE_INFINITY) > atS,
  );
}
