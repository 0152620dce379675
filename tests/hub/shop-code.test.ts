import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inFours, linkOf, newPassword, newSecret, readCode, writeCode } from '../../src/hub/shop-code';

const HERE = 'https://shop.example/wait/';
const SIGNS = '0123456789abcdefghjkmnpqrstvwxyz';
const signs = (length: number) =>
  fc.array(fc.constantFrom(...SIGNS), { minLength: length, maxLength: length }).map((all) => all.join(''));
const codes = fc.record({ password: signs(20), secret: fc.oneof(signs(32), fc.constant(undefined)) });

test('a code is read as it was written, however it is passed on', () => {
  fc.assert(
    fc.property(codes, (code) => {
      const word = writeCode(code);
      const said = [word, inFours(word), linkOf(`${HERE}#/bench`, word), ` ${word.toUpperCase()}\n`];
      said.push(word.replaceAll('0', 'O').replaceAll('1', 'l'));
      for (const one of said) expect(readCode(one, `${HERE}#/more/hub`)).toEqual({ ok: true, value: code });
    }),
  );
});

test('one wrong sign, or two neighbours swapped, is always told', () => {
  fc.assert(
    fc.property(codes, fc.nat(), fc.integer({ min: 1, max: 31 }), (code, where, by) => {
      const word = [...writeCode(code)];
      const at = where % word.length;
      const sign = word[at] ?? '';
      const wrong = word.with(at, SIGNS[(SIGNS.indexOf(sign) + by) % 32] ?? '');
      expect(readCode(wrong.join(''), HERE)).toEqual({ ok: false, failure: { kind: 'mistyped' } });
      const next = word[at + 1];
      if (next === undefined || next === sign) return;
      const swapped = word.with(at, next).with(at + 1, sign);
      expect(readCode(swapped.join(''), HERE)).toMatchObject({ ok: false });
    }),
  );
});

test.each([
  { said: '', kind: 'empty' },
  { said: ' - ', kind: 'empty' },
  { said: 'K7Q2', kind: 'incomplete' },
  { said: 'what is this?', kind: 'mistyped' },
  {
    said: `https://other.example/#/more/hub/${writeCode({ password: newPassword(), secret: newSecret() })}`,
    kind: 'elsewhere',
  },
])('"$said" is $kind', ({ said, kind }) => {
  expect(readCode(said, HERE)).toMatchObject({ ok: false, failure: { kind } });
});

test('a link to the page by its name is one to the same app', () => {
  const code = { password: newPassword(), secret: newSecret() };
  const link = linkOf(`${HERE}index.html`, writeCode(code));
  expect(readCode(link, `${HERE}#/more`)).toEqual({ ok: true, value: code });
});
