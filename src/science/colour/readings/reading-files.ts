import { fail, type Result, succeed } from '../../../result';
import { impossiblePart, type Lab, xyzToLab } from '../lab';
import { type Spectrum, spectrumFault } from '../spectrum';
import type { White } from '../white-points';
import { isCgats, parseCgats } from './cgats';
import { parseCsv } from './csv';
import { findColumns, type ReadingColumns } from './reading-columns';
import {
  type FileIssue,
  issue,
  READING_FILE_LIMITS,
  type ReadingTable,
  type TableRow,
  whiteFrom,
} from './reading-table';

/** One reading out of a file: a colour, a spectrum, or both. */
export interface FileReading {
  readonly line: number;
  readonly name: string;
  readonly lab?: Lab;
  readonly spectrum?: Spectrum;
}

/**
 * Turns the text of a CSV or CGATS.17 file into readings, or into what is wrong with it, line by line.
 * Nothing of the file's own names becomes a property, and no more than 2 million characters or 5000 rows are read.
 * @param fallback the light taken where the file does not name one
 */
export function parseReadingFile(text: string, fallback: White): Result<FileReading[], FileIssue[]> {
  if (text.length > READING_FILE_LIMITS.characters) return fail([issue(1, 'too-large')]);
  const clean = text.replace(/^\uFEFF/, '');
  const table = isCgats(clean) ? parseCgats(clean) : parseCsv(clean);
  return table.ok ? readTable(table.value, fallback) : table;
}

function readTable(table: ReadingTable, fallback: White): Result<FileReading[], FileIssue[]> {
  const { columnLine, columns: headings, rows } = table;
  if (headings.length > READING_FILE_LIMITS.columns) return fail([issue(columnLine, 'too-many-columns')]);
  const columns = findColumns(headings);
  if (!columns.lab && !columns.xyz && columns.bands.length === 0)
    return fail([issue(columnLine, 'no-colour-columns', headings.join(' '))]);
  if (rows.length === 0) return fail([issue(columnLine, 'no-readings')]);
  const issues: FileIssue[] = bandIssues(columns, columnLine);
  const context: RowContext = { table, columns, fallback, bandScale: bandScale(columns, rows), issues };
  const readings: FileReading[] = [];
  for (const row of rows) {
    if (issues.length >= READING_FILE_LIMITS.issues) break;
    const reading = readRow(row, context);
    if (reading) readings.push(reading);
  }
  return issues.length > 0 ? fail(issues) : succeed(readings);
}

interface RowContext {
  readonly table: ReadingTable;
  readonly columns: ReadingColumns;
  readonly fallback: White;
  readonly bandScale: number;
  readonly issues: FileIssue[];
}

function spectrumOf({ bands }: ReadingColumns, reflectance: readonly number[]): Spectrum {
  const startNm = bands[0]?.nm ?? 0;
  return { startNm, stepNm: (bands[1]?.nm ?? startNm) - startNm, reflectance };
}

/** Faults of the wavelengths themselves, said once, at the line of the headings. */
function bandIssues(columns: ReadingColumns, line: number): FileIssue[] {
  if (columns.bands.length === 0) return [];
  const { stepNm } = spectrumOf(columns, []);
  const isUneven = columns.bands.some(
    ({ nm }, i) => i > 0 && nm - (columns.bands[i - 1]?.nm ?? 0) !== stepNm,
  );
  if (isUneven) return [issue(line, 'spectrum-steps')];
  const fault = spectrumFault(spectrumOf(columns, new Array<number>(columns.bands.length).fill(0)));
  if (!fault) return [];
  return [issue(line, fault === 'step' ? 'spectrum-steps' : 'spectrum-range')];
}

/** Reflectances over 2 anywhere in the file mean that the whole file is in percent. */
function bandScale({ bands }: ReadingColumns, rows: readonly TableRow[]): number {
  return rows.some(({ cells }) => bands.some(({ index }) => Number(cells[index]) > 2)) ? 0.01 : 1;
}

function readRow(row: TableRow, context: RowContext): FileReading | undefined {
  const { table, columns, issues } = context;
  const { line, cells } = row;
  if (cells.length !== table.columns.length) {
    issues.push(issue(line, 'wrong-cell-count', `${cells.length}`));
    return undefined;
  }
  const spectrum = columns.bands.length > 0 ? readSpectrum(row, context) : undefined;
  const lab = columns.lab || columns.xyz ? readLab(row, context) : undefined;
  const name = (columns.name === undefined ? '' : (cells[columns.name] ?? '')).slice(0, 100);
  return { line, name, ...(lab && { lab }), ...(spectrum && { spectrum }) };
}

/** The numbers in these cells, or undefined with the first cell that is none told as an issue. */
function readNumbers(row: TableRow, indices: readonly number[], issues: FileIssue[]): number[] | undefined {
  const numbers: number[] = [];
  for (const index of indices) {
    const cell = row.cells[index] ?? '';
    const number = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(cell) ? Number(cell) : Number.NaN;
    if (!Number.isFinite(number)) {
      issues.push(issue(row.line, 'not-a-number', cell));
      return undefined;
    }
    numbers.push(number);
  }
  return numbers;
}

function readLab(row: TableRow, { table, columns, fallback, issues }: RowContext): Lab | undefined {
  const numbers = readNumbers(row, columns.lab ?? columns.xyz ?? [], issues);
  if (!numbers) return undefined;
  const inRow = {
    ...(columns.illuminant !== undefined && { illuminant: row.cells[columns.illuminant] ?? '' }),
    ...(columns.observer !== undefined && { observer: row.cells[columns.observer] ?? '' }),
  };
  const named = { ...table.light, ...columns.light, ...inRow };
  const white = whiteFrom(named, fallback);
  if (!white) {
    issues.push(issue(row.line, 'unknown-light', `${named.illuminant ?? ''} ${named.observer ?? ''}`.trim()));
    return undefined;
  }
  const [p = 0, q = 0, r = 0] = numbers;
  const lab: Lab = columns.lab ? { white, L: p, a: q, b: r } : xyzToLab({ white, X: p, Y: q, Z: r });
  const part = impossiblePart(lab);
  if (!part) return lab;
  issues.push(issue(row.line, 'impossible-colour', `${part}* ${lab[part]}`));
  return undefined;
}

// Bright samples under an instrument may read a little over 1, black ones a little under 0 (judgement, no source).
const REFLECTANCE_LIMITS = { lowest: -0.02, highest: 1.5 };

function readSpectrum(row: TableRow, { columns, bandScale, issues }: RowContext): Spectrum | undefined {
  const indices = columns.bands.map(({ index }) => index);
  const reflectance = readNumbers(row, indices, issues)?.map((number) => number * bandScale);
  const wrong = reflectance?.find((r) => r < REFLECTANCE_LIMITS.lowest || r > REFLECTANCE_LIMITS.highest);
  if (wrong !== undefined) issues.push(issue(row.line, 'impossible-colour', `R ${wrong}`));
  return reflectance && wrong === undefined ? spectrumOf(columns, reflectance) : undefined;
}
