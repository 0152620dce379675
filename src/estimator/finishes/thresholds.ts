import { type FinishLaw, REFERENCE, type Spread } from './finish-law';
import type { SheetTimes } from './law-history';
import { LONGEST_S, type Progress, progress, valueAt } from './progress';

/** What is waited for, the end of the recoat window among it. */
const LAW_MOMENTS = ['touch', 'recoat', 'recoatUntil', 'level', 'rubOut', 'settled'] as const;
export type LawMoment = (typeof LAW_MOMENTS)[number];
/** Moments that come by drying; the others come by cure. */
export const BY_DRYING: ReadonlySet<LawMoment> = new Set(['touch', 'recoat']);

/** How far a coat must have come for each moment, with its band; of the law's columns. */
export type Thresholds = { readonly [M in LawMoment]?: Spread };

/** A sheet's time is a promise for a product, not a range for a kind: its band (judgement, no source). */
const SHEET_BAND = { low: 0.8, high: 1.3 };

/**
 * How far a coat must have come: where practice has it at its conditions, or where the product's own sheet has it at the
 * sheet's. Moments that a sheet does not name are moved as the nearest that it names.
 */
export function thresholds(law: FinishLaw, sheet?: SheetTimes): Thresholds {
  const usual = read(law, progressAt(law, REFERENCE), (moment) => law[moment]);
  if (!sheet) return usual;
  const times = sheetSpreads(law, sheet);
  return read(law, progressAt(law, sheet), (moment) => times[moment]);
}

const progressAt = (
  law: FinishLaw,
  { temperatureK, relativeHumidity }: Pick<SheetTimes, 'temperatureK' | 'relativeHumidity'>,
) => progress(law, [{ fromS: 0, temperatureK, relativeHumidity }], 0, undefined, LONGEST_S);

function read(
  law: FinishLaw,
  run: Progress,
  spreadOf: (moment: LawMoment) => Spread | undefined,
): Thresholds {
  const entries = LAW_MOMENTS.flatMap((moment) => {
    const times = law[moment] && spreadOf(moment);
    if (!times) return [];
    const column = BY_DRYING.has(moment) ? run.dried : run.cured;
    const at = (s: number): number => valueAt(run, column, s);
    return [[moment, { low: at(times.low), typical: at(times.typical), high: at(times.high) }]];
  });
  return Object.fromEntries(entries) as Thresholds;
}

/** Times of every moment at the sheet's conditions, s: the sheet's own, or those of the law moved as much as their neighbour. */
function sheetSpreads(law: FinishLaw, sheet: SheetTimes): { readonly [M in LawMoment]?: Spread } {
  const given: { readonly [M in LawMoment]?: number | undefined } = {
    touch: sheet.touchS,
    recoat: sheet.recoatFromS,
    recoatUntil: sheet.recoatUntilS,
    level: sheet.sandS,
    settled: sheet.curedS,
  };
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
