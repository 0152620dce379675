/**
 * Dry film of a wet film, in the unit of the wet film.
 *
 * Source: DFT = WFT VS, UFC 3-190-06, with the volume solids as sprayed (thinned): ASTM D2697, ISO 3233-1.
 * Left out: binder sunk into wood, pores of a film over its critical pigment concentration.
 */
export const dryFilm = (wetFilm: number, volumeSolids: number): number => wetFilm * volumeSolids;

/** Wet film to lay for a dry film, in the unit of the dry film: {@link dryFilm} turned round. */
export const wetFilm = (dry: number, volumeSolids: number): number => dry / volumeSolids;

/**
 * Area covered by a volume of paint, m2/m3 (a thousandth of it is m2/L).
 *
 * Source: UFC 3-190-06: 1000 VS TE / DFT, m2/L with DFT in um.
 */
export const coverageM2M3 = (dryFilmM: number, volumeSolids: number, transferEfficiency = 1): number =>
  (volumeSolids * transferEfficiency) / dryFilmM;

/** One layer of a finish: what it leaves dry, and what sanding or scuffing then takes off, both m. */
export interface Layer {
  readonly dryFilmM: number;
  readonly removedM?: number;
}

/** Total dry film after each layer and its sanding, m. A sanding takes off no more than is there. */
export function buildUp(layers: readonly Layer[]): number[] {
  let total = 0;
  return layers.map(({ dryFilmM, removedM = 0 }) => {
    total = Math.max(0, total + dryFilmM - removedM);
    return total;
  });
}

/** How much a total film exceeds the most its product allows, m; 0 where it does not. */
export const excessFilmM = (totalFilmM: number, mostM: number): number => Math.max(0, totalFilmM - mostM);
