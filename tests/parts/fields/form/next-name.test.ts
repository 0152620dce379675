import { expect, test } from 'vitest';
import { freeName, nextName } from '../../../../src/parts/fields/form/next-name';

test.each([
  { name: 'Chair', taken: [], next: 'Chair 2' },
  { name: 'Chair 2', taken: ['Chair', 'Chair 2'], next: 'Chair 3' },
  { name: 'Chair', taken: ['Chair 2', 'Chair 3'], next: 'Chair 4' },
  { name: 'Box of 1890', taken: [], next: 'Box of 1890 2' },
])('after $name comes $next', ({ name, taken, next }) => expect(nextName(name, taken)).toBe(next));

test.each([
  { name: 'Gloss', taken: [], free: 'Gloss' },
  { name: 'Gloss', taken: ['Gloss'], free: 'Gloss 2' },
  { name: 'Gloss', taken: ['Gloss', 'Gloss 2'], free: 'Gloss 3' },
])('with $taken on the shelf another is called $free', ({ name, taken, free }) => {
  expect(freeName(name, taken)).toBe(free);
});
