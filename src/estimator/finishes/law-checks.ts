import type { FilmCheck } from '../estimate';
import type { FinishLaw, Spread } from './finish-law';
import {
  bandAfter,
  chancesOf,
  type Evidence,
  type LawBelief,
  type LawLearned,
  sharpened,
  timeAt,
  UNTAUGHT,
} from './law-belief';
import type { LawHistory } from './law-history';
import { type Progress, reachedS, valueAt } from './progress';
import { runOf } from './run-of-law';
import { BY_DRYING, type LawMoment, type MomentTimes, printedMoments } from './thresholds';

/** What each test asks for: a film that takes no print can be coated again, one that powders can be sanded (common practice, no source). */
const ASKS = { print: 'recoat', gum: 'level', smell: 'rubOut' } as const satisfies Record<
  FilmCheck['test'],
  LawMoment
>;
/** How sharply a test tells, as a logarithm of time: a thumb or a sheet of paper to a quarter, a nose hardly (judgement). */
const SHARPNESS = { print: 0.25, gum: 0.25, smell: 0.8 } as const;
/** Further out nothing more is told. */
const MOST_MARGIN = 30;

type ByColumn = { readonly [C in keyof LawBelief]: readonly Evidence[] };

/** What the checks of a piece say of its product, apart for drying and cure. */
export function evidenceOf(
  law: FinishLaw,
  history: LawHistory,
  atConditions: { readonly times: MomentTimes; readonly run: Progress },
  checks: readonly FilmCheck[],
): ByColumn {
  const ofColumn = (isByDrying: boolean): Evidence[] =>
    checks.flatMap(({ test, atS, passes }) => {
      const moment = ASKS[test];
      const asked = atConditions.times[moment];
      const coats = history.coats.filter((coat) => coat.atS <= atS);
      const last = coats.at(-1);
      if (BY_DRYING.has(moment) !== isByDrying || !asked || !last) return [];
      const sandings = history.sandings.filter((sanding) => sanding.atS <= atS);
      const run = runOf(law, { ...history, coats, sandings }, atS - last.atS + 1);
      const column = isByDrying ? 'dried' : 'cured';
      const reached = reachedS(atConditions.run, atConditions.run[column], valueAt(run, run[column], atS));
      return [{ passes, margin: (slow) => marginOf(reached, timeAt(asked, slow), SHARPNESS[test]) }];
    });
  return { drying: ofColumn(true), cure: ofColumn(false) };
}

const marginOf = (reachedS: number, askedS: number, sharpness: number): number =>
  Math.min(MOST_MARGIN, Math.max(-MOST_MARGIN, Math.log(reachedS / askedS) / sharpness));

/** What the checks of a piece say of its product, for the other pieces with it. */
export const learnedFrom = (evidence: ByColumn): LawLearned => ({
  drying: chancesOf(evidence.drying),
  cure: chancesOf(evidence.cure),
});

/**
 * The times of every moment, sharpened by the checks of this piece and of others with its product.
 *
 * What the product's own sheet prints, the sheet rules: checks may put it off and never bring it on, and the printed end of the
 * recoat window stays. Nor do checks ever put off the end that practice gives it.
 */
export function timesAfter(
  history: LawHistory,
  times: MomentTimes,
  evidence: ByColumn,
  taught: LawBelief = { drying: UNTAUGHT, cure: UNTAUGHT },
): MomentTimes {
  const drying = bandAfter(taught.drying, evidence.drying);
  const cure = bandAfter(taught.cure, evidence.cure);
  const printed = printedMoments(history.sheet);
  return Object.fromEntries(
    (Object.entries(times) as [LawMoment, Spread][]).map(([moment, usual]) => {
      const after = sharpened(usual, BY_DRYING.has(moment) ? drying : cure);
      if (moment === 'recoatUntil') return [moment, printed.has(moment) ? usual : noLater(after, usual)];
      return [moment, printed.has(moment) ? noEarlier(after, usual) : after];
    }),
  );
}

const noEarlier = (one: Spread, than: Spread): Spread => ({
  low: Math.max(one.low, than.low),
  typical: Math.max(one.typical, than.typical),
  high: Math.max(one.high, than.typical),
});
const noLater = (one: Spread, than: Spread): Spread => ({
  low: Math.min(one.low, than.low),
  typical: Math.min(one.typical, than.typical),
  high: Math.min(one.high, than.high),
});
