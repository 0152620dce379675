import { describe, expect, test } from 'vitest';
import { parseReadingFile } from '../../../src/science/colour/readings/reading-files';

const parse = (text: string) => parseReadingFile(text, 'D65/10');
const first = (text: string) => {
  const parsed = parse(text);
  return parsed.ok ? parsed.value[0] : expect.unreachable(JSON.stringify(parsed.failure));
};
const failure = (text: string) => {
  const parsed = parse(text);
  return parsed.ok ? [] : parsed.failure;
};
const BANDS = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
const bandCsv = (bands: readonly number[], values: readonly number[]) =>
  `${bands.join(',')}\n${values.join(',')}`;
const spectrumWith = (start: number, rest: number) =>
  bandCsv(
    BANDS,
    BANDS.map((_, i) => (i === 0 ? start : rest)),
  );
const cgats = (header: readonly string[], format = ['LAB_L LAB_A LAB_B'], rows = ['86.5 -0.6 14.8']) =>
  [
    'CGATS.17',
    ...header,
    'BEGIN_DATA_FORMAT',
    ...format,
    'END_DATA_FORMAT',
    'BEGIN_DATA',
    ...rows,
    'END_DATA',
  ].join('\n');

describe('the name of a reading', () => {
  test.each([
    {
      why: 'in quotes, with quotes and a comma in it',
      cell: '"cream ""old"", left"',
      name: 'cream "old", left',
    },
    { why: 'empty quotes', cell: '""', name: '' },
    { why: 'longer than is kept', cell: 'x'.repeat(120), name: 'x'.repeat(100) },
  ])('$why', ({ cell, name }) => {
    expect(first(`name,L,a,b\n${cell},86.5,-0.6,14.8`)).toMatchObject({ name, lab: { L: 86.5, b: 14.8 } });
  });

  test('where the file has none is empty', () => {
    expect(first('L,a,b\n86.5,-0.6,14.8')?.name).toBe('');
  });

  test('comes after what a # says', () => {
    expect(first('# by somebody, on a Monday\nname,L,a,b\n# the lid\ncream,86.5,-0.6,14.8')).toMatchObject({
      line: 4,
      name: 'cream',
    });
  });
});

test('a reading is what its line says, and no more', () => {
  const lab = { white: 'D65/10', L: 86.5, a: -0.6, b: 14.8 };
  expect(first('name,L,a,b\ncream,86.5,-0.6,14.8')).toEqual({ line: 2, name: 'cream', lab });
  const spectrum = { startNm: 400, stepNm: 10, reflectance: BANDS.map(() => 0.5) };
  expect(first(spectrumWith(0.5, 0.5))).toEqual({ line: 2, name: '', spectrum });
});

test('comments and empty lines among the sets of CGATS are no sets', () => {
  const rows = ['# the lid', '', 'cream# 86.5 -0.6 14.8 # by daylight', 'white 95.5 -0.8 2.2'];
  const parsed = parse(cgats([], ['SAMPLE_ID LAB_L LAB_A LAB_B'], rows));
  expect(parsed.ok && parsed.value.map(({ line, name }) => `${line} ${name}`)).toEqual([
    '8 cream#',
    '9 white',
  ]);
});

describe('the colour of a reading', () => {
  test('is its L*a*b* where XYZ stand beside it', () => {
    expect(first('X,Y,Z,L,a,b\n1,2,3,86.5,-0.6,14.8')?.lab).toEqual({
      white: 'D65/10',
      L: 86.5,
      a: -0.6,
      b: 14.8,
    });
  });

  test('stands beside its spectrum', () => {
    const reading = first(`L,a,b,${BANDS.join(',')}\n50,0,0,${BANDS.map(() => 0.2).join(',')}`);
    expect(reading?.lab?.L).toBe(50);
    expect(reading?.spectrum?.reflectance).toEqual(BANDS.map(() => 0.2));
  });

  test('of a spectrum goes from short to long waves, however its columns stand', () => {
    const values = BANDS.map((nm) => nm / 1000);
    const turned = first(bandCsv(BANDS.toReversed(), values.toReversed()));
    expect(turned?.spectrum).toEqual({ startNm: 400, stepNm: 10, reflectance: values });
  });

  test('of a dark sample is in per cent where a lighter one shows that the file is', () => {
    const values = [1.5, 50].map((percent) => BANDS.map(() => percent).join(','));
    const parsed = parse([BANDS.join(','), ...values].join('\n'));
    const firsts = parsed.ok ? parsed.value.map(({ spectrum }) => spectrum?.reflectance[0]) : [];
    expect(firsts).toEqual([expect.closeTo(0.015, 12), expect.closeTo(0.5, 12)]);
  });

  // Over 2 anywhere is per cent; a little over 1 and a little under 0 an instrument may read (judgement, no source).
  test.each([
    { start: 1.5, rest: 0.5, reads: 1.5 },
    { start: -0.02, rest: 0.5, reads: -0.02 },
    { start: 1.5, rest: 50, reads: 0.015 },
    { start: 2, rest: 0.5, reads: undefined },
    { start: 1.51, rest: 0.5, reads: undefined },
    { start: -0.021, rest: 0.5, reads: undefined },
  ])('beginning with $start beside $rest reads $reads', ({ start, rest, reads }) => {
    const parsed = parse(spectrumWith(start, rest));
    const read = parsed.ok ? parsed.value[0]?.spectrum?.reflectance[0] : undefined;
    if (reads === undefined) expect(read).toBeUndefined();
    else expect(read).toBeCloseTo(reads, 12);
  });
});

