import { fail, type Result, succeed } from '../../../result';
import {
  type FileIssue,
  issue,
  type LightNames,
  READING_FILE_LIMITS,
  type ReadingTable,
  type TableRow,
} from './reading-table';

/** Whether a text is laid out as ANSI CGATS.17 (ISO 28178) keyword text. */
export function isCgats(text: string): boolean {
  return /^\s*BEGIN_DATA_FORMAT\b/m.test(text);
}

/** Words of a line; a quoted run is one word, and a # starts a comment. */
function wordsOf(content: string): string[] {
  const words: string[] = [];
  for (const [word] of content.matchAll(/"[^"]*"|[^\s"]+/g)) {
    if (word.startsWith('#')) break;
    words.push(word.startsWith('"') ? word.slice(1, -1) : word);
  }
  return words;
}

/** The light that a header line names, in the wordings in use: ILLUMINANT "D50", WEIGHTING_FUNCTION "OBSERVER, 2 degree". */
function lightIn([keyword = '', value = '']: readonly string[]): LightNames {
  if (keyword === 'WEIGHTING_FUNCTION') {
    const [what = '', which = ''] = value.split(',');
    return lightIn([what.trim().toUpperCase(), which.trim()]);
  }
  if (['ILLUMINANT', 'ILLUMINATION_NAME', 'ILLUMINANT_NAME'].includes(keyword)) return { illuminant: value };
  if (['OBSERVER', 'OBSERVER_ANGLE'].includes(keyword)) return { observer: value };
  return {};
}

interface Progress {
  section: 'header' | 'format' | 'data' | 'done';
  columnLine: number;
  columns: string[];
  rows: TableRow[];
  light: LightNames;
  promisedRows: number | undefined;
}

const OPENERS = {
  BEGIN_DATA_FORMAT: 'format',
  END_DATA_FORMAT: 'header',
  BEGIN_DATA: 'data',
  END_DATA: 'done',
} as const;

function takeLine(progress: Progress, line: number, words: readonly string[]): void {
  const [keyword = ''] = words;
  if (Object.hasOwn(OPENERS, keyword)) progress.section = OPENERS[keyword as keyof typeof OPENERS];
  else if (progress.section === 'format') {
    progress.columnLine ||= line;
    progress.columns.push(...words);
  } else if (progress.section === 'data') progress.rows.push({ line, cells: words });
  else if (keyword === 'NUMBER_OF_SETS') progress.promisedRows = Number(words[1]);
  else progress.light = { ...progress.light, ...lightIn(words) };
}

/** A CGATS.17 text as a table: its first data table, one set a line. Later tables of the same file are left out. */
export function parseCgats(text: string): Result<ReadingTable, FileIssue[]> {
  const progress: Progress = {
    section: 'header',
    columnLine: 0,
    columns: [],
    rows: [],
    light: {},
    promisedRows: undefined,
  };
  const lines = text.split(/\r\n|\n|\r/);
  for (const [i, content] of lines.entries()) {
    if ((content.match(/"/g)?.length ?? 0) % 2 === 1) return fail([issue(i + 1, 'open-quote')]);
    const words = wordsOf(content);
    if (words.length > 0) takeLine(progress, i + 1, words);
    if (progress.rows.length > READING_FILE_LIMITS.rows) return fail([issue(i + 1, 'too-many-rows')]);
    if (progress.section === 'done') break;
  }
  if (progress.section !== 'done') return fail([issue(lines.length, 'unfinished')]);
  const { columnLine, columns, rows, light, promisedRows } = progress;
  if (promisedRows !== undefined && promisedRows !== rows.length)
    return fail([issue(rows.at(-1)?.line ?? columnLine, 'wrong-row-count', `${rows.length}`)]);
  return succeed({ columnLine, columns, rows, light });
}
