import { DAY_S } from '../../units';
import { type Band, type Estimate, type Milestone, type RawEstimate, settledLast } from '../estimate';
import { known } from '../known';
import type { SheetTimes } from './law-history';

/** By how much a product is slower than the model has it, for each milestone. */
export type SheetFactors = { readonly [M in Milestone]: number };

const ORDER = ['touch', 'recoat', 'level', 'rubOut', 'settled'] as const;

/**
 * How a product compares with the model, from its data sheet: the sheet's times over those of the model at the sheet's own
 * conditions. A milestone that the sheet does not name is moved as the nearest that it names.
 * @param atSheet the model's times after a single coat at those conditions, s
 */
export function sheetFactors(
  sheet: SheetTimes,
  atSheet: { readonly [M in Milestone]: number },
): SheetFactors {
  const said: { readonly [M in Milestone]?: number | undefined } = {
    touch: sheet.touchS,
    recoat: sheet.recoatFromS,
    level: sheet.sandS,
    rubOut: sheet.curedS,
  };
  const own = ORDER.map((name) => {
    const time = said[name];
    const ratio = time === undefined ? Number.NaN : time / atSheet[name];
    return Number.isFinite(ratio) && ratio > 0 ? ratio : undefined;
  });
  return Object.fromEntries(ORDER.map((name, index) => [name, nearest(own, index)])) as SheetFactors;
}

function nearest(factors: readonly (number | undefined)[], index: number): number {
  for (let away = 0; away < factors.length; away++) {
    const near = factors[index - away] ?? factors[index + away];
    if (near !== undefined) return near;
  }
  return 1;
}

/** An estimate moved to a data sheet: every time after the last coat by its milestone's factor, the curves by that of sanding. */
export function scaledToSheet(estimate: Estimate, lastCoatS: number, factors: SheetFactors): Estimate {
  const move = (timeS: number, by: number): number => lastCoatS + (timeS - lastCoatS) * by;
  const moved = (band: Band, by: number): Band => ({
    earliestS: move(band.earliestS, by),
    likelyS: move(band.likelyS, by),
    lateS: move(band.lateS, by),
  });
  return known({
    ...estimate,
    milestones: settledLast(
      Object.fromEntries(
        ORDER.map((name) => [name, moved(estimate.milestones[name], factors[name])]),
      ) as RawEstimate['milestones'],
    ),
    curve: { ...estimate.curve, timeS: estimate.curve.timeS.map((timeS) => move(timeS, factors.level)) },
  });
}

/** How long a padded film rests after its last session, days: it stays soft for longer than so thin a film holds solvent (common practice, no source). */
export const PADDED_REST_DAYS = { earliest: 7, likely: 14, late: 28 } as const;

/** An estimate of a padded film, which has rested so long at the least. */
export function rested(estimate: Estimate, lastCoatS: number): Estimate {
  const { milestones } = estimate;
  const after = ({ earliestS, likelyS, lateS }: Band): Band => ({
    earliestS: Math.max(earliestS, lastCoatS + PADDED_REST_DAYS.earliest * DAY_S),
    likelyS: Math.max(likelyS, lastCoatS + PADDED_REST_DAYS.likely * DAY_S),
    lateS: Math.max(lateS, lastCoatS + PADDED_REST_DAYS.late * DAY_S),
  });
  const { level, rubOut } = milestones;
  return known({
    ...estimate,
    milestones: settledLast({ ...milestones, level: after(level), rubOut: after(rubOut) }),
  });
}