describe('the light of a reading', () => {
  test.each([
    { why: 'in small letters', text: 'L,a,b,illuminant,observer\n50,0,0,d50,2 degree', white: 'D50/2' },
    { why: 'the light alone', text: 'L,a,b,illuminant\n50,0,0,A', white: 'A/10' },
    { why: 'the observer alone', text: 'L,a,b,observer\n50,0,0,2', white: 'D65/2' },
    { why: 'a light in the headings alone', text: 'L*(D50),a*(D50),b*(D50)\n50,0,0', white: 'D50/10' },
    { why: 'an observer in the headings alone', text: 'L*(2°),a*(2°),b*(2°)\n50,0,0', white: 'D65/2' },
    { why: 'its own before the headings’', text: 'L*(D50),a,b,illuminant\n50,0,0,A', white: 'A/10' },
    { why: 'words of CGATS', text: cgats(['ILLUMINATION_NAME "D50"', 'OBSERVER_ANGLE "2"']), white: 'D50/2' },
    { why: 'other words of CGATS', text: cgats(['ILLUMINANT "A"', 'OBSERVER "2 degree"']), white: 'A/2' },
    { why: 'blanks around it', text: cgats(['ILLUMINANT_NAME " a "']), white: 'A/10' },
    {
      why: 'small letters in a weighting function',
      text: cgats(['WEIGHTING_FUNCTION " illuminant , D50"', 'WEIGHTING_FUNCTION "observer, 2 degree"']),
      white: 'D50/2',
    },
  ])('$why: $white', ({ text, white }) => {
    expect(first(text)?.lab?.white).toBe(white);
  });
});

describe('what is told of a line that cannot be read', () => {
  test.each([
    { why: 'the word', text: 'L,a,b\n86.5,warm,14', line: 2, found: 'warm' },
    { why: 'the word, cut short', text: `L,a,b\n86.5,${'w'.repeat(60)},14`, line: 2, found: 'w'.repeat(40) },
    {
      why: 'a comma in a number where commas part the cells',
      text: 'L,a,b\n"86,5",0,14',
      line: 2,
      found: '86,5',
    },
    { why: 'the light', text: 'L,a,b,illuminant\n50,0,0,moon', line: 2, found: 'moon' },
    { why: 'light and observer', text: 'L,a,b,illuminant,observer\n50,0,0,A,7', line: 2, found: 'A 7' },
    { why: 'an observer without a number', text: 'L,a,b,observer\n50,0,0,far', line: 2, found: 'far' },
    { why: 'how many cells', text: 'L,a,b\n50,0', line: 2, found: '2' },
    { why: 'the part', text: 'L,a,b\n101,0,0', line: 2, found: 'L* 101' },
    { why: 'the headings', text: 'name,price\ncream,3', line: 1, found: 'name price' },
    {
      why: 'headings on two lines',
      text: cgats([], ['SAMPLE_ID', 'PRICE'], ['1 3']),
      line: 3,
      found: 'SAMPLE_ID PRICE',
    },
    {
      why: 'no rows where some were promised',
      text: cgats(['NUMBER_OF_SETS 2'], undefined, []),
      line: 4,
      found: '0',
    },
  ])('$why', ({ text, line, found }) => {
    expect(failure(text)).toMatchObject([{ line, found }]);
  });

  test('more sets than may be', () => {
    const most = (rows: number) => cgats([], undefined, Array<string>(rows).fill('1 2 3'));
    expect(parse(most(5000)).ok).toBe(true);
    expect(failure(most(5001))).toMatchObject([{ line: 5006, problem: 'too-many-rows' }]);
  });
});
