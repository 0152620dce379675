import { quantity } from '../../../logbook/typed';
import { jarFilm } from '../../../shop/jar/film';
import { type JarDraft, saidOf } from './jar-draft';

/** Volume solids of the mix, or that nothing is left of the lacquer. */
export function mixSolids(draft: JarDraft): number | 'too-thin' {
  const { product, thinner, thinning, retarder, pigment } = saidOf(draft);
  try {
    return jarFilm({
      product: { ...product, volumeSolids: quantity(product.volumeSolids) },
      thinner,
      thinning: { ...thinning, percent: quantity(thinning.percent) },
      ...(retarder ? { retarder: { ...retarder, percent: quantity(retarder.percent) } } : {}),
      ...(pigment
        ? { pigment: { shape: pigment.shape, shareOfSolids: quantity(pigment.shareOfSolids) } }
        : {}),
    }).volumeSolids;
  } catch {
    return 'too-thin'; // thinner and retarder together are all there is
  }
}
