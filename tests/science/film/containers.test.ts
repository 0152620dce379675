import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Container, LACQUER_A_SPRAY_CAN_M3, toBuy } from '../../../src/science/film/containers';

// A US quart is a quarter of 3.785411784 L (exact); the larger size from three small ones on: common practice, no source.
test.each([
  { litres: 0.5, sold: 'us', bought: [{ size: 'quart', count: 1 }] },
  { litres: 0.946352946, sold: 'us', bought: [{ size: 'quart', count: 1 }] },
  { litres: 0.95, sold: 'us', bought: [{ size: 'quart', count: 2 }] },
  { litres: 2, sold: 'us', bought: [{ size: 'gallon', count: 1 }] },
  {
    litres: 4,
    sold: 'us',
    bought: [
      { size: 'gallon', count: 1 },
      { size: 'quart', count: 1 },
    ],
  },
  { litres: 1, sold: 'metric', bought: [{ size: 'litre', count: 1 }] },
  { litres: 1.2, sold: 'metric', bought: [{ size: 'litre', count: 2 }] },
  { litres: 2.5, sold: 'metric', bought: [{ size: 'five-litres', count: 1 }] },
  { litres: 0.6, sold: 'spray-can', bought: [{ size: 'spray-can', count: 3 }] },
  { litres: 0, sold: 'us', bought: [] },
  { litres: 0, sold: 'spray-can', bought: [] },
  { litres: Number.NaN, sold: 'spray-can', bought: [] },
] as const)('$litres L, sold $sold, is $bought', ({ litres, sold, bought }) =>
  expect(toBuy(litres / 1000, sold)).toEqual(bought),
);

const HOLDS_M3: Record<Container, number> = {
  quart: 3.785411784e-3 / 4,
  gallon: 3.785411784e-3,
  litre: 1e-3,
  'five-litres': 5e-3,
  'spray-can': LACQUER_A_SPRAY_CAN_M3,
};

test('what is bought is never too little', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 0.1, noNaN: true }),
      fc.constantFrom('us', 'metric', 'spray-can'),
      (m3, sold) => {
        const held = toBuy(m3, sold).reduce((sum, { size, count }) => sum + count * HOLDS_M3[size], 0);
        expect(held).toBeGreaterThanOrEqual(m3 * (1 - 1e-8));
      },
    ),
  );
});
