import { expect, test } from 'vitest';
import { nextName } from '../../../src/screens/piece/next-name';

test.each([
  { name: 'Chair', taken: [], next: 'Chair 2' },
  { name: 'Chair 2', taken: ['Chair', 'Chair 2'], next: 'Chair 3' },
  { name: 'Chair', taken: ['Chair 2', 'Chair 3'], next: 'Chair 4' },
  { name: 'Box of 1890', taken: [], next: 'Box of 1890 2' },
])('after $name comes $next', ({ name, taken, next }) => expect(nextName(name, taken)).toBe(next));
