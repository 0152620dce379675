import { expect, test } from 'vitest';
import { jarCode, readCode } from '../../../src/shop/jar/code';

test.each([
  // The last 30 bits in base 32: 0, 1, and all ones
  { tail: '00000000', code: '000-000' },
  { tail: '00000001', code: '000-001' },
  { tail: 'ffffffff', code: 'ZZZ-ZZZ' },
  // 0x3fffffff and the same with the two bits above it
  { tail: '3fffffff', code: 'ZZZ-ZZZ' },
  // 1 x 32^5 + 2 x 32 + 31
  { tail: '0200005f', code: '100-02Z' },
])('an id that ends in $tail has the code $code', ({ tail, code }) => {
  expect(jarCode(`019caa01-0000-7000-9000-0000${tail}`)).toBe(code);
});

test.each([
  { typed: 'k7q-2md', code: 'K7Q-2MD' },
  { typed: ' K7Q 2MD ', code: 'K7Q-2MD' },
  { typed: 'olI-000', code: '011-000' }, // letters that a pen confuses
  { typed: 'K7Q-2M', code: undefined },
  { typed: 'K7Q-2MDX', code: undefined },
  { typed: 'UUU-UUU', code: undefined },
  { typed: '', code: undefined },
])('"$typed" reads as $code', ({ typed, code }) => {
  expect(readCode(typed)).toBe(code);
});
