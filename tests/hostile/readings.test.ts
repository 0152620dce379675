import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { readingsFromFile } from '../../src/actions/match/readings-from-file';
import { parseHash } from '../../src/parts/frame/route';
import { jarIdOf, readCode } from '../../src/shop/jar/code';
import { isPolluted, NASTY_TEXTS } from './nasty';

let tried = 0;
afterAll(() => void process.stdout.write(`hostile readings, codes and addresses tried: ${tried}\n`));

const CSV = 'name,L,a,b\nlid,92.1,-0.5,6.2\nside,91.8,-0.4,6.6\n';
const CGATS = `CGATS.17
ORIGINATOR "x"
NUMBER_OF_FIELDS 4
BEGIN_DATA_FORMAT
SAMPLE_ID LAB_L LAB_A LAB_B
END_DATA_FORMAT
NUMBER_OF_SETS 2
BEGIN_DATA
1 92.1 -0.5 6.2
2 91.8 -0.4 6.6
END_DATA
`;
const nastyText = fc.oneof(
  fc.constantFrom<string>(...NASTY_TEXTS),
  fc.constantFrom(
    ',',
    '"',
    '""',
    '\n',
    '\r',
    '\t',
    ';',
    '\ufeff',
    'BEGIN_DATA',
    'END_DATA',
    'NUMBER_OF_SETS 1e9',
  ),
  fc.string({ unit: 'binary', maxLength: 20 }),
);

function expectReadOrTold(text: string): void {
  tried++;
  const read = readingsFromFile(text, 'D65/10');
  if (read.ok) expect(read.value.every(({ reading }) => ['lab', 'spectrum'].includes(reading.as))).toBe(true);
  else expect(read.failure.join('')).toMatch(/\S/);
  expect(isPolluted()).toBe(false);
}

test('a file of readings with anything anywhere in it is read, or told line by line', () => {
  const splice = fc.record({
    base: fc.constantFrom(CSV, CGATS),
    from: fc.nat({ max: 220 }),
    gone: fc.nat({ max: 40 }),
    more: fc.array(nastyText, { minLength: 1, maxLength: 3 }),
  });
  fc.assert(
    fc.property(splice, ({ base, from, gone, more }) => {
      expectReadOrTold(base.slice(0, from) + more.join('') + base.slice(from + gone));
      expectReadOrTold(base.slice(0, from));
      expectReadOrTold(more.join('\n'));
    }),
    { numRuns: 1_000 },
  );
});

test('a code and an address with anything in them lead nowhere else', () => {
  fc.assert(
    fc.property(nastyText, nastyText, (one, other) => {
      tried += 3;
      const code = readCode(one + other);
      expect(code === undefined || /^[0-9A-HJKMNP-TV-Z]{3}-[0-9A-HJKMNP-TV-Z]{3}$/.test(code)).toBe(true);
      const jar = jarIdOf(`${one}#/mix/jar/${other}`);
      expect(jar === undefined || /^[0-9a-f-]{36}$/.test(jar)).toBe(true);
      expect(typeof parseHash(`#/${one}/${other}?${one}`).place).toBe('string');
      expect(isPolluted()).toBe(false);
    }),
    { numRuns: 1_000 },
  );
});
