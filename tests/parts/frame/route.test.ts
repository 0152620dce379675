import fc from 'fast-check';
import { expect, test } from 'vitest';
import { linkTo, PLACES, parseHash } from '../../../src/parts/frame/route';

test.each([
  { hash: '', place: 'bench', rest: [] },
  { hash: '#/', place: 'bench', rest: [] },
  { hash: '#/mix', place: 'mix', rest: [] },
  { hash: '#/piece/018f-a/why', place: 'piece', rest: ['018f-a', 'why'] },
  { hash: '#/piece/two%20words', place: 'piece', rest: ['two words'] },
  { hash: '#/piece/%E0%A4%A', place: 'piece', rest: ['%E0%A4%A'] },
  { hash: '#/nowhere/x', place: 'bench', rest: [] },
  { hash: '#main', place: 'bench', rest: [] },
])('$hash is the $place', ({ hash, place, rest }) => {
  expect(parseHash(hash)).toMatchObject({ place, rest });
});

test('a query stands after the path', () => {
  const { place, query } = parseHash('#/lay?piece=a%26b');
  expect([place, query.get('piece')]).toEqual(['lay', 'a&b']);
});

test('every link leads to its place', () => {
  const part = fc.string({ minLength: 1, unit: 'binary' }).filter((text) => text.isWellFormed());
  fc.assert(
    fc.property(fc.constantFrom(...PLACES), fc.array(part, { maxLength: 4 }), (place, rest) => {
      expect(parseHash(linkTo(place, ...rest))).toMatchObject({ place, rest });
    }),
  );
});
