import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseReadingFile } from '../../../src/science/colour/readings/reading-files';

const parse = (text: string) => parseReadingFile(text, 'D65/10');
const BANDS = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);

const CGATS = [
  'CGATS.17',
  'ORIGINATOR "somebody"',
  'WEIGHTING_FUNCTION "ILLUMINANT, D50"',
  'WEIGHTING_FUNCTION "OBSERVER, 2 degree"',
  'NUMBER_OF_FIELDS 5',
  'BEGIN_DATA_FORMAT',
  'SAMPLE_ID SAMPLE_NAME LAB_L LAB_A LAB_B',
  'END_DATA_FORMAT',
  'NUMBER_OF_SETS 2',
  'BEGIN_DATA # two creams',
  '1 "old white, left" 86.5 -0.6 14.8',
  '2 new 9.55e1 -0.8 2.2',
  'END_DATA',
];

describe('parseReadingFile accepts', () => {
  test.each([
    { why: 'comma', text: 'name,L*,a*,b*\ncream,86.5,-0.6,14.8' },
    { why: 'semicolon with decimal commas', text: '\uFEFFName;L*;a*;b*\r\ncream;86,5;-0,6;14,8\r\n' },
    {
      why: 'tab with headings that name the light',
      text: 'Sample\tL*(10°/D65)\ta*(10°/D65)\tb*(10°/D65)\ncream\t86.5\t-0.6\t14.8',
    },
    { why: 'blanks around its cells', text: ' name , L* , a* , b* \n cream , 86.5 , -0.6 , 14.8 ' },
    { why: 'quotes', text: '"name","L","a","b"\n"cream","86.5","-0.6","14.8"' },
  ])('CSV with $why', ({ text }) => {
    const parsed = parse(text);
    expect(parsed).toMatchObject({
      ok: true,
      value: [{ line: 2, name: 'cream', lab: { white: 'D65/10', L: 86.5, a: -0.6, b: 14.8 } }],
    });
  });

  test('CSV with its light in columns', () => {
    const parsed = parse('L,a,b,illuminant,observer\n50,0,0,A,2');
    expect(parsed).toMatchObject({ ok: true, value: [{ lab: { white: 'A/2' } }] });
  });

  test('CSV with XYZ', () => {
    const parsed = parse('X,Y,Z\n94.811,100,107.304');
    expect(parsed.ok && parsed.value[0]?.lab?.L).toBeCloseTo(100, 9);
  });

  test('of a CGATS.17 file with two tables the first, whatever the second holds', () => {
    const second = CGATS.slice(1).join('\n').replaceAll('86.5', '12.5').replace('D50', 'A');
    const parsed = parse(`${CGATS.join('\n')}\n${second}`);
    expect(parsed).toEqual(parse(CGATS.join('\n')));
    expect(parsed.ok && parsed.value).toHaveLength(2);
  });

  test.each([
    { why: 'of as many rows as may be', text: `L,a,b\n${'1,2,3\n'.repeat(5000)}`, rows: 5000 },
    { why: 'of as many characters as may be', text: 'L,a,b\n1,2,3\n'.padEnd(2_000_000, ' '), rows: 1 },
    {
      why: 'of as many columns as may be',
      text: `L,a,b${',x'.repeat(497)}\n1,2,3${',0'.repeat(497)}`,
      rows: 1,
    },
  ])('a file $why', ({ text, rows }) => {
    const parsed = parse(text);
    expect(parsed.ok && parsed.value.length).toBe(rows);
  });

  test('a light named in the headings of CSV, which is not the one otherwise taken', () => {
    const parsed = parse('name,L*(2°/D50),a*(2°/D50),b*(2°/D50)\ncream,86.5,-0.6,14.8');
    expect(parsed.ok && parsed.value[0]?.lab?.white).toBe('D50/2');
  });

  test('CGATS.17 with its light in the header', () => {
    expect(parse(CGATS.join('\n'))).toMatchObject({
      ok: true,
      value: [
        { line: 11, name: 'old white, left', lab: { white: 'D50/2', L: 86.5 } },
        { line: 12, name: 'new', lab: { white: 'D50/2', L: 95.5 } },
      ],
    });
  });

  test.each([
    { why: 'fractions', value: '0.5' },
    { why: 'percent', value: '50' },
  ])('spectra in $why', ({ value }) => {
    const format = BANDS.map((nm) => `SPECTRAL_NM${nm}`).join(' ');
    const row = BANDS.map(() => value).join(' ');
    const text = `CGATS.17\nBEGIN_DATA_FORMAT\n${format}\nEND_DATA_FORMAT\nBEGIN_DATA\n${row}\nEND_DATA\n`;
    const parsed = parse(text);
    const spectrum = parsed.ok ? parsed.value[0]?.spectrum : undefined;
    expect(spectrum).toMatchObject({ startNm: 400, stepNm: 10 });
    expect(spectrum?.reflectance[30]).toBeCloseTo(0.5, 12);
  });
});

