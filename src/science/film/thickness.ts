/**
 * Dry film of a wet film, in the unit of the wet film.
 *
 * Source: DFT = WFT VS, UFC 3-190-06, with the volume solids as sprayed (thinned): ASTM D2697, ISO 3233-1.
 * Left out: binder sunk into wood, pores of a film over its critical pigment concentration.
 */
export const dryFilm = (wetFilm: number, volumeSolids: number): number => wetFilm * volumeSolids;

/** Wet film to lay for a dry film, in the unit of the dry film: {@link dryFilm} turned round. */
export const wetFilm = (dry: number, volumeSolids: number): number => dry / volumeSolids;
