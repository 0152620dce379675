import type { Match, ReadingSet } from '../../logbook/fold/piece/matches';
import { TOLERANCE_E00 } from '../../science/colour/verdict';
import { bareAim, type ClearShift, clearShift } from '../../science/pigment/clear-shift';
import { isFirm, type KnownSurface, readSurface, setsUnder, type Under } from './surface';

/** The largest deltaE00 that passes here. */
export const toleranceOf = ({ tolerance, place }: Pick<Match, 'tolerance' | 'place'>): number =>
  tolerance?.si ?? TOLERANCE_E00[place];

/** Readings of everything that goes by one name. */
export const setsOf = ({ readings }: Match, as: ReadingSet['of']['as']): ReadingSet[] =>
  readings.filter(({ of }) => of.as === as);

/** The target as it was read. */
export const targetOf = (match: Match) => readSurface(setsOf(match, 'target'), match.white);

/** What clear does to this colour, read on one surface with and without it. */
export interface ReadShift {
  readonly shift: ClearShift;
  readonly bare: KnownSurface;
  readonly clear: KnownSurface;
  readonly clearCoats: number;
  /** On a trial of this number, or on a card. */
  readonly on: number | 'card';
}

/** The newest shift that was read, of trials and cards alike; undefined before there is one. */
export function shiftOf(match: Match): ReadShift | undefined {
  const found = [
    shiftOn(setsOf(match, 'card'), match, 'card'),
    ...match.trials.map(({ readings, number }) => shiftOn(readings, match, number)),
  ].flatMap((one) => (one ? [one] : []));
  return found.sort((one, other) => one.clear.atMs - other.clear.atMs).at(-1);
}

function shiftOn(sets: readonly ReadingSet[], { white }: Match, on: ReadShift['on']): ReadShift | undefined {
  const under = setsUnder(sets, 'clear');
  const { surface: bare } = readSurface(setsUnder(sets, 'bare'), white);
  const { surface: clear } = readSurface(under, white);
  if (!isFirm(bare) || !isFirm(clear)) return undefined;
  return {
    shift: clearShift(clear.lab, bare.lab),
    bare,
    clear,
    clearCoats: under.at(-1)?.clearCoats ?? 1,
    on,
  };
}

/** What a surface is held against. */
export interface MatchAim {
  readonly surface: KnownSurface;
  /** `moved`: less the clear's shift. `unmoved`: the shift is still to be read. */
  readonly clear: 'none' | 'moved' | 'unmoved';
  /** How far b* of the aim lies below the target, for the yellowing to come. */
  readonly yellowing: number;
}

/** The aim for a surface read bare, or under clear; undefined before the target is read. */
export function aimFor(match: Match, under: Under): MatchAim | undefined {
  const target = targetOf(match).surface;
  if (!target) return undefined;
  const yellowing = match.yellowing?.si ?? 0;
  const lower = (surface: KnownSurface): KnownSurface =>
    yellowing === 0
      ? surface
      : { ...surface, lab: { ...surface.lab, b: surface.lab.b - yellowing }, spectrum: undefined };
  if (match.through === 'bare' || under === 'clear')
    return { surface: lower(target), clear: 'none', yellowing };
  const read = shiftOf(match);
  if (!read) return { surface: lower(target), clear: 'unmoved', yellowing };
  const uncertaintyE00 = Math.hypot(
    target.uncertaintyE00,
    read.bare.uncertaintyE00,
    read.clear.uncertaintyE00,
  );
  const moved = { ...target, lab: bareAim(target.lab, read.shift), uncertaintyE00, spectrum: undefined };
  return { surface: lower(moved), clear: 'moved', yellowing };
}
