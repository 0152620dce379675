import { plainNumber } from '../../logbook/typed';

const BREAK = '\r\n';
// What a spreadsheet would take for the beginning of a formula (OWASP, CSV Injection).
const FORMULA = /^[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/;

/** One cell: quoted where it must be, and never a formula. A number, negative ones too, stays a number. */
function cell(value: string): string {
  const text = FORMULA.test(value) && plainNumber(value) === undefined ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** The rows as CSV. Source: RFC 4180; with a byte-order mark, so that spreadsheets take it for UTF-8. */
export const csvText = (rows: readonly (readonly string[])[]): string =>
  `\ufeff${rows.map((row) => row.map(cell).join(',') + BREAK).join('')}`;
