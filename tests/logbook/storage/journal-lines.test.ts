import { describe, expect, test } from 'vitest';
import { crc32 } from '../../../src/logbook/crc32';
import { readLines, toLines } from '../../../src/logbook/storage/journal/lines';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const joined = (...parts: readonly Uint8Array[]) => new Uint8Array(parts.flatMap((part) => [...part]));
/** A line with a sum that is right, whatever it says. */
const said = (json: string) => bytesOf(`${crc32(bytesOf(json)).toString(16).padStart(8, '0')} ${json}\n`);
function flipped(line: Uint8Array, at: number): Uint8Array {
  const copy = line.slice();
  copy[at] = (copy[at] as number) ^ 1;
  return copy;
}

const [one, two] = [toLines([['a', { coat: 1 }]]), toLines([['b', 'Für außen']])];
const ROW = { one: ['a', { coat: 1 }], two: ['b', 'Für außen'] } as const;

describe('the lines of a journal', () => {
  test.each([
    { what: 'nothing', bytes: joined(), rows: [], spare: 0 },
    { what: 'two rows', bytes: joined(one, two), rows: [ROW.one, ROW.two], spare: 0 },
    {
      what: 'a last line that was torn',
      bytes: joined(one, two.slice(0, -4)),
      rows: [ROW.one],
      spare: two.length - 4,
    },
    {
      what: 'a last line without its end alone',
      bytes: joined(one, two.slice(0, -1)),
      rows: [ROW.one, ROW.two],
      spare: 0,
    },
    { what: 'a flipped sum', bytes: joined(flipped(one, 0), two), rows: [ROW.two], spare: one.length - 1 },
    {
      what: 'a flipped letter of a row',
      bytes: joined(flipped(one, 11), two),
      rows: [ROW.two],
      spare: one.length - 1,
    },
    {
      what: 'zeros in the place of a line',
      bytes: joined(new Uint8Array(one.length - 1), bytesOf('\n'), two),
      rows: [ROW.two],
      spare: one.length - 1,
    },
    { what: 'a sum with nothing behind it', bytes: said(''), rows: [], spare: 9 },
    {
      what: 'a row that was said again: its last word counts',
      bytes: joined(one, two, toLines([['a', 2]])),
      rows: [['a', 2], ROW.two],
      spare: toLines([['a', 2]]).length - 1,
    },
    { what: 'a row without a key', bytes: joined(said('[1,2]'), two), rows: [ROW.two], spare: 14 },
  ])('with $what', ({ bytes, rows, spare }) => {
    const read = readLines(bytes);
    expect({ rows: [...read.rows], spare: read.spare }).toEqual({ rows, spare });
  });

  test('hold any number of rows, whose sums may begin with noughts', () => {
    const rows = Array.from({ length: 400 }, (_, n) => [`row ${n}`, n] as const);
    expect([...readLines(toLines(rows)).rows]).toEqual(rows);
    const sums = new TextDecoder()
      .decode(toLines(rows))
      .split('\n')
      .map((line) => line.slice(0, 8));
    expect(sums.some((sum) => sum.startsWith('0'))).toBe(true);
  });

  test('describe what JSON cannot hold', () => {
    expect([...readLines(toLines([['a', 3n], ROW.two])).rows]).toEqual([['a', '3'], ROW.two]);
  });
});
