import type { Lab } from '../../science/colour/lab';
import {
  afterTrials,
  type Belief,
  expectedColour,
  firstBelief,
  type Trial as ReadTrial,
  tinterStrength,
} from '../../science/pigment/belief';
import { type Suggestion, suggestAddition } from '../../science/pigment/suggest';
import type { Form } from '../../science/pigment/weighing';
import type { Match, Trial } from '../fold/matches';
import { type Aim, aimFor, shiftOf, toleranceOf } from './aim';
import { contentOf } from './jar-content';
import { sidesOf, sideThatCounts } from './judge';
import { baseOf, type KnownTinter, type MatchModel, modelJar, modelOf } from './model';
import { isFirm, readSurface, setsUnder } from './surface';

/** What has to be there before anything can be said. */
export type Missing =
  | { readonly what: 'target' | 'firm-target' | 'white' | 'base-reading' | 'tinters' }
  | { readonly what: 'trial-reading'; readonly trial: string; readonly number: number }
  | { readonly what: 'tinter-unknown'; readonly ingredient: string };

/** What a tinter is now believed to be worth. */
export interface Strength {
  readonly ingredient: string;
  readonly from: KnownTinter['from'];
  /** Against what it was taken for at first. */
  readonly factor: number;
  readonly doubt: number;
}

export type Advice =
  | { readonly kind: 'missing'; readonly missing: Missing }
  | {
      readonly kind: 'advice';
      readonly suggestion: Suggestion;
      /** Ingredients in the order that the suggestion counts them. */
      readonly tinters: readonly string[];
      readonly strengths: readonly Strength[];
      readonly aim: Aim;
      /** What is expected of the jar as it is. */
      readonly expected: Lab;
      readonly trialsUsed: number;
      readonly isSpectral: boolean;
    };

/** The least that a reading may be off in each of L*, a* and b*. Judgement; as in the simulated finisher. */
const LEAST_READING_SD = 0.15;

const missing = (what: Missing): Advice => ({ kind: 'missing', missing: what });

/**
 * What to add next to the jar of a match, or what has to be read first.
 * @param all every match of the shop: the same base may have been drawn down for another
 */
export function advise(match: Match, all: readonly Match[]): Advice {
  const aim = aimFor(match, 'bare');
  if (!aim) return missing({ what: 'target' });
  if (!isFirm(aim.surface)) return missing({ what: 'firm-target' });
  const last = match.trials.at(-1);
  if (!last || contentOf(match).whiteGrams <= 0) return missing({ what: 'white' });
  if (!baseOf(match, all)) return missing({ what: 'base-reading' });
  const known = modelOf(match, all);
  if (!known) return missing({ what: 'tinters' });
  const stranger = strangerIn(match, known.tinters);
  if (stranger !== undefined) return missing({ what: 'tinter-unknown', ingredient: stranger });
  if (!readingOf(match, last)) return missing({ what: 'trial-reading', trial: last.id, number: last.number });
  return suggestFor(match, known, aim);
}

/** A tinter in the jar whose effect nobody knows. */
function strangerIn(match: Match, tinters: readonly KnownTinter[]): string | undefined {
  const names = new Set(tinters.map(({ ingredient }) => ingredient));
  return [...contentOf(match).tinterGrams.keys()].find((ingredient) => !names.has(ingredient));
}

/** The bare colour of a trial: read bare, or read under clear and the clear's shift taken off. */
function readingOf(match: Match, { readings }: Trial): { lab: Lab; sd: number } | undefined {
  const bare = readSurface(setsUnder(readings, 'bare'), match.white).surface;
  if (isFirm(bare)) return { lab: bare.lab, sd: Math.max(bare.uncertaintyE00, LEAST_READING_SD) };
  const clear = readSurface(setsUnder(readings, 'clear'), match.white).surface;
  const shift = shiftOf(match)?.shift;
  if (!isFirm(clear) || !shift) return undefined;
  const { L, a, b, white } = clear.lab;
  const lab = { white, L: L - shift.dL, a: a - shift.da, b: b - shift.db };
  return { lab, sd: Math.max(2 * clear.uncertaintyE00, LEAST_READING_SD) };
}

function believe(match: Match, { model, tinters, doubts }: MatchModel) {
  const trials = match.trials.flatMap((trial): ReadTrial[] => {
    const read = readingOf(match, trial);
    const jar = modelJar(match, tinters, trial.number);
    return read && jar.whiteGrams > 0 ? [{ jar, reading: read.lab, readingSd: read.sd }] : [];
  });
  return { belief: afterTrials(model, firstBelief(doubts), trials), trialsUsed: trials.length };
}

function suggestFor(match: Match, known: MatchModel, aim: Aim): Advice {
  const { model, tinters } = known;
  const { belief, trialsUsed } = believe(match, known);
  const jar = modelJar(match, tinters);
  const bench = {
    scaleDivisionG: match.division.si * 1000,
    forms: formsOf(match),
    roomGrams: roomIn(match),
  };
  const toleranceE00 = toleranceOf(match);
  const suggestion =
    passOf(match) ?? suggestAddition({ model, belief, jar, target: aim.surface.lab, toleranceE00, bench });
  return {
    kind: 'advice',
    suggestion,
    tinters: tinters.map(({ ingredient }) => ingredient),
    strengths: tinters.map(({ ingredient, from }, i) => ({ ingredient, from, ...strengthOf(belief, i) })),
    aim,
    expected: expectedColour(model, belief, jar),
    trialsUsed,
    isSpectral: known.isSpectral,
  };
}

/** What was measured to pass needs nothing, whatever the model expects. */
function passOf(match: Match): Suggestion | undefined {
  const last = match.trials.at(-1);
  const judged = last && sideThatCounts(match, sidesOf(match, last))?.judgement?.verdict;
  return judged?.kind === 'pass' ? { kind: 'stop', dE00: judged.dE00 } : undefined;
}

const strengthOf = (belief: Belief, tinter: number) => tinterStrength(belief, tinter);

/** In which forms a tinter can be weighed here. */
export const formsOf = ({ letDowns }: Pick<Match, 'letDowns'>): Form[] => ['neat', ...letDowns];

/** How much more the jar takes, in grams; as much again as it holds where that was not said. */
function roomIn(match: Match): number {
  const { totalGrams } = contentOf(match);
  return match.jarHolds ? Math.max(match.jarHolds.si * 1000 - totalGrams, 0) : totalGrams;
}
