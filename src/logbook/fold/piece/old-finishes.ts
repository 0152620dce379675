import type { EntryInSi, Lines } from '../in-si';

/** What is known of the old finish on a piece. */
export interface OldFinishRecord {
  readonly tests: readonly EntryInSi<'spot-tested'>[];
  readonly seen: EntryInSi<'old-finish-seen'> | undefined;
  /** The answer that stands; undefined while nothing was found out. */
  readonly lead: EntryInSi<'lead-tested'> | undefined;
}

export const NOTHING_KNOWN: OldFinishRecord = { tests: [], seen: undefined, lead: undefined };

/** What is known of old finishes, by piece; what was said last counts, but lead that was found stands until it is corrected in writing. */
export function foldOldFinishes(lines: Lines) {
  const records = new Map<string, OldFinishRecord>();
  const known = (piece: string): OldFinishRecord => records.get(piece) ?? NOTHING_KNOWN;
  const put = (piece: string, more: Partial<OldFinishRecord>): void => {
    records.set(piece, { ...known(piece), ...more });
  };
  for (const line of lines.of('spot-tested')) put(line.piece, { tests: [...known(line.piece).tests, line] });
  for (const line of lines.of('old-finish-seen')) put(line.piece, { seen: line });
  for (const line of lines.of('lead-tested'))
    put(line.piece, { lead: answerThatStands(known(line.piece).lead, line) });
  return { oldFinishes: records as ReadonlyMap<string, OldFinishRecord> };
}

type Answer = OldFinishRecord['lead'];

function answerThatStands(before: Answer, next: NonNullable<Answer>): Answer {
  if (before?.finding === 'found' && next.finding !== 'found' && next.correction === undefined) return before;
  return next.finding === 'untested' ? undefined : next;
}
