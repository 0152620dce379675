import { useSignal } from '@preact/signals';
import type { ColourSaid, ReadingSaid } from '../../../actions/match/read-colour';
import type { OfferedReading } from '../../../actions/match/readings-from-file';
import { parseNumber } from '../../../logbook/as-typed';
import type { Match } from '../../../logbook/fold/piece/matches';
import { COUNTS, LIMITS } from '../../../logbook/limits';
import { type Draft, draftProblem } from '../../../parts/fields/typed-field';
import type { White } from '../../../science/colour/white-points';
import { isCount } from './count-fields';
import { BLANK_ROW, isBlank, isRowWhole, type ReadAs, type RowDraft, rowSaid } from './read-draft';
import { ofSaid, type ReadOf } from './read-of';

/** What is being read; signals, for the rows grow. */
export function useReadDrafts(match: Match) {
  return {
    how: useSignal<ReadAs>('lab'),
    white: useSignal<White>(match.white),
    rows: useSignal<readonly RowDraft[]>([BLANK_ROW]),
    fromFile: useSignal<readonly OfferedReading[]>([]),
    isDry: useSignal(true),
    clearCoats: useSignal<string | undefined>(undefined),
    share: useSignal<Draft<'%'>>({ text: '', unit: '%' }),
    passes: useSignal('1'),
    note: useSignal(''),
  };
}
export type ReadDrafts = ReturnType<typeof useReadDrafts>;

/** The readings to log, with the light they share; undefined while they cannot be logged. */
function whatWasRead({ how, white, rows, fromFile }: ReadDrafts) {
  if (how.value === 'file') {
    const [first] = fromFile.value;
    const isOneLight = fromFile.value.every((one) => one.white === first?.white);
    return first && isOneLight
      ? { white: first.white, readings: fromFile.value.map(({ reading }) => reading) }
      : undefined;
  }
  const typed = rows.value.filter((row, i) => i === 0 || !isBlank(how.value, row));
  if (!typed.every((row) => isRowWhole(how.value, row))) return undefined;
  const readings: ReadingSaid[] = typed.map((row) => rowSaid(how.value, row));
  return { white: how.value === 'hex' ? ('D65/2' as const) : white.value, readings };
}

/** The whole form for the logbook; undefined while it cannot be sent. */
export function readingsSaid(match: Match, of: ReadOf, drafts: ReadDrafts): ColourSaid | undefined {
  const { isDry, clearCoats, share, passes, note } = drafts;
  const read = whatWasRead(drafts);
  const coats = clearCoats.value;
  const isWhole =
    (coats === undefined || isCount(coats, COUNTS.coats)) &&
    (of.as !== 'tint' || draftProblem(share.value, LIMITS.tintShare) === undefined) &&
    (of.as !== 'toned' || isCount(passes.value, COUNTS.passes));
  if (!read || !isWhole) return undefined;
  return {
    match: match.id,
    of: ofSaid(of, share.value, passes.value),
    isDry: isDry.value,
    ...read,
    ...(coats === undefined ? {} : { clearCoats: parseNumber(coats) ?? Number.NaN }),
    ...(note.value.trim() === '' ? {} : { note: note.value.trim() }),
  };
}
