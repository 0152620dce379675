import type { Shop } from '../../../logbook/fold/fold';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { GROUNDS } from '../../../logbook/kinds/piece/ground';
import type { GroundMark } from '../../../parts/film/film-picture';
import { groundsOn } from '../../../shop/stack/grounds';
import { GROUND_WORDS } from '../../../words/piece/ground';

/** What the section shows of what was filled, sealed and glued: each sort once, with its number of applications. */
export function groundMarks(piece: Piece, shop: Shop): readonly GroundMark[] {
  const all = groundsOn(piece, shop);
  return GROUNDS.flatMap((is) => {
    const own = all.filter(({ ground }) => ground === is);
    const isTinted = own.some(({ logged }) => logged?.isTinted === true);
    return own.length === 0 ? [] : [{ is, label: GROUND_WORDS.short(is, own.length), isTinted }];
  });
}
