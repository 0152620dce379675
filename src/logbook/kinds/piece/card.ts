import * as v from 'valibot';
import { LIMITS } from '../../limits';
import { typed } from '../../typed';
import { entryOf, Id } from '../envelope';
import { COAT_WAYS, FilmByHalves } from './coat';

/** Why a weighing is kept and left out of the reckoning. */
export const LEFT_OUT = ['damp', 'dust', 'torn', 'scale', 'unknown'] as const;

export const CARD_KINDS = {
  /** A piece of foil that is coated beside a piece and weighed. */
  'card-made': entryOf('card-made', {
    card: Id,
    /** The piece beside which it lies. */
    piece: v.exactOptional(Id),
    /** Of one face. */
    area: typed(LIMITS.area),
    faces: v.picklist([1, 2]),
    bare: typed(LIMITS.mass),
    division: typed(LIMITS.division),
  }),
  /** The card got a coat; `coat` is the coat of a piece that went on in the same act. */
  'card-coated': entryOf('card-coated', {
    card: Id,
    coat: v.exactOptional(Id),
    jar: Id,
    how: v.picklist(COAT_WAYS),
    film: FilmByHalves,
  }),
  'card-weighed': entryOf('card-weighed', {
    card: Id,
    mass: typed(LIMITS.mass),
    /** Dried warm before: how warm, and for how long. */
    warm: v.exactOptional(
      v.object({ temperature: typed(LIMITS.temperature), time: typed(LIMITS.sheetTime) }),
    ),
    /** Of another scale than the one that weighed it bare. */
    division: v.exactOptional(typed(LIMITS.division)),
    leftOut: v.exactOptional(v.picklist(LEFT_OUT)),
  }),
  /** Nothing more is to come of it. */
  'card-ended': entryOf('card-ended', { card: Id }),
};
