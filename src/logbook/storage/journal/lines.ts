import { crc32 } from '../../crc32';
import type { Row } from '../database';

/*
 * The journal is text: a line a row, `<CRC-32 of the rest, 8 hex digits> <JSON of [key, value]>`. JSON has no line feed in it, so a line that
 * was torn, zeroed or flipped costs itself alone.
 */
const LINE_FEED = 0x0a;
const SUM_CHARACTERS = 8;

/** What a journal holds, and how many of its lines say nothing or say it again. */
export interface Read {
  readonly rows: ReadonlyMap<string, unknown>;
  readonly spare: number;
}

/** The lines of these rows. What JSON cannot hold is described: it was unreadable before. */
export const toLines = (rows: readonly Row[]): Uint8Array<ArrayBuffer> =>
  new TextEncoder().encode(rows.map(toLine).join(''));

function toLine([key, value]: Row): string {
  const json = jsonOf([key, value]) ?? JSON.stringify([key, String(value)]);
  return `${sumOf(new TextEncoder().encode(json))} ${json}\n`;
}

function jsonOf(value: unknown): string | undefined {
  try {
    return JSON.stringify(value);
  } catch {
    return undefined;
  }
}

const sumOf = (bytes: Uint8Array): string => crc32(bytes).toString(16).padStart(SUM_CHARACTERS, '0');

/** Every whole line of a journal, whatever has happened to the others. */
export function readLines(bytes: Uint8Array): Read {
  const rows = new Map<string, unknown>();
  let spare = 0;
  for (let from = 0; from < bytes.length; ) {
    const end = bytes.indexOf(LINE_FEED, from);
    const line = bytes.subarray(from, end < 0 ? bytes.length : end);
    const row = readLine(line);
    if (!row || rows.has(row[0])) spare += line.length;
    if (row) rows.set(row[0], row[1]);
    from += line.length + 1;
  }
  return { rows, spare };
}

function readLine(line: Uint8Array): Row | undefined {
  const json = line.subarray(SUM_CHARACTERS + 1);
  if (json.length === 0 || new TextDecoder().decode(line.subarray(0, SUM_CHARACTERS)) !== sumOf(json))
    return undefined;
  const [key, value] = JSON.parse(new TextDecoder().decode(json)) as [unknown, unknown];
  return typeof key === 'string' ? [key, value] : undefined;
}
