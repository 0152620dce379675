import type { HidingReading, Match } from '../../logbook/fold/piece/matches';
import { type Quantity, quantity, type Typed } from '../../logbook/typed';
import { labToXyz } from '../../science/colour/lab';
import {
  coatsToHide,
  contrastRatio,
  contrastRatioAt,
  type Drawdown,
  filmToHideUm,
  hidingPower,
} from '../../science/pigment/hiding';
import { metresToUm } from '../../units';

type FieldSaid = { readonly card: Typed; readonly coated: Typed };
interface HidingSaid {
  readonly dryFilm: Typed;
  readonly in: HidingReading['in'];
  readonly black: FieldSaid;
  readonly white: FieldSaid;
}

/** What a draw-down over black and white says of hiding. */
export interface Hiding {
  /** Of the draw-down itself, a fraction. */
  readonly contrastRatio: number;
  /** Dry film that hides, in micrometres; undefined when no sensible film does. */
  readonly filmToHideUm: number | undefined;
  /** Contrast ratio at so much dry film. */
  readonly at: (dryFilmUm: number) => number;
}

const luminance = (value: number, as: HidingReading['in']): number =>
  as === 'Y' ? value : labToXyz({ white: 'D65/10', L: value, a: 0, b: 0 }).Y;

/** Hiding from a draw-down as typed; undefined when it fits no film: too thick, or the fields mixed up. */
export function hidingOf(said: HidingSaid): Hiding | undefined {
  const field = ({ card, coated }: FieldSaid) => ({ card: quantity(card), coated: quantity(coated) });
  return hides({
    dryFilm: quantity(said.dryFilm),
    in: said.in,
    black: field(said.black),
    white: field(said.white),
  });
}

type FieldRead = { readonly card: Quantity; readonly coated: Quantity };
interface HidingRead {
  readonly dryFilm: Quantity;
  readonly in: HidingReading['in'];
  readonly black: FieldRead;
  readonly white: FieldRead;
}

/** Hiding from a draw-down that is kept. */
export function hides(read: HidingRead): Hiding | undefined {
  const field = ({ card, coated }: FieldRead): Drawdown['black'] => ({
    cardY: luminance(card.si, read.in),
    coatedY: luminance(coated.si, read.in),
  });
  const dryFilmUm = metresToUm(read.dryFilm.si);
  const [black, white] = [field(read.black), field(read.white)];
  const isInOrder = white.cardY > black.cardY && white.coatedY > 0 && black.coatedY <= white.coatedY;
  if (!isInOrder || !(dryFilmUm > 0)) return undefined;
  const film = hidingPower({ dryFilmUm, black, white });
  if (!film) return undefined;
  return {
    contrastRatio: contrastRatio(black.coatedY, white.coatedY),
    filmToHideUm: filmToHideUm(film),
    at: (um) => contrastRatioAt(film, um),
  };
}

/** The newest draw-down of this match: the film that hides, and coats of that draw-down's own film. */
export function hidingFilmUm({
  hiding,
}: Match): { readonly filmUm: number; readonly coats: number } | undefined {
  const read = hiding.at(-1);
  const filmUm = read && hides(read)?.filmToHideUm;
  return read && filmUm !== undefined
    ? { filmUm, coats: coatsToHide(filmUm, metresToUm(read.dryFilm.si)) }
    : undefined;
}
