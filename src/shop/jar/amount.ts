import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';
import { reweighed } from '../../science/mixing/evaporated';
import { solvent } from '../../science/solvents/solvents';
import { jarFilm } from './film';

/** What stays on the piece of what leaves the gun, where nobody has measured it (common practice, no source). */
const USUAL_TRANSFER = 0.35;
/** kg/m3, where neither label nor weigh-up says (common practice, no source). */
export const USUAL_DENSITY = { clear: 950, pigmented: 1150 } as const;
/** What a bench scale shows at the least (judgement, no source). */
const SEEN_KG = 1e-4;

/** What a jar holds now. */
export interface JarAmount {
  /** Undefined where it was never said and never weighed. */
  readonly leftM3: number | undefined;
  readonly densityKgM3: number;
  readonly isDensityUsual: boolean;
  /** Fraction of the volume; rises as solvent leaves. */
  readonly volumeSolids: number;
  /** Drawn by coats, as reckoned from area, wet film and transfer. */
  readonly laidM3: number;
  /** Coats on pieces whose area is not known. */
  readonly uncountedCoats: number;
  readonly evaporatedKg: number;
  /** To be left in the jar for repairs. */
  readonly keepBackM3: number;
  /** The last weighing said something that cannot be. */
  readonly doubt: 'heavier-than-expected' | 'lost-more-than-solvent' | undefined;
}

type Held = { -readonly [Key in keyof JarAmount]: JarAmount[Key] };
type Step = readonly [atMs: number, change: (held: Held) => void];

/**
 * What is left in a jar: what was filled in, less every coat, pour and what evaporated; a weighing sets it right.
 * @param untilMs what was done from this moment on is left out
 */
export function jarAmount(
  jar: Jar,
  { pieces }: Pick<Shop, 'pieces'>,
  untilMs = Number.POSITIVE_INFINITY,
): JarAmount {
  const film = jarFilm(jar);
  const filledM3 = jar.amount?.si;
  const held: Held = {
    leftM3: filledM3,
    densityKgM3: jarDensityKgM3(jar),
    isDensityUsual: jar.density === undefined,
    volumeSolids: film.volumeSolids,
    laidM3: 0,
    uncountedCoats: 0,
    evaporatedKg: 0,
    keepBackM3: (filledM3 ?? 0) * (jar.keepBack?.si ?? 0),
    doubt: undefined,
  };
  const solventKgM3 = film.solvents.reduce((sum, { id, share }) => sum + share * solvent(id).densityKgM3, 0);
  const steps: Step[] = [
    ...[...pieces.values()].flatMap((piece) => coatsOf(piece, jar)),
    ...jar.drawings.map(({ atMs, volumeM3 }): Step => [atMs, (now) => draw(now, volumeM3)]),
    ...jar.weighings.map(
      ({ atMs, mass, missing }): Step => [atMs, (now) => weigh(now, mass.si, missing, solventKgM3)],
    ),
  ];
  for (const [atMs, change] of steps.sort(([one], [other]) => one - other)) if (atMs < untilMs) change(held);
  return held;
}

/** Density of what was filled in, kg/m3: as said, or at common practice. */
const jarDensityKgM3 = ({ density, pigment }: Jar): number =>
  density?.si ?? (pigment ? USUAL_DENSITY.pigmented : USUAL_DENSITY.clear);

function draw(held: Held, volumeM3: number): void {
  if (held.leftM3 !== undefined) held.leftM3 = Math.max(0, held.leftM3 - volumeM3);
}

function coatsOf(piece: Piece, jar: Jar): Step[] {
  const own = piece.coats.filter((coat) => coat.jar === jar.id && coat.how !== 'flash');
  return own.map((coat) => [
    coat.atMs,
    (held) => {
      const volumeM3 = coatVolumeM3(coat, piece, held.volumeSolids);
      if (volumeM3 === undefined) held.uncountedCoats++;
      else {
        held.laidM3 += volumeM3;
        draw(held, volumeM3);
      }
    },
  ]);
}

/** What a coat takes out of its jar, m3; undefined where the area is not known. Left out: what stays in the gun. */
function coatVolumeM3(coat: Coat, { area }: Piece, volumeSolids: number): number | undefined {
  if (area === undefined || coat.how === 'brush-fill') return undefined;
  const wetM =
    coat.film.by === 'wet'
      ? coat.film.wetFilm.si
      : coat.film.by === 'passes'
        ? coat.film.passes * coat.film.perPass.si
        : coat.film.dryFilm.si / volumeSolids;
  return (area.si * wetM) / (coat.how === 'spray' ? USUAL_TRANSFER : 1);
}

function weigh(held: Held, massKg: number, missing: 'evaporated' | 'used', solventDensityKgM3: number): void {
  const { leftM3, densityKgM3, volumeSolids, evaporatedKg: lostKg } = held;
  held.doubt = undefined;
  held.leftM3 = massKg / densityKgM3;
  if (leftM3 === undefined || missing === 'used') return;
  const jar = { massKg: leftM3 * densityKgM3, densityKgM3, volumeSolids, solventDensityKgM3, lostKg };
  const read = reweighed(jar, massKg, SEEN_KG);
  if (!read.ok) {
    held.doubt = read.failure.kind;
    return;
  }
  held.densityKgM3 = read.value.densityKgM3;
  held.volumeSolids = read.value.volumeSolids;
  const goneKg = lostKg + read.value.lostKg;
  held.evaporatedKg = goneKg < SEEN_KG ? 0 : goneKg;
  held.leftM3 = massKg / read.value.densityKgM3;
}
