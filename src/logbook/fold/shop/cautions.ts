import type { EntryInSi, Lines } from '../in-si';

export type CautionsRead = EntryInSi<'cautions-read'>;

/** The cautions that were confirmed, in time order, and those not to be shown again. */
export function foldCautions(lines: Lines) {
  const silenced = new Set<string>();
  for (const line of lines.of('caution-silenced')) {
    if (line.silenced) silenced.add(line.caution);
    else silenced.delete(line.caution);
  }
  return { cautionsRead: lines.of('cautions-read'), silencedCautions: silenced as ReadonlySet<string> };
}
