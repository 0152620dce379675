import type { Match } from '../../logbook/fold/piece/matches';
import type { Lab } from '../../science/colour/lab';
import { expectedColour, tinterStrength } from '../../science/pigment/belief';
import { type Suggestion, suggestAddition } from '../../science/pigment/suggest';
import type { Form } from '../../science/pigment/weighing';
import { aimFor, type MatchAim, toleranceOf } from './aim';
import { believe, readingOf, strangerIn } from './believe';
import { matchJar } from './jar-content';
import { sidesOf, sideThatCounts } from './judge';
import { type EarlierTrial, type LotChanges, lessonsFor } from './lessons';
import { baseOf, type KnownTinter, type MatchModel, modelJar, modelOf } from './model';
import { isFirm } from './surface';

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
  /** Trials of other matches that taught it. */
  readonly earlier: readonly EarlierTrial[];
}

export type Advice =
  | { readonly kind: 'missing'; readonly missing: Missing }
  | {
      readonly kind: 'advice';
      readonly suggestion: Suggestion;
      /** Ingredients in the order that the suggestion counts them. */
      readonly tinters: readonly string[];
      readonly strengths: readonly Strength[];
      readonly aim: MatchAim;
      /** What is expected of the jar as it is. */
      readonly expected: Lab;
      readonly trialsUsed: number;
      readonly isSpectral: boolean;
    };

const missing = (what: Missing): Advice => ({ kind: 'missing', missing: what });

/**
 * What to add next to the jar of a match, or what has to be read first.
 * @param all every match of the shop: the same base may have been drawn down for another, the same tinters weighed out
 * @param lots when a tinter came from another lot
 */
export function advise(match: Match, all: readonly Match[], lots: LotChanges): Advice {
  const aim = aimFor(match, 'bare');
  if (!aim) return missing({ what: 'target' });
  if (!isFirm(aim.surface)) return missing({ what: 'firm-target' });
  const last = match.trials.at(-1);
  if (!last || matchJar(match).whiteGrams <= 0) return missing({ what: 'white' });
  if (!baseOf(match, all)) return missing({ what: 'base-reading' });
  const known = modelOf(match, all);
  if (!known) return missing({ what: 'tinters' });
  const stranger = strangerIn(match, known.tinters);
  if (stranger !== undefined) return missing({ what: 'tinter-unknown', ingredient: stranger });
  if (!readingOf(match, last)) return missing({ what: 'trial-reading', trial: last.id, number: last.number });
  return suggestFor(match, known, aim, lessonsFor(match, known.tinters, all, lots));
}

function suggestFor(
  match: Match,
  known: MatchModel,
  aim: MatchAim,
  lessons: ReturnType<typeof lessonsFor>,
): Advice {
  const { model, tinters } = known;
  const { belief, trials } = believe(match, known, lessons);
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
    strengths: tinters.map(({ ingredient, from }, i) => ({
      ingredient,
      from,
      ...tinterStrength(belief, i),
      earlier: lessons[i]?.trials ?? [],
    })),
    aim,
    expected: expectedColour(model, belief, jar),
    trialsUsed: trials.length,
    isSpectral: known.isSpectral,
  };
}

/** What was measured to pass needs nothing, whatever the model expects. */
function passOf(match: Match): Suggestion | undefined {
  const last = match.trials.at(-1);
  const judged = last && sideThatCounts(match, sidesOf(match, last))?.judgement?.verdict;
  return judged?.kind === 'pass' ? { kind: 'stop', dE00: judged.dE00 } : undefined;
}

/** In which forms a tinter can be weighed here. */
export const formsOf = ({ letDowns }: Pick<Match, 'letDowns'>): Form[] => ['neat', ...letDowns];

/** How much more the jar takes, in grams; as much again as it holds where that was not said. */
function roomIn(match: Match): number {
  const { totalGrams } = matchJar(match);
  return match.jarHolds ? Math.max(match.jarHolds.si * 1000 - totalGrams, 0) : totalGrams;
}
