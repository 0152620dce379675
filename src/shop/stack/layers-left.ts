import type { Shop } from '../../logbook/fold/fold';
import type { Coat, Piece } from '../../logbook/fold/pieces';
import { jarFilmAt } from '../jar/film-at';
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
    if (line.kind === 'sanded') takeOff(layers, line.removed.si);
    else if (line.how !== 'flash') {
      const jar = shop.jars.get(line.jar);
      if (jar)
        layers.push({
          coat: line,
          leftM: dryFilmM(line, jarFilmAt(jar, line.atMs, shop)),
          isColour: jar.pigment !== undefined,
        });
    }
  }
  return layers;
}

function takeOff(layers: { leftM: number }[], removedM: number): void {
  let left = removedM;
  for (const layer of layers.toReversed()) {
    const gone = Math.min(left, layer.leftM);
    layer.leftM -= gone;
    left -= gone;
  }
}
