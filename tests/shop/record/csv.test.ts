import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvText } from '../../../src/shop/record/csv';

const MARK = '\ufeff';
const line = (...row: string[]) => csvText([row]).slice(MARK.length);

/** The rows as a reference library reads them, byte-order mark and all. */
const readCsv = (text: string): string[][] =>
  parse(text, { bom: true, recordDelimiter: '\r\n', relaxColumnCount: true });

describe('a cell', () => {
  test.each([
    // RFC 4180, section 2, rules 5 to 7
    { cell: 'plain', csv: 'plain' },
    { cell: 'a, b', csv: '"a, b"' },
    { cell: 'say "when"', csv: '"say ""when"""' },
    { cell: 'two\r\nlines', csv: '"two\r\nlines"' },
    { cell: 'two\rlines', csv: '"two\rlines"' },
    // OWASP, CSV Injection: characters that begin a formula
    { cell: '=1+1', csv: "'=1+1" },
    { cell: '=HYPERLINK("http://x")', csv: `"'=HYPERLINK(""http://x"")"` },
    { cell: '+cmd', csv: "'+cmd" },
    { cell: '@SUM(A1)', csv: "'@SUM(A1)" },
    { cell: '-2+3', csv: "'-2+3" },
    { cell: '\tx', csv: "'\tx" },
    // a number is no formula
    { cell: '-0.5', csv: '-0.5' },
    { cell: '+3,5', csv: '"+3,5"' },
    { cell: '', csv: '' },
  ])('$cell is written $csv', ({ cell, csv }) => {
    expect(line(cell)).toBe(`${csv}\r\n`);
  });
});

test('whatever is in the cells, they come back, and none is a formula', () => {
  const rows = fc.array(fc.array(fc.string({ unit: 'binary' }), { minLength: 1, maxLength: 5 }), {
    maxLength: 5,
  });
  fc.assert(
    fc.property(rows, (some) => {
      const read = readCsv(csvText(some));
      expect(
        read.map((row) => row.map((cell) => cell.replace(/^'(?=[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20])/, ''))),
      ).toEqual(
        some.map((row) => row.map((cell) => cell.replace(/^'(?=[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20])/, ''))),
      );
      for (const cell of read.flat()) expect(cell).not.toMatch(/^[=@\t\r\n]/);
    }),
  );
});
