import { fail, type Result, succeed } from '../../../result';
import {
  type FileIssue,
  issue,
  READING_FILE_LIMITS,
  type ReadingTable,
  type TableRow,
} from './reading-table';

type Delimiter = ',' | ';' | '\t';

/** The delimiter of a header line: whichever of tab, semicolon and comma stands there most. */
function delimiterOf(header: string): Delimiter {
  const count = (delimiter: Delimiter): number => header.split(delimiter).length;
  const candidates: Delimiter[] = ['\t', ';', ','];
  return candidates.reduce((best, next) => (count(next) > count(best) ? next : best));
}

/** The cells of one line, quotes taken off and doubled quotes made one; undefined when a quote stays open. */
function splitLine(text: string, delimiter: Delimiter): string[] | undefined {
  const cells: string[] = [];
  let cell = '';
  let isQuoted = false;
  for (let i = 0; i < text.length; i++) {
    const character = text[i];
    if (character === '"' && isQuoted && text[i + 1] === '"') {
      cell += '"';
      i++;
    } else if (character === '"') isQuoted = !isQuoted;
    else if (character === delimiter && !isQuoted) {
      cells.push(cell.trim());
      cell = '';
    } else cell += character;
  }
  cells.push(cell.trim());
  return isQuoted ? undefined : cells;
}

/** With semicolons or tabs between the cells, a comma inside a number is a decimal comma. */
function withDecimalPoint(cell: string, delimiter: Delimiter): string {
  return delimiter !== ',' && /^[+-]?\d+,\d+$/.test(cell) ? cell.replace(',', '.') : cell;
}

/**
 * A CSV text as a table: the first line that is neither empty nor a # comment names the columns (RFC 4180 quoting within
 * a line; comma, semicolon or tab; decimal comma with the latter two).
 */
export function parseCsv(text: string): Result<ReadingTable, FileIssue[]> {
  const lines = text.split(/\r\n|\n|\r/).map((content, i) => ({ line: i + 1, content }));
  const [header, ...body] = lines.filter(({ content }) => content.trim() !== '' && !content.startsWith('#'));
  if (!header) return fail([issue(1, 'no-readings')]);
  const delimiter = delimiterOf(header.content);
  const columns = splitLine(header.content, delimiter);
  if (!columns) return fail([issue(header.line, 'open-quote')]);
  if (body.length > READING_FILE_LIMITS.rows) return fail([issue(header.line, 'too-many-rows')]);
  const issues: FileIssue[] = [];
  const rows: TableRow[] = [];
  for (const { line, content } of body) {
    const cells = splitLine(content, delimiter);
    if (cells) rows.push({ line, cells: cells.map((cell) => withDecimalPoint(cell, delimiter)) });
    else issues.push(issue(line, 'open-quote'));
  }
  if (issues.length > 0) return fail(issues.slice(0, READING_FILE_LIMITS.issues));
  return succeed({ columnLine: header.line, columns, rows, light: {} });
}
