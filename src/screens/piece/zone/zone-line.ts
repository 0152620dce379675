import type { Zone } from '../../../logbook/fold/piece/zones';
import { typedWords } from '../../../parts/fields/typed-words';
import { ZONE_WORDS as WORDS } from '../../../words/piece/zone';
import type { UnitSystem } from '../../../words/quantities';

/** A place in one line, as typed: "Chip, 14 mm × 6 mm, 0.18 mm deep". */
export function zoneLine({ is, length, width, area, depth }: Zone, units: UnitSystem): string {
  const sides = [length, width].flatMap((side) => (side ? typedWords(side.typed, units) : []));
  const size = sides.length > 0 ? sides.join(' × ') : area && typedWords(area.typed, units);
  const deep = depth && WORDS.deep(typedWords(depth.typed, units));
  return [WORDS.sorts[is].label, size, deep].filter(Boolean).join(', ');
}
