import { LONGEST_S } from '../read-off';
import { USUAL_SHOP } from '../usual-shop';
import type { FinishLaw, Spread } from './finish-law';
import type { SheetTimes } from './law-history';
import { type Progress, progress, valueAt } from './progress';
import { stretchOfCoat } from './run-of-law';

/** What is waited for, the end of the recoat window and light use among it. */
const LAW_MOMENTS = ['touch', 'recoat', 'recoatUntil', 'level', 'rubOut', 'settled', 'lightUse'] as const;
export type LawMoment = (typeof LAW_MOMENTS)[number];
/** Moments that come by drying; the others come by cure. */
export const BY_DRYING: ReadonlySet<LawMoment> = new Set(['touch', 'recoat']);

/** How far a coat must have come for each moment, with its band; of the law's columns. */
export type Thresholds = { readonly [M in LawMoment]?: Spread };
/** Times of every moment that a law has, at the conditions that they are given for, s. */
export type MomentTimes = { readonly [M in LawMoment]?: Spread };

/** A sheet's time is a promise for a product, not a range for a kind: its band (judgement, no source). */
const SHEET_BAND = { low: 0.8, high: 1.3 };

/** Times of every moment as practice has them, or as the product's own sheet has them: the two at their own conditions. */
export function momentTimes(law: FinishLaw, sheet?: SheetTimes): MomentTimes {
  const times = sheet ? sheetSpreads(law, sheet) : law;
  return Object.fromEntries(
    LAW_MOMENTS.flatMap((moment) => (law[moment] && times[moment] ? [[moment, times[moment]]] : [])),
  );
}

/** How a coat comes on at the conditions, and of the film, that the times are given for. */
export function runAtConditions(law: FinishLaw, sheet?: SheetTimes): Progress {
  const { temperatureK, relativeHumidity } = sheet ?? USUAL_SHOP;
  const stretch = sheet?.filmDryM === undefined ? undefined : stretchOfCoat(law, sheet.filmDryM);
  return progress(law, [{ fromS: 0, temperatureK, relativeHumidity }], 0, stretch, LONGEST_S);
}

/**
 * How far a coat must have come: where practice has it at its conditions, or where the product's own sheet has it at the
 * sheet's. Moments that a sheet does not name are moved as the nearest that it names.
 * @param run how a coat comes on at those conditions
 */
export function thresholds(run: Progress, times: MomentTimes): Thresholds {
  return Object.fromEntries(
    (Object.entries(times) as [LawMoment, Spread][]).map(([moment, { low, typical, high }]) => {
      const column = BY_DRYING.has(moment) ? run.dried : run.cured;
      const at = (s: number): number => valueAt(run, column, s);
      return [moment, { low: at(low), typical: at(typical), high: at(high) }];
    }),
  );
}

/** Times of every moment at the sheet's conditions, s: the sheet's own, or those of the law moved as much as their neighbour. */
function sheetSpreads(law: FinishLaw, sheet: SheetTimes): MomentTimes {
  const given = printed(sheet);
  const factors = LAW_MOMENTS.map((moment) => {
    const said = given[moment];
    return said === undefined ? undefined : said / (law[moment]?.typical ?? said);
  });
  return Object.fromEntries(
    LAW_MOMENTS.map((moment, index) => {
      const said = given[moment];
      const usual = law[moment];
      const exact = said && { low: said * SHEET_BAND.low, typical: said, high: said * SHEET_BAND.high };
      return [moment, exact ?? (usual && scaled(usual, nearest(factors, index)))];
    }),
  );
}

const printed = (sheet: SheetTimes): { readonly [M in LawMoment]?: number | undefined } => ({
  touch: sheet.touchS,
  recoat: sheet.recoatFromS,
  recoatUntil: sheet.recoatUntilS,
  level: sheet.sandS,
  settled: sheet.curedS,
});

/** The moments that a sheet prints itself. */
export function printedMoments(sheet: SheetTimes | undefined): ReadonlySet<LawMoment> {
  const given = sheet ? printed(sheet) : {};
  return new Set(LAW_MOMENTS.filter((moment) => given[moment] !== undefined));
}

function nearest(factors: readonly (number | undefined)[], index: number): number {
  for (let away = 0; away < factors.length; away++) {
    const near = factors[index - away] ?? factors[index + away];
    if (near !== undefined) return near;
  }
  return 1;
}

const scaled = ({ low, typical, high }: Spread, by: number): Spread => ({
  low: low * by,
  typical: typical * by,
  high: high * by,
});
