import type { EntryInSi, Lines } from '../in-si';

export type DataSheet = EntryInSi<'sheet-entered'>;

/** The data sheet entered last for each jar. */
export function foldDataSheets(lines: Lines) {
  const sheets = new Map<string, DataSheet>();
  for (const line of lines.of('sheet-entered')) sheets.set(line.jar, line);
  return { sheets: sheets as ReadonlyMap<string, DataSheet> };
}
