import * as v from 'valibot';
import { LIMITS } from '../../limits';
import { typed } from '../../typed';
import { entryOf, Id, Name, Note } from '../envelope';

/** What lies under the first coat: an old finish either re-dissolves in the new one or closes the floor. */
export const BASES = ['bare-wood', 'sealed', 'old-redissolves', 'old-closed'] as const;

const Base = v.picklist(BASES);
const OldFilm = typed(LIMITS.oldFilm);
const Area = typed(LIMITS.area);

export const PIECE_KINDS = {
  'piece-started': entryOf('piece-started', {
    piece: Id,
    name: Name,
    base: Base,
    oldFilm: v.exactOptional(OldFilm),
    area: v.exactOptional(Area),
    note: v.exactOptional(Note),
  }),
  'piece-changed': entryOf('piece-changed', {
    piece: Id,
    name: v.exactOptional(Name),
    base: v.exactOptional(Base),
    oldFilm: v.exactOptional(OldFilm),
    area: v.exactOptional(Area),
    note: v.exactOptional(Note),
  }),
  'piece-closed': entryOf('piece-closed', { piece: Id }),
};
