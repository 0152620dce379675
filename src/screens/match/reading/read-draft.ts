import type { ReadingSaid } from '../../../actions/match/read-colour';
import { parseNumber } from '../../../logbook/as-typed';
import { LIMITS } from '../../../logbook/limits';
import { draftProblem } from '../../../parts/fields/typed-field';
import { type Lab, xyzToLab } from '../../../science/colour/lab';
import type { White } from '../../../science/colour/white-points';
import { hexToLab } from '../../../shop/colour/screen-colour';

export type ReadAs = 'lab' | 'xyz' | 'hex' | 'file';

/** One reading as it is being typed: three parts, or a hex. */
export interface RowDraft {
  readonly parts: readonly [string, string, string];
  readonly hex: string;
}
export const BLANK_ROW: RowDraft = { parts: ['', '', ''], hex: '' };

const bare = (text: string) => ({ text, unit: 'ratio' }) as const;
const PART_LIMITS = {
  lab: [LIMITS.lightness, LIMITS.opponent, LIMITS.opponent],
  xyz: [LIMITS.tristimulus, LIMITS.luminance, LIMITS.tristimulus],
} as const;

export const isBlank = (how: ReadAs, { parts, hex }: RowDraft): boolean =>
  how === 'hex' ? hex.trim() === '' : parts.every((text) => text.trim() === '');

/** What is wrong with one part of a reading. */
export const partProblem = (how: 'lab' | 'xyz', { parts }: RowDraft, part: 0 | 1 | 2): string | undefined =>
  draftProblem(bare(parts[part]), PART_LIMITS[how][part]);

/** Whether a reading can be sent as it is. */
export function isRowWhole(how: ReadAs, row: RowDraft): boolean {
  if (how === 'hex') return hexToLab(row.hex) !== undefined;
  if (how === 'file') return false;
  return ([0, 1, 2] as const).every((part) => partProblem(how, row, part) === undefined);
}

/** A reading for the logbook, kept as typed. */
export function rowSaid(how: ReadAs, { parts: [p, q, r], hex }: RowDraft): ReadingSaid {
  if (how === 'hex') return { as: 'hex', hex: hex.trim() };
  return how === 'xyz'
    ? { as: 'xyz', X: bare(p), Y: bare(q), Z: bare(r) }
    : { as: 'lab', L: bare(p), a: bare(q), b: bare(r) };
}

/** The colour of a reading that is whole. */
export function rowLab(how: ReadAs, row: RowDraft, white: White): Lab | undefined {
  if (!isRowWhole(how, row)) return undefined;
  if (how === 'hex') return hexToLab(row.hex);
  const [p = 0, q = 0, r = 0] = row.parts.map((text) => parseNumber(text) ?? 0);
  return how === 'xyz' ? xyzToLab({ white, X: p, Y: q, Z: r }) : { white, L: p, a: q, b: r };
}
