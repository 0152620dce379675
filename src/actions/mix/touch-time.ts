import { binderOf } from '../../estimator/binders';
import { filmSolvent } from '../../estimator/film-solvents';
import type { StackHistory } from '../../estimator/history';
import { marginK, secondsTo } from '../../estimator/read-off';
import { simulate } from '../../estimator/simulate';
import type { JarFilm } from '../../shop/jar/film';
import { HOUR_S, toKelvin, umToMetres } from '../../units';

const AIR_K = toKelvin(21);
const GENTLE_MS = 1.2e-3;
const LONGEST_S = 12 * HOUR_S;
const WOOD_EFFUSIVITY = 370;

/** When one coat of a mix is dry to touch at 21 C in gentle air, s; undefined for a finish that does not dry by solvent alone. */
export function touchTimeS(film: JarFilm, wetFilmM = umToMetres(100)): number | undefined {
  const binder = binderOf(film.finish);
  if (!binder || film.volumeSolids <= 0 || film.volumeSolids >= 1) return undefined;
  const binderShare = film.volumeSolids * (1 - film.pigment);
  const history: StackHistory = {
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
    air: [{ fromS: 0, temperatureK: AIR_K, transferMS: GENTLE_MS }],
    openBaseM: 0,
    sandingK: AIR_K,
    panelEffusivity: WOOD_EFFUSIVITY,
  };
  const { trace } = simulate(history, {
    untilS: LONGEST_S,
    isDone: (steps) => marginK(steps, steps.timeS.length - 1, 'touch', AIR_K) >= 0,
  });
  const touchS = secondsTo(trace, history, 'touch');
  return Number.isFinite(touchS) ? touchS : undefined;
}
