import { expect, test } from 'vitest';
import { readingsFromFile } from '../../../src/actions/match/readings-from-file';

const CGATS = `CGATS.17
NUMBER_OF_FIELDS 4
BEGIN_DATA_FORMAT
SAMPLE_ID LAB_L LAB_A LAB_B
END_DATA_FORMAT
NUMBER_OF_SETS 2
BEGIN_DATA
lid 86.5 -0.6 14.8
side 86.4 -0.5 14.7
END_DATA
`;

test('readings of a CGATS file are offered by name, as colours under the light of the match', () => {
  const read = readingsFromFile(CGATS, 'D65/10');
  expect(read).toMatchObject({
    ok: true,
    value: [
      {
        name: 'lid',
        white: 'D65/10',
        reading: { as: 'lab', L: { text: '86.5' }, a: { text: '-0.6' }, b: { text: '14.8' } },
      },
      { name: 'side' },
    ],
  });
});

const nm = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
const SPECTRA = `name,${nm.join(',')}\ncard,${nm.map(() => '0.62').join(',')}\n`;

test('a spectrum is kept as one, for it can be seen under every light', () => {
  const read = readingsFromFile(SPECTRA, 'D65/10');
  expect(read.ok && read.value[0]?.reading).toMatchObject({ as: 'spectrum', startNm: 400, stepNm: 10 });
});

test.each([
  {
    what: 'a word for a number',
    text: 'L*,a*,b*\n86.5,-0.6,14.8\n86,x,14\n',
    line: 'Line 3: “x” is no number.',
  },
  { what: 'L* over 100', text: 'L*,a*,b*\n104,0,2\n', line: 'Line 2: no surface can be L* 104.' },
  {
    what: 'a file without colour',
    text: 'name,weight\nlid,12\n',
    line: 'Line 1: no columns of L*a*b*, XYZ or reflectance are named here (it says “name weight”).',
  },
  {
    what: 'a CGATS file cut short',
    text: CGATS.replace('END_DATA\n', '').replace('side 86.4 -0.5 14.7\n', 'side 86.4\n'),
    line: /^Line \d+: /,
  },
])('$what is named by its line', ({ text, line }) => {
  const read = readingsFromFile(text, 'D65/10');
  expect(read.ok ? '' : read.failure[0]).toMatch(line);
});
