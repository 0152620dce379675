import type { ReadingSet } from '../../logbook/fold/piece/matches';
import { adaptLab } from '../../science/colour/bradford';
import type { Lab } from '../../science/colour/lab';
import { meanReading } from '../../science/colour/readings/readings';
import type { Spectrum } from '../../science/colour/spectrum';
import type { Judged } from '../../science/colour/verdict';
import type { White } from '../../science/colour/white-points';
import { labOf, meanSpectrum, type ReadingValue } from './lab-of';

/** What is known of one surface, from all its readings that count. */
export interface KnownSurface extends Judged {
  readonly spectrum: Spectrum | undefined;
  /** When it was last read. */
  readonly atMs: number;
}

/** Readings that are kept and do not count here. */
export interface LeftAside {
  readonly wet: number;
  readonly camera: number;
  /** Taken under another light, or without a colour under this one. */
  readonly otherLight: number;
}
export interface SurfaceRead {
  readonly surface: KnownSurface | undefined;
  readonly leftAside: LeftAside;
}

interface One {
  readonly lab: Lab;
  readonly value: ReadingValue;
  readonly isDry: boolean;
  readonly by: 'instrument' | 'camera';
  readonly atMs: number;
}

/** The best readings there are: dry before wet, instrument before camera; the two are never averaged together. */
const RANKS = [
  { isDry: true, by: 'instrument' },
  { isDry: true, by: 'camera' },
  { isDry: false, by: 'instrument' },
  { isDry: false, by: 'camera' },
] as const;

/** The mean of the readings of one surface under one light, and what was left out of it. */
export function readSurface(sets: readonly ReadingSet[], white: White): SurfaceRead {
  const all = sets.flatMap(({ readings, isDry, atMs, white: taken }) =>
    readings.map((value) => ({ lab: labUnder(value, taken, white), value, isDry, by: byOf(value), atMs })),
  );
  const ones = all.flatMap(({ lab, ...rest }): One[] => (lab?.white === white ? [{ lab, ...rest }] : []));
  const ranked = RANKS.map(({ isDry, by }) => ones.filter((one) => one.isDry === isDry && one.by === by));
  const chosen = ranked.find((some) => some.length > 0) ?? [];
  const isLeft = (one: One): boolean => !chosen.includes(one);
  return {
    surface: meanOf(chosen),
    leftAside: {
      wet: ones.filter((one) => isLeft(one) && !one.isDry).length,
      camera: ones.filter((one) => isLeft(one) && one.isDry && one.by === 'camera').length,
      otherLight: all.length - ones.length,
    },
  };
}

/** A photo ranks and never judges, so it may be carried over to another light; an instrument's reading may not. */
function labUnder(value: ReadingValue, taken: White, white: White): Lab | undefined {
  const lab = labOf(value, taken);
  return lab && value.as === 'photo' ? adaptLab(lab, white) : lab;
}

const byOf = ({ as }: ReadingValue): One['by'] => (as === 'photo' ? 'camera' : 'instrument');

function meanOf(ones: readonly One[]): KnownSurface | undefined {
  const [first] = ones;
  if (!first) return undefined;
  return {
    ...meanReading(ones.map(({ lab }) => lab)),
    isDry: first.isDry,
    by: first.by,
    spectrum: meanSpectrum(ones.map(({ value }) => value)),
    atMs: Math.max(...ones.map(({ atMs }) => atMs)),
  };
}

export type Under = 'bare' | 'clear';
const underOf = ({ clearCoats }: ReadingSet): Under => (clearCoats === undefined ? 'bare' : 'clear');

/** The readings taken bare, or those under clear. */
export const setsUnder = (sets: readonly ReadingSet[], under: Under): ReadingSet[] =>
  sets.filter((set) => underOf(set) === under);

/** Whether a surface can stand for a fact: dry, and read by an instrument. */
export const isFirm = (surface: KnownSurface | undefined): surface is KnownSurface =>
  surface?.isDry === true && surface.by === 'instrument';
