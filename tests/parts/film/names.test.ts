import { expect, test } from 'vitest';
import { stackBands } from '../../../src/parts/film/film-picture';
import { spacedNames } from '../../../src/parts/film/film-scale';

const WOOD_TOP = 228;
const coats = (count: number, perUm: number) =>
  stackBands(
    Array.from({ length: count }, (_, n) => ({
      key: `${n}`,
      label: `Coat ${n + 1}`,
      dryUm: 13,
      solventUm: 0,
    })),
    { width: 244, woodTop: WOOD_TOP, perUm },
  );

test('twelve coats that fill the picture are all named, newest first, none over another or on the wood', () => {
  const names = spacedNames(coats(12, 1.05), WOOD_TOP);
  expect(names.map(({ label }) => label)).toEqual(Array.from({ length: 12 }, (_, n) => `Coat ${12 - n}`));
  for (const [n, { y }] of names.entries()) {
    expect(y).toBeLessThanOrEqual(WOOD_TOP);
    if (n > 0) expect(y - (names[n - 1]?.y ?? 0)).toBeGreaterThanOrEqual(13 - 1e-9);
  }
});

test('where a film has no room for all, every so many are named, and the newest always', () => {
  const names = spacedNames(coats(12, 0.3), WOOD_TOP);
  expect(names.length).toBeLessThan(12);
  expect(names[0]?.label).toBe('Coat 12');
});