const cgatsWithout = (dropped: string) => CGATS.filter((line) => line !== dropped).join('\n');
const bandCsv = (bands: readonly number[], value = '0.5') =>
  `${bands.map((nm) => `${nm}nm`).join(',')}\n${bands.map(() => value).join(',')}`;

const REFUSED = [
  { why: 'an empty file', text: '', line: 1, problem: 'no-readings' },
  { why: 'headings alone', text: 'L,a,b\n', line: 1, problem: 'no-readings' },
  { why: 'no colour at all', text: 'name,price\ncream,3', line: 1, problem: 'no-colour-columns' },
  { why: 'two of three columns', text: 'L,a,price\n50,0,3', line: 1, problem: 'no-colour-columns' },
  { why: 'the last two of three columns', text: 'price,a,b\n50,0,3', line: 1, problem: 'no-colour-columns' },
  {
    why: 'the first and the last of three columns',
    text: 'x,price,z\n50,0,3',
    line: 1,
    problem: 'no-colour-columns',
  },
  { why: 'a word for a number', text: 'L,a,b\n1,2,3\n86.5,warm,14', line: 3, problem: 'not-a-number' },
  { why: 'infinity', text: 'L,a,b\n1e999,0,0', line: 2, problem: 'not-a-number' },
  { why: 'L* over 100', text: 'L,a,b\n\n101,0,0', line: 3, problem: 'impossible-colour' },
  { why: 'a short row', text: 'L,a,b\n50,0', line: 2, problem: 'wrong-cell-count' },
  { why: 'an open quote', text: 'L,a,b\n"50,0,0', line: 2, problem: 'open-quote' },
  {
    why: 'a light it does not know',
    text: 'L,a,b,illuminant\n50,0,0,moon',
    line: 2,
    problem: 'unknown-light',
  },
  {
    why: 'prototype words for a light',
    text: 'L,a,b,illuminant\n50,0,0,__proto__',
    line: 2,
    problem: 'unknown-light',
  },
  { why: 'an open quote among the headings', text: '"L,a,b\n50,0,0', line: 1, problem: 'open-quote' },
  {
    why: 'wavelengths that no table of weights has',
    text: bandCsv(BANDS.map((nm) => nm + 5)),
    line: 1,
    problem: 'spectrum-steps',
  },
  { why: 'uneven wavelengths', text: bandCsv([400, 410, 430]), line: 1, problem: 'spectrum-steps' },
  {
    why: 'a spectrum that ends early',
    text: bandCsv(BANDS.slice(0, 20)),
    line: 1,
    problem: 'spectrum-range',
  },
  { why: 'a negative reflectance', text: bandCsv(BANDS, '-0.5'), line: 2, problem: 'impossible-colour' },
  { why: 'CGATS without its end', text: cgatsWithout('END_DATA'), line: 12, problem: 'unfinished' },
  {
    why: 'CGATS with a set missing',
    text: cgatsWithout('2 new 9.55e1 -0.8 2.2'),
    line: 11,
    problem: 'wrong-row-count',
  },
  {
    why: 'CGATS with an open quote',
    text: CGATS.join('\n').replace('left"', 'left'),
    line: 11,
    problem: 'open-quote',
  },
  { why: 'a file beyond the limit', text: 'L,a,b\n'.padEnd(2_000_001, ' '), line: 1, problem: 'too-large' },
  { why: 'too many rows', text: `L,a,b\n${'1,2,3\n'.repeat(5001)}`, line: 1, problem: 'too-many-rows' },
  { why: 'too many columns', text: `L,a,b${',x'.repeat(600)}\n1`, line: 1, problem: 'too-many-columns' },
];

describe('parseReadingFile refuses', () => {
  test.each(REFUSED)('$why, naming line $line', ({ text, line, problem }) => {
    const parsed = parse(text);
    expect(parsed.ok ? 'accepted' : parsed.failure.map((fault) => `${fault.line} ${fault.problem}`)).toEqual([
      `${line} ${problem}`,
    ]);
  });

  test('every bad line at once, up to twenty', () => {
    const parsed = parse(`L,a,b\n${'x,0,0\n'.repeat(100)}`);
    expect(parsed.ok ? 0 : parsed.failure.length).toBe(20);
    expect(parsed.ok ? '' : parsed.failure[3]?.line).toBe(5);
  });

  test('every open quote at once, up to twenty', () => {
    const parsed = parse(`L,a,b\n${'"50,0,0\n'.repeat(100)}`);
    expect(parsed.ok ? [] : parsed.failure.map(({ line }) => line)).toEqual(
      Array.from({ length: 20 }, (_, k) => k + 2),
    );
  });

  test('anything else without falling over, leaving the objects of the language alone', () => {
    const piece = fc.constantFrom(
      'L',
      'a',
      'b',
      '"',
      ',',
      ';',
      '\n',
      '__proto__',
      'BEGIN_DATA\n',
      'BEGIN_DATA_FORMAT\n',
      'END_DATA\n',
      '1',
      '-',
      '400',
      '#',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => {
        expect(typeof parse(pieces.join('')).ok).toBe('boolean');
      }),
      { numRuns: 500 },
    );
    expect(Object.keys(Object.prototype)).toEqual([]);
  });
});
