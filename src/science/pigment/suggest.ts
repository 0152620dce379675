import { assertWithin } from '../assert-within';
import { colourDifference, deltaE00 } from '../colour/delta-e-00';
import type { Lab } from '../colour/lab';
import { type PainterRemark, paintersWords } from '../colour/painters-words';
import type { White } from '../colour/white-points';
import { type Belief, believedModel, colourVariance } from './belief';
import { type ColourModel, type JarContent, mixColour } from './colour-model';
import { type Addition, added, nearestAddition } from './nearest-addition';
import { type Form, toWeigh, type Weighed } from './weighing';

/** What stands on the bench: how fine the scale is, which let-downs are made up, how much the jar can still take. */
export interface Bench {
  readonly scaleDivisionG: number;
  readonly forms: readonly Form[];
  readonly roomGrams: number;
}

/** One thing to weigh into the jar: a tinter (its place in the model) or white base. */
export interface ToAdd extends Weighed {
  readonly what: number | 'white';
}

/** An amount of a tinter that the scale cannot show. */
export interface TooLittle {
  readonly tinter: number;
  readonly neatGrams: number;
}

export type Suggestion<W extends White = White> =
  /** Within the tolerance as far as the readings can tell, or outside it with nothing to gain by adding. */
  | { readonly kind: 'stop' | 'as-near-as-it-gets'; readonly dE00: number }
  | {
      readonly kind: 'add';
      readonly additions: readonly ToAdd[];
      readonly predicted: Lab<W>;
      readonly dE00: number;
      readonly uncertaintyE00: number;
      /** A tinter that belongs to it and that the scale cannot show: without it the colour stays off. */
      readonly leftOut?: TooLittle;
    }
  /** No addition reaches it: how near it gets, and what is left there ("too green" asks for a redder tinter). */
  | {
      readonly kind: 'out-of-reach';
      readonly nearest: Lab<W>;
      readonly dE00: number;
      readonly left: readonly PainterRemark[];
      /** The jar would need this much more room for the white. */
      readonly missingRoomGrams: number;
    }
  /** It is reached on paper, but not with this scale and these let-downs: make one up. */
  | ({ readonly kind: 'too-little-to-weigh' } & TooLittle);

export interface Aim<W extends White = White> {
  readonly model: ColourModel<W>;
  readonly belief: Belief;
  readonly jar: JarContent;
  readonly target: Lab<W>;
  readonly toleranceE00: number;
  readonly bench: Bench;
}

// A plan aims well inside the tolerance, as the film it makes will be read with noise (see the simulated finisher).
const AIM_SHARE = 0.4;
/** Three tinters can move lightness, red and yellow at will. */
const MOST_TINTERS = 3;
/** How many standard deviations of its own doubt a plan stays short of the target: too much costs white (judgement, tried on the simulated finisher). */
const CAUTION = 0.8;

/** Standard deviations of doubt that a colour must lie inside the tolerance to stop, and outside it to be out of reach (judgement, as above). */
const [LIKELY, SURELY] = [1.5, 2];
/** A gain in deltaE00 that no eye and no instrument would notice (judgement, no source). */
const NO_GAIN_E00 = 0.05;

/** An addition with where it leads, as far as is believed. */
interface Plan {
  readonly addition: Addition;
  readonly dE00: number;
  readonly grams: number;
}

const NO_PLAN: Plan = {
  addition: { tinterGrams: [], whiteGrams: 0 },
  dE00: Number.POSITIVE_INFINITY,
  grams: 0,
};

/**
 * The next addition to a jar: the smallest that reaches the tolerance with what is believed now.
 *
 * Additions only: white is the one way back and is used only when no tinter leads there. Amounts are whole divisions of
 * the scale, in let-downs where neat tinter is too little to weigh. While strengths are unsure, less is added than would
 * hit the target, as too much costs white.
 * Source: {@link nearestAddition} over all sets of up to three tinters. Valid: opaque, dry readings under one light.
 * Accuracy: within 0.7 deltaE00 in four trials in 95 of 100 cases (simulated finisher in tests).
 * Throws a RangeError when target and model are under different whites, or the jar holds no white.
 */
export function suggestAddition<W extends White>(aim: Aim<W>): Suggestion<W> {
  const { model, belief, jar, target, toleranceE00, bench } = aim;
  assertWithin('White base in the jar', jar.whiteGrams, 1e-3, 1e6, 'g');
  const believed = believedModel(model, belief.mean);
  const now = deltaE00<White>(mixColour(believed, jar), target);
  if (now + LIKELY * doubtE00(aim, jar) <= toleranceE00) return { kind: 'stop', dE00: now };
  const best = bestPlan(aim, believed);
  const isTooMuch = best.grams > bench.roomGrams;
  if (isTooMuch || best.dE00 - SURELY * doubtE00(aim, added(jar, best.addition)) > toleranceE00)
    return outOfReach(aim, believed, best);
  const asItIs = { kind: now <= toleranceE00 ? 'stop' : 'as-near-as-it-gets', dE00: now } as const;
  if (best.dE00 > now - NO_GAIN_E00) return asItIs;
  const cautious = shortened(aim, believed, best);
  const additions = toScale(cautious, best.addition, bench);
  const leftOut = tooLittle(cautious, additions);
  const offBy = (addition: Addition): number =>
    deltaE00<White>(mixColour(believed, added(jar, addition)), target);
  const pour = poured(additions, model.tinters.length);
  const dE00 = offBy(pour);
  if (dE00 > now - NO_GAIN_E00) return leftOut ? { kind: 'too-little-to-weigh', ...leftOut } : asItIs;
  const after = added(jar, pour);
  return {
    kind: 'add',
    additions,
    predicted: mixColour(believed, after),
    dE00,
    uncertaintyE00: doubtE00(aim, after),
    ...(leftOut && dE00 > offBy(cautious) + NO_GAIN_E00 && { leftOut }),
  };
}

