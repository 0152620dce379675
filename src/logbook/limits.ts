import { UNITS, type Unit } from './unit';

/** What a quantity may be: its units, and the lowest and highest value in the first of them, both allowed. */
export interface Limit<Units extends readonly [Unit, ...Unit[]] = readonly [Unit, ...Unit[]]> {
  readonly lowest: number;
  readonly highest: number;
  readonly units: Units;
}

const limit = <const Units extends readonly [Unit, ...Unit[]]>(
  lowest: number,
  highest: number,
  ...units: Units
): Limit<Units> => ({ lowest, highest, units });

/** Wide enough for anything a shop does; narrow enough to catch a slipped finger or the wrong unit. */
export const LIMITS = {
  wetFilm: limit(1, 1000, 'um', 'mil'),
  dryFilm: limit(0.1, 500, 'um', 'mil'),
  oldFilm: limit(1, 2000, 'um', 'mil'),
  removed: limit(0.1, 500, 'um', 'mil'),
  area: limit(0.0001, 100, 'm2', 'cm2', 'ft2', 'in2'),
  temperature: limit(-20, 60, 'C', 'F'),
  humidity: limit(1, 100, '%'),
  altitude: limit(-430, 5000, 'm', 'ft'),
  volumeSolids: limit(0.1, 100, '%'),
  thinningOfLacquer: limit(0, 1000, '%'),
  thinningOfMix: limit(0, 95, '%'),
  retarderOfLacquer: limit(0, 100, '%'),
  retarderOfMix: limit(0, 50, '%'),
  pigmentOfSolids: limit(0, 60, '%'),
  flakeAspect: limit(1, 200, 'ratio'),
} as const;

/** Limits of what is counted rather than measured. */
export const COUNTS = {
  passes: { lowest: 1, highest: 50 },
  blendParts: { lowest: 1, highest: 20 },
  text: { lowest: 1, highest: 10_000 },
} as const;

/** The accepted range in one of the limit's units, rounded inwards to three figures for showing. */
export function rangeIn(limit: Limit, unit: Unit): { readonly lowest: number; readonly highest: number } {
  const [first] = limit.units;
  if (unit === first) return { lowest: limit.lowest, highest: limit.highest };
  const convert = (value: number): number => UNITS[unit].fromSi(UNITS[first].toSi(value));
  return {
    lowest: threeFigures(convert(limit.lowest), Math.ceil),
    highest: threeFigures(convert(limit.highest), Math.floor),
  };
}

// The noise of the conversion must not push a value that is three figures long to the next one.
function threeFigures(value: number, round: (value: number) => number): number {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 2);
  return Number((round(Number((value / step).toPrecision(12))) * step).toPrecision(3));
}
