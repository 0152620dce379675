import type { Band } from '../../estimator/estimate';
import { binderOf } from '../../estimator/laws/binders';
import { filmSolvent } from '../../estimator/laws/film-solvents';
import type { Estimator } from '../../estimator/run/client';
import { USUAL_SHOP, WOOD_EFFUSIVITY } from '../../estimator/usual-shop';
import type { JarFilm } from '../../shop/jar/film';
import { umToMetres } from '../../units';

/**
 * When one coat of a mix is dry to touch at 21 C in gentle air, s after it went on; undefined for a finish that does not dry
 * by solvent alone.
 */
export async function touchTime(
  film: JarFilm,
  estimator: Pick<Estimator, 'estimate'>,
  wetFilmM = umToMetres(100),
): Promise<Band | undefined> {
  const binder = binderOf(film.finish);
  if (!binder || film.volumeSolids <= 0 || film.volumeSolids >= 1) return undefined;
  const binderShare = film.volumeSolids * (1 - film.pigment);
  const estimate = await estimator.estimate({
    history: {
      binder,
      solvents: film.solvents.map(({ id }) => filmSolvent(id)),
      events: [
        {
          kind: 'coat',
          atS: 0,
          dryM: wetFilmM * film.volumeSolids,
          wetness: film.solvents.map(({ share }) => (share * (1 - film.volumeSolids)) / binderShare),
          pigment: film.pigment,
          passage: film.passage,
        },
      ],
      air: [{ fromS: 0, ...USUAL_SHOP }],
      openBaseM: 0,
      sandingK: USUAL_SHOP.temperatureK,
      panelEffusivity: WOOD_EFFUSIVITY,
    },
    nowS: 0,
    checks: [],
    whatIf: [],
  }).result;
  const { touch } = estimate.milestones;
  return Number.isFinite(touch.likelyS) ? touch : undefined;
}