/** The smallest plan that comes well inside the tolerance, white left out while it can be; else the nearest. */
function bestPlan(aim: Aim, believed: ColourModel): Plan {
  const sets = tinterSets(aim.model.tinters.length);
  const plansOf = (withWhite: boolean): Plan[] =>
    sets.map((tinters) => {
      const addition = nearestAddition(believed, aim.jar, aim.target, tinters, withWhite);
      const dE00 = deltaE00<White>(mixColour(believed, added(aim.jar, addition)), aim.target);
      return {
        addition,
        dE00,
        grams: addition.whiteGrams + addition.tinterGrams.reduce((sum, g) => sum + g, 0),
      };
    });
  const hasRoom = ({ grams }: Plan): boolean => grams <= aim.bench.roomGrams;
  const isInside = (plan: Plan): boolean => plan.dE00 <= AIM_SHARE * aim.toleranceE00 && hasRoom(plan);
  const withoutWhite = plansOf(false);
  const plans = withoutWhite.some(isInside) ? withoutWhite : [...withoutWhite, ...plansOf(true)];
  const inside = plans.filter(isInside);
  if (inside.length > 0) return inside.reduce((best, plan) => (plan.grams < best.grams ? plan : best));
  const nearer = (best: Plan, plan: Plan): Plan => (plan.dE00 < best.dE00 ? plan : best);
  const roomy = plans.filter(hasRoom).reduce(nearer, NO_PLAN);
  return roomy.dE00 <= aim.toleranceE00 ? roomy : plans.reduce(nearer, roomy);
}

/** Every set of one to three tinters, and the empty one (white alone). */
function tinterSets(count: number): number[][] {
  let sets: number[][] = [[]];
  for (let tinter = 0; tinter < count; tinter++) {
    sets = [...sets, ...sets.filter((set) => set.length < MOST_TINTERS).map((set) => [...set, tinter])];
  }
  return sets;
}

/** How unsure the believed colour of a jar is: one standard deviation in a direction, in deltaE00. */
function doubtE00({ model, belief, target }: Aim, jar: JarContent): number {
  const variances = colourVariance(model, belief, jar);
  const parts = ['L', 'a', 'b'] as const;
  const sum = parts.reduce((total, part, i) => {
    const perUnit = deltaE00<White>({ ...target, [part]: target[part] + 0.5 }, target) / 0.5;
    return total + (variances[i] ?? 0) * perUnit ** 2;
  }, 0);
  return Math.sqrt(sum / 3);
}

/** The plan, cut by its doubt against the way it goes. */
function shortened(aim: Aim, believed: ColourModel, { addition }: Plan): Addition {
  const after = added(aim.jar, addition);
  const way = deltaE00<White>(mixColour(believed, after), mixColour(believed, aim.jar));
  const share = Math.max(1 - (CAUTION * doubtE00(aim, after)) / Math.max(way, 1e-6), 0.5);
  return {
    tinterGrams: addition.tinterGrams.map((grams) => grams * share),
    whiteGrams: addition.whiteGrams * share,
  };
}

/** What to put on the scale for an addition, never more than the whole plan; what is too little to weigh is left out. */
function toScale({ tinterGrams, whiteGrams }: Addition, whole: Addition, bench: Bench): ToAdd[] {
  const { scaleDivisionG, forms } = bench;
  const white = toWeigh(whiteGrams, scaleDivisionG, ['neat'], whole.whiteGrams);
  const tinters = tinterGrams.flatMap((neatGrams, what) => {
    const weighed = toWeigh(neatGrams, scaleDivisionG, forms, whole.tinterGrams[what]);
    return weighed ? [{ what, ...weighed }] : [];
  });
  return white ? [{ what: 'white', ...white }, ...tinters] : tinters;
}

/** The neat amounts in what was put on the scale, to be stirred in with `added`. */
export function poured(additions: readonly ToAdd[], tinters: number): Addition {
  const neat = (wanted: number | 'white'): number =>
    additions.reduce((sum, { what, neatGrams }) => (what === wanted ? sum + neatGrams : sum), 0);
  return { tinterGrams: Array.from({ length: tinters }, (_, t) => neat(t)), whiteGrams: neat('white') };
}

function outOfReach<W extends White>(aim: Aim<W>, believed: ColourModel<W>, best: Plan): Suggestion<W> {
  const nearest = mixColour(believed, added(aim.jar, best.addition));
  const left = paintersWords(colourDifference<White>(nearest, aim.target));
  const missingRoomGrams = Math.max(best.grams - aim.bench.roomGrams, 0);
  return { kind: 'out-of-reach', nearest, dE00: best.dE00, left, missingRoomGrams };
}

/** The most that is left out of what was to be added; undefined of white alone, which no let-down makes easier to weigh. */
function tooLittle({ tinterGrams }: Addition, weighed: readonly ToAdd[]): TooLittle | undefined {
  const missing = tinterGrams.map((grams, t) => (weighed.some(({ what }) => what === t) ? 0 : grams));
  const neatGrams = Math.max(0, ...missing);
  return neatGrams > 0 ? { tinter: missing.indexOf(neatGrams), neatGrams } : undefined;
}
