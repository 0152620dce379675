import type { EntryOf } from '../logbook/entry';
import type { Coat } from '../logbook/fold/piece/pieces';

/** The film of a coat as it was typed, to be said again. */
export function filmSaidBy({ film }: Pick<Coat, 'film'>): EntryOf<'coat-laid'>['film'] {
  if (film.by === 'wet') return { by: film.by, wetFilm: film.wetFilm.typed } as EntryOf<'coat-laid'>['film'];
  if (film.by === 'usual')
    return { by: film.by, dryFilm: film.dryFilm.typed } as EntryOf<'coat-laid'>['film'];
  return { by: film.by, passes: film.passes, perPass: film.perPass.typed } as EntryOf<'coat-laid'>['film'];
}
