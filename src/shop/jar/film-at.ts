import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import { jarAmount } from './amount';
import { type JarFilm, jarFilm } from './film';

/**
 * The film that a jar gives at a moment: solvent that evaporated before it has raised the volume solids.
 *
 * Source: mass balance, `reweighed`. Left out: the fast solvents leave first; the blend is taken to stay as it was.
 */
export function jarFilmAt(jar: Jar, atMs: number, shop: Pick<Shop, 'pieces'>): JarFilm {
  const film = jarFilm(jar);
  const isThicker = jar.weighings.some((one) => one.missing === 'evaporated' && one.atMs < atMs);
  return isThicker ? { ...film, volumeSolids: jarAmount(jar, shop, atMs).volumeSolids } : film;
}
