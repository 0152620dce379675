import type { Piece } from '../../logbook/fold/piece/pieces';
import { metresToUm } from '../../units';
import { FILM_FACTS } from '../../words/piece/acts';
import { numberWords } from '../../words/quantities';
import type { FilmLayer } from './film-picture';

/** What was done on a surface and leaves no coat of its own: a sanding, or a flash coat. */
export interface FilmMark {
  readonly key: string;
  readonly kind: 'sanded' | 'flash';
  readonly label: string;
  /** How many of the layers drawn lie below it. */
  readonly above: number;
}

interface Done extends Omit<FilmMark, 'above'> {
  readonly atMs: number;
}

/** The sandings and flash coats of a piece, each on the newest coat before it that is still there. `unitUm` is the unit of the ruler. */
export function filmMarks(
  { coats, sandings }: Pick<Piece, 'coats' | 'sandings'>,
  layers: readonly FilmLayer[],
  unitUm: number,
): readonly FilmMark[] {
  const laidMs = new Map(coats.map(({ id, atMs }) => [id, atMs]));
  const done: readonly Done[] = [
    ...sandings.map(({ id, atMs, stage, removed }): Done => {
      const taken = numberWords(metresToUm(removed.si) / unitUm, unitUm > 1 ? 1 : 0);
      return { key: id, atMs, kind: 'sanded', label: FILM_FACTS.sanded[stage](taken) };
    }),
    ...coats
      .filter(({ how }) => how === 'flash')
      .map(({ id, atMs }): Done => ({ key: id, atMs, kind: 'flash', label: FILM_FACTS.flash })),
  ];
  return done
    .toSorted((one, other) => one.atMs - other.atMs)
    .map(({ atMs, ...mark }) => ({
      ...mark,
      above: layers.filter(({ key }) => (laidMs.get(key) ?? Number.NEGATIVE_INFINITY) <= atMs).length,
    }));
}
