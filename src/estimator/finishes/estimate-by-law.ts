import { type Band, type Curve, type Estimate, MILESTONES } from '../estimate';
import { type CuringFinish, FINISH_LAWS, type FinishLaw, type Spread } from './finish-law';
import type { LawCoat, LawEstimate, LawHistory, LawRequest } from './law-history';
import { growing, layersOverTime, leftAt } from './layers';
import { type Progress, progress, reachedS, type Stretch, valueAt } from './progress';
import { tgAtK } from './rates';
import { BY_DRYING, type LawMoment, type Thresholds, thresholds } from './thresholds';

/** Softening by what is left of the volatiles, K (judgement, no source). */
const SOFTENING_K = 60;
const CURVE_POINTS = 48;
const FIRST_POINT_S = 30;
const MOST_STRETCH = 4;
/** Not sharpened by checks: these laws have no diffusivity to learn. */
const NOTHING_LEARNED = { mean: 0, spread: Math.log(2.5) / 1.2816 };

/**
 * Everything that the screens say of a stack that dries by water or cures: milestones with their band, curves, layers.
 *
 * The newest coat decides; the coats below have come further. Thick coats dry slower in proportion; where solvent or water
 * leaves through the stack, hardening slows with a power of the whole film.
 * @throws RangeError where the history has no coat
 */
export function estimateByLaw(finish: CuringFinish, request: LawRequest): LawEstimate {
  const { history, nowS, nextCoat, whatIf = [] } = request;
  const law = FINISH_LAWS[finish];
  const wanted = thresholds(law, history.sheet);
  const run = runOf(law, history);
  const milestones = Object.fromEntries(
    MILESTONES.map((name) => [name, bandOf(name, wanted, run)]),
  ) as Estimate['milestones'];
  const shift = (other: LawHistory): { levelS: number; rubOutS: number } => {
    const moved = runOf(law, other);
    const late = (name: 'level' | 'rubOut'): number =>
      bandOf(name, wanted, moved).likelyS - milestones[name].likelyS;
    return { levelS: late('level'), rubOutS: late('rubOut') };
  };
  return {
    milestones,
    curve: curveOf(law, history, wanted, run),
    profiles: layersOverTime(law, history, wanted, nowS),
    now: nowOf(law, history, wanted, run, nowS),
    ...(nextCoat && { oneMoreCoat: shift({ ...history, coats: [...history.coats, nextCoat] }) }),
    whatIf: whatIf.map(({ name, history: other }) => ({ name, ...shift(other) })),
    coldestK: history.coats.map(({ atS }) => airAt(history, atS).temperatureK),
    learned: NOTHING_LEARNED,
    law: {
      finish,
      ...(wanted.recoatUntil && { recoatUntil: bandOf('recoatUntil', wanted, run) }),
      isScaledToSheet: history.sheet !== undefined,
      totalDryM: totalDryM(history),
      wasTooCold: wasTooCold(law, history, nowS),
    },
  };
}

function newest({ coats }: LawHistory): LawCoat {
  const coat = coats.at(-1);
  if (!coat) throw new RangeError('The history has no coat.');
  return coat;
}

/** Dry film of all coats less what was sanded away, m. */
export function totalDryM({ coats, sandings }: Pick<LawHistory, 'coats' | 'sandings'>): number {
  const laid = coats.reduce((sum, { dryM }) => sum + dryM, 0);
  return Math.max(0, laid - sandings.reduce((sum, { removedM }) => sum + removedM, 0));
}

function runOf(law: FinishLaw, history: LawHistory): Progress {
  return progress(law, history.air, newest(history).atS, stretchOf(law, history));
}

function stretchOf(law: FinishLaw, history: LawHistory): Stretch {
  const within = (factor: number): number => Math.min(MOST_STRETCH, Math.max(1 / MOST_STRETCH, factor));
  const build = Math.max(1, totalDryM(history) / law.usualTotalM);
  return { drying: within(newest(history).dryM / law.usualDryM), cure: within(build ** law.buildPower) };
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

function curveOf(law: FinishLaw, history: LawHistory, wanted: Thresholds, run: Progress): Curve {
  const { atS, volatileM } = newest(history);
  const endS = reachedS(run, run.cured, (wanted.settled as Spread).high);
  const reach = Number.isFinite(endS) ? endS - atS : (run.timeS.at(-1) as number) - atS;
  const timeS = growing(FIRST_POINT_S, reach, CURVE_POINTS).map((after) => atS + after);
  const bands = bandsOf(wanted);
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
    heldLowM: held(bands.fast.drying),
    heldHighM: held(bands.slow.drying),
    hardnessK: hardness({ drying: 1, cure: 1 }),
    hardnessLowK: hardness(bands.slow),
    hardnessHighK: hardness(bands.fast),
  };
}

/** How much slower and faster the band's ends run than the likely one. */
function bandsOf(wanted: Thresholds) {
  const { recoat, level } = wanted as { recoat: Spread; level: Spread };
  const at = (end: 'low' | 'high') => ({
    drying: recoat[end] / recoat.typical,
    cure: level[end] / level.typical,
  });
  return { fast: at('low'), slow: at('high') };
}

function nowOf(
  law: FinishLaw,
  history: LawHistory,
  wanted: Thresholds,
  run: Progress,
  nowS: number,
): Estimate['now'] {
  const { volatileM } = newest(history);
  const left = leftAt(wanted, valueAt(run, run.dried, nowS));
  const dryM = totalDryM(history);
  const heldM = volatileM * left;
  return {
    heldM,
    dryM,
    stillToSink: dryM > 0 ? heldM / (heldM + dryM) : 0,
    hardnessK: hardnessK(law, left, valueAt(run, run.cured, nowS), history.sandingK),
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
