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
  zoneSide: limit(0.1, 10_000, 'mm', 'cm', 'in'),
  zoneDepth: limit(0.01, 20, 'mm', 'in'),
  zoneArea: limit(0.1, 10_000_000, 'mm2', 'cm2', 'in2'),
  removed: limit(0.1, 500, 'um', 'mil'),
  area: limit(0.0001, 100, 'm2', 'cm2', 'ft2', 'in2'),
  temperature: limit(-20, 60, 'C', 'F'),
  humidity: limit(1, 100, '%'),
  humidityCorrection: limit(-30, 30, '%'),
  altitude: limit(-430, 5000, 'm', 'ft'),
  volumeSolids: limit(0.1, 100, '%'),
  thinningOfLacquer: limit(0, 1000, '%'),
  thinningOfMix: limit(0, 95, '%'),
  retarderOfLacquer: limit(0, 100, '%'),
  retarderOfMix: limit(0, 50, '%'),
  pigmentOfSolids: limit(0, 60, '%'),
  flakeAspect: limit(1, 200, 'ratio'),
  roomVolume: limit(1, 100_000, 'm3', 'ft3'),
  airFlow: limit(1, 500_000, 'm3/h', 'cfm'),
  mixingFactor: limit(1, 10, 'ratio'),
  explosiveLimit: limit(0.1, 30, '%'),
  sprayTime: limit(0.5, 720, 'min', 'h'),
  wearTime: limit(0.1, 1000, 'h'),
  openTime: limit(0.5, 730, 'd'),
  dwell: limit(1, 3600, 's', 'min'),
  sheetTime: limit(0.5, 100_000, 'min', 'h', 'd'),
  totalFilm: limit(10, 1000, 'um', 'mil'),
  volume: limit(0.05, 100_000, 'mL', 'L', 'fl-oz-us', 'fl-oz-imperial'),
  mass: limit(0.0001, 200_000, 'g'),
  gunHoldUp: limit(0, 500, 'mL', 'fl-oz-us'),
  spreadingRate: limit(0.5, 60, 'm2/L', 'ft2/gal'),
  cut: limit(20, 600, 'g/L', 'lb-cut'),
  density: limit(0.5, 5, 'g/mL', 'lb/gal'),
  dropMass: limit(0.001, 1, 'g'),
  dropVolume: limit(0.002, 1, 'mL'),
  solids: limit(0, 100, '%'),
  pigment: limit(0, 95, '%'),
  critical: limit(10, 95, '%'),
  life: limit(0.1, 100_000, 'h', 'd', 'months'),
  keepBack: limit(0, 90, '%'),
  division: limit(0.0001, 100, 'g'),
  lightness: limit(0, 100, 'ratio'),
  opponent: limit(-128, 128, 'ratio'),
  tristimulus: limit(0, 125, 'ratio'),
  luminance: limit(0, 100, 'ratio'),
  tolerance: limit(0.1, 5, 'ratio'),
  yellowing: limit(0, 5, 'ratio'),
  tintShare: limit(0.01, 90, '%'),
  reflectance: limit(2, 99, '%'),
} as const;

/** Limits of what is counted rather than measured. */
export const COUNTS = {
  passes: { lowest: 1, highest: 50 },
  outline: { lowest: 3, highest: 300 },
  pixels: { lowest: 1, highest: 20_000 },
  tracerNm: { lowest: 200, highest: 420 },
  blendParts: { lowest: 1, highest: 20 },
  text: { lowest: 1, highest: 10_000 },
  /** Letters of a reason given in writing. */
  reason: { lowest: 10, highest: 10_000 },
  layers: { lowest: 1, highest: 20 },
  year: { lowest: 1400, highest: 2100 },
  recipeLines: { lowest: 1, highest: 40 },
  coats: { lowest: 1, highest: 100 },
  tinters: { lowest: 0, highest: 12 },
  readings: { lowest: 1, highest: 100 },
  planMinutes: { lowest: 0, highest: 1_051_200 },
  coatsADay: { lowest: 1, highest: 24 },
  planSteps: { lowest: 0, highest: 200 },
  tries: { lowest: 1, highest: 100 },
  bands: { lowest: 2, highest: 500 },
} as const;

/** The accepted range in one of the limit's units, rounded inwards to three figures for showing. */
export function rangeIn(limit: Limit, unit: Unit): { readonly lowest: number; readonly highest: number } {
  const convert = (value: number): number => UNITS[unit].fromSi(UNITS[limit.units[0]].toSi(value));
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
