import type { Zone } from '../../../logbook/fold/zones';
import { ZONE_WORDS as WORDS } from '../../../words/piece/zone';
import { typedWords } from '../film-as-typed';

/** A place in one line, as typed: "Chip, 14 mm × 6 mm, 0.18 mm deep". */
export function zoneLine({ is, length, width, area, depth }: Zone): string {
  const sides = [length, width].flatMap((side) => (side ? typedWords(side.typed) : []));
  const size = sides.length > 0 ? sides.join(' × ') : area && typedWords(area.typed);
  const deep = depth && WORDS.deep(typedWords(depth.typed));
  return [WORDS.sorts[is].label, size, deep].filter(Boolean).join(', ');
}
