import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';
import { type JarFilm, jarFilm } from '../jar/film';
import { jarFilmAt } from '../jar/film-at';
import { leavesNoLacquer } from '../jar/volumes-in-mix';
import { dryFilmM } from './stack-events';

/** What is left of a coat after every sanding so far. */
export interface LayerLeft {
  readonly coat: Coat;
  readonly leftM: number;
  /** Pigment or dye in it: sanding into it shows. */
  readonly isColour: boolean;
}

/** The coats of a piece from the wood up, each with the dry film that sanding has left of it; a flash coat leaves none. */
export function layersLeft(
  { coats, sandings }: Piece,
  shop: Pick<Shop, 'jars' | 'pieces'>,
): readonly LayerLeft[] {
  const layers: { coat: Coat; leftM: number; isColour: boolean }[] = [];
  const lines = [...coats, ...sandings].sort(
    (one, other) => one.atMs - other.atMs || (one.id < other.id ? -1 : 1),
  );
  for (const line of lines) {
    if (line.kind === 'sanded') takeOff(layers, line.removed.si, line.isUsual === true);
    else if (line.how !== 'flash') {
      const jar = shop.jars.get(line.jar);
      if (jar && !leavesNoLacquer(jar.retarder ? [jar.thinning, jar.retarder] : [jar.thinning]))
        layers.push({
          coat: line,
          leftM: dryFilmM(line, filmAt(jar, line.atMs, shop)),
          isColour: jar.pigment !== undefined,
        });
    }
  }
  return layers;
}

const films = new WeakMap<Jar, JarFilm>();

/** The film of a jar at a moment; of a jar that lost no solvent it is always the same, and worked out once. */
function filmAt(jar: Jar, atMs: number, shop: Pick<Shop, 'pieces'>): JarFilm {
  if (jar.weighings.length > 0) return jarFilmAt(jar, atMs, shop);
  const film = films.get(jar) ?? jarFilm(jar);
  films.set(jar, film);
  return film;
}

/** What is usual is no measure: it never takes the last of a film, m. */
const LEAST_LEFT_M = 1e-6;

function takeOff(layers: { leftM: number }[], removedM: number, isUsual: boolean): void {
  const whole = layers.reduce((sum, { leftM }) => sum + leftM, 0);
  let left = isUsual ? Math.max(0, Math.min(removedM, whole - LEAST_LEFT_M)) : removedM;
  for (const layer of layers.toReversed()) {
    const gone = Math.min(left, layer.leftM);
    layer.leftM -= gone;
    left -= gone;
  }
}

/** The piece with the coats that are still on it: what was sanded away to nothing dries no more. */
export function asItStands<P extends Piece>(piece: P, shop: Pick<Shop, 'jars' | 'pieces'>): P {
  if (piece.sandings.length === 0) return piece;
  const layers = layersLeft(piece, shop);
  const gone = new Set(layers.filter(({ leftM }) => leftM <= 0).map(({ coat }) => coat.id));
  const coats = gone.size === layers.length ? [] : piece.coats.filter(({ id }) => !gone.has(id));
  return gone.size === 0 ? piece : { ...piece, coats };
}

/**
 * The coats that are told of a piece. Levelling takes the last coats of a film and they stay told, for what they were laid on is there; what
 * was sanded away down to another material, or to nothing, is told no more.
 */
export function coatsTold(piece: Piece, shop: Pick<Shop, 'jars' | 'pieces'>): readonly Coat[] {
  const { coats } = asItStands(piece, shop);
  if (coats.length === piece.coats.length) return coats;
  const left = new Set(coats);
  return piece.coats.filter((coat, n) =>
    piece.coats.slice(0, n + 1).some((below) => below.jar === coat.jar && left.has(below)),
  );
}
