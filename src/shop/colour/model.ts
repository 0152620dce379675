import type { Match, ReadingSet } from '../../logbook/fold/piece/matches';
import type { Lab } from '../../science/colour/lab';
import { STRENGTH_DOUBT } from '../../science/pigment/belief';
import {
  type ColourModel,
  type JarContent,
  type LabTint,
  spectralModel,
  threeBandModel,
} from '../../science/pigment/colour-model';
import { LACQUER_SURFACE } from '../../science/pigment/saunderson';
import { USUAL_TINTERS } from '../../science/pigment/usual-tinters';
import { matchJar } from './jar-content';
import { isSpectral } from './lab-of';
import { isFirm, type KnownSurface, readSurface, setsUnder } from './surface';

/** One draw-down of the base with a share of a tinter. */
export interface ReadTint {
  readonly share: number;
  readonly surface: KnownSurface;
}

/** A tinter whose effect is known, and from where. */
export interface KnownTinter {
  readonly ingredient: string;
  readonly from: 'drawn-down' | 'usual';
  readonly tints: readonly ReadTint[];
}

export interface MatchModel {
  readonly model: ColourModel;
  /** In the model's order. */
  readonly tinters: readonly KnownTinter[];
  /** How unsure each strength is at first, a fraction. */
  readonly doubts: readonly number[];
  readonly isSpectral: boolean;
}

const bareAndFirm = (sets: readonly ReadingSet[], match: Match): KnownSurface | undefined => {
  const { surface } = readSurface(setsUnder(sets, 'bare'), match.white);
  return isFirm(surface) ? surface : undefined;
};

/** Matches whose readings can be used for this one: the same base, under the same light; this one first. */
const alike = (match: Match, all: readonly Match[]): Match[] => [
  match,
  ...all.filter(({ id, base, white }) => id !== match.id && base === match.base && white === match.white),
];

/** The untinted base as it was read dry, here or in another match with it. */
export function baseOf(match: Match, all: readonly Match[]): KnownSurface | undefined {
  for (const one of alike(match, all)) {
    const untinted = one.trials.filter(({ number }) => matchJar(one, number).tinterGrams.size === 0);
    const base = bareAndFirm(
      untinted.flatMap(({ readings }) => readings),
      one,
    );
    if (base) return base;
  }
  return undefined;
}

/** The draw-downs of one tinter in this base, a share at a time. */
export function tintsOf(tinter: string, match: Match, all: readonly Match[]): ReadTint[] {
  const byShare = new Map<number, ReadingSet[]>();
  for (const set of alike(match, all).flatMap(({ readings }) => readings)) {
    if (set.of.as !== 'tint' || set.of.tinter !== tinter) continue;
    byShare.set(set.of.share.si, [...(byShare.get(set.of.share.si) ?? []), set]);
  }
  return [...byShare].flatMap(([share, sets]) => {
    const surface = bareAndFirm(sets, match);
    return surface ? [{ share, surface }] : [];
  });
}

/** The tinters on the bench whose effect is known: drawn down, or said to be like a usual one. */
export function knownTinters(match: Match, all: readonly Match[]): KnownTinter[] {
  return match.tinters.flatMap(({ ingredient, like }): KnownTinter[] => {
    const tints = tintsOf(ingredient, match, all);
    if (tints.length > 0) return [{ ingredient, from: 'drawn-down', tints }];
    return like === undefined ? [] : [{ ingredient, from: 'usual', tints }];
  });
}

/** The model of this base and these tinters: wavelength by wavelength where spectra of all exist, else in three bands. */
export function modelOf(match: Match, all: readonly Match[]): MatchModel | undefined {
  const base = baseOf(match, all);
  const tinters = knownTinters(match, all);
  if (!base || tinters.length === 0) return undefined;
  const doubts = tinters.map(({ from }) => STRENGTH_DOUBT[from === 'usual' ? 'generic' : 'drawnDown']);
  const spectral = modelFromSpectra(base, tinters);
  if (spectral) return { model: spectral, tinters, doubts, isSpectral: true };
  const likes = new Map(match.tinters.map(({ ingredient, like }) => [ingredient, like]));
  const known = tinters.map(({ ingredient, tints }) => {
    const like = likes.get(ingredient);
    return tints.length === 0 && like ? USUAL_TINTERS[like] : tints.map(toLabTint);
  });
  return {
    model: threeBandModel<Lab['white']>(base.lab, known, LACQUER_SURFACE),
    tinters,
    doubts,
    isSpectral: false,
  };
}

const toLabTint = ({ share, surface }: ReadTint): LabTint => ({ share, lab: surface.lab });

function modelFromSpectra(base: KnownSurface, tinters: readonly KnownTinter[]): ColourModel | undefined {
  const { white } = base.lab;
  const { spectrum } = base;
  if (!spectrum || !isSpectral(white)) return undefined;
  const ladders = tinters.map(({ tints }) =>
    tints.flatMap(({ share, surface }) =>
      surface.spectrum?.reflectance.length === spectrum.reflectance.length &&
      surface.spectrum.startNm === spectrum.startNm
        ? [{ share, reflectance: surface.spectrum.reflectance }]
        : [],
    ),
  );
  return ladders.every((rungs) => rungs.length > 0)
    ? spectralModel(spectrum, ladders, LACQUER_SURFACE, white)
    : undefined;
}

/** The jar at a trial, as the model counts it. */
export function modelJar(match: Match, tinters: readonly KnownTinter[], upTo?: number): JarContent {
  const { whiteGrams, tinterGrams } = matchJar(match, upTo);
  return { whiteGrams, tinterGrams: tinters.map(({ ingredient }) => tinterGrams.get(ingredient) ?? 0) };
}
