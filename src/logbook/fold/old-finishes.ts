import type { Lines, Told } from './told';

/** What is known of the old finish on a piece. */
export interface OldFinishRecord {
  readonly tests: readonly Told<'spot-tested'>[];
  readonly seen: Told<'old-finish-seen'> | undefined;
  readonly lead: Told<'lead-tested'> | undefined;
}

export const NOTHING_KNOWN: OldFinishRecord = { tests: [], seen: undefined, lead: undefined };

/** What is known of old finishes, by piece; what was said last counts. */
export function foldOldFinishes(lines: Lines) {
  const records = new Map<string, OldFinishRecord>();
  const put = (piece: string, more: Partial<OldFinishRecord>): void => {
    records.set(piece, { ...(records.get(piece) ?? NOTHING_KNOWN), ...more });
  };
  for (const line of lines.of('spot-tested'))
    put(line.piece, { tests: [...(records.get(line.piece)?.tests ?? []), line] });
  for (const line of lines.of('old-finish-seen')) put(line.piece, { seen: line });
  for (const line of lines.of('lead-tested')) put(line.piece, { lead: line });
  return { oldFinishes: records as ReadonlyMap<string, OldFinishRecord> };
}
