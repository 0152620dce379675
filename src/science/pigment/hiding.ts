import { assertWithin } from '../assert-within';
import { filmFromTwoGrounds, filmReflectance, type KS } from './kubelka-munk';

/** Contrast ratio (Y over black / Y over white) at which hiding is called complete. Source: ISO 6504-1. */
export const HIDING_CONTRAST_RATIO = 0.98;

/** A draw-down of known dry film over a black and white card: Y (0 to 100) of the card's fields, bare and coated. */
export interface Drawdown {
  readonly dryFilmUm: number;
  readonly black: { readonly cardY: number; readonly coatedY: number };
  readonly white: { readonly cardY: number; readonly coatedY: number };
}

/** Contrast ratio of a coat, a fraction: its Y over black by its Y over white. Source: ISO 6504-1, definition. */
export function contrastRatio(overBlackY: number, overWhiteY: number): number {
  assertWithin('Y over white', overWhiteY, 1e-6, 200, '(Y, white = 100)');
  return overBlackY / overWhiteY;
}

/**
 * K and S per micrometre of dry film, from a draw-down; undefined when it fits no film, or when it already hides so well
 * that the grounds cannot be told apart any more: draw a thinner one.
 *
 * Source: Kubelka 1948 by way of {@link filmFromTwoGrounds}, on Y as one broad band.
 * Valid: near-neutral whites and creams. Accuracy: film to hide within a tenth (judgement).
 * Left out: the film's surface, which is the same in the two fields.
 */
export function hidingPower({ dryFilmUm, black, white }: Drawdown): KS | undefined {
  assertWithin('Dry film', dryFilmUm, 0.1, 1000, 'um');
  const film = filmFromTwoGrounds(
    { ground: black.cardY / 100, film: black.coatedY / 100 },
    { ground: white.cardY / 100, film: white.coatedY / 100 },
  );
  return film && { K: film.K / dryFilmUm, S: film.S / dryFilmUm };
}

/** Contrast ratio of a dry film of this thickness over grounds of these reflectances (fractions). */
export function contrastRatioAt(film: KS, dryFilmUm: number, black = 0, white = 0.8): number {
  return filmReflectance(film, dryFilmUm, black) / filmReflectance(film, dryFilmUm, white);
}

/** A film of this build has hidden everything it ever will: beyond it the coating cannot hide (judgement, no source). */
const MOST_FILM_UM = 2000;

/**
 * Dry film in micrometres at which the contrast ratio is reached; undefined when no sensible film reaches it.
 *
 * Source: {@link filmReflectance} solved for thickness by halving; grounds 0 and 0.8 as on usual cards.
 * Valid: contrast ratio 0.5 to 0.999. Accuracy: 0.01 um on the formula.
 */
export function filmToHideUm(
  film: KS,
  ratio = HIDING_CONTRAST_RATIO,
  black = 0,
  white = 0.8,
): number | undefined {
  assertWithin('Contrast ratio', ratio, 0.5, 0.999, '(fraction)');
  let [thin, thick] = [0, MOST_FILM_UM];
  if (!(contrastRatioAt(film, thick, black, white) >= ratio)) return undefined;
  while (thick - thin > 0.001) {
    const middle = (thin + thick) / 2;
    if (contrastRatioAt(film, middle, black, white) >= ratio) thick = middle;
    else thin = middle;
  }
  return thick;
}

/** Whole coats that give at least this dry film, each of them this thick. */
export function coatsToHide(filmUm: number, dryFilmPerCoatUm: number): number {
  assertWithin('Dry film per coat', dryFilmPerCoatUm, 0.1, 500, 'um');
  return Math.ceil(filmUm / dryFilmPerCoatUm - 1e-9);
}
