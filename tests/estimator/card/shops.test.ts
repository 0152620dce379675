import { expect, test } from 'vitest';
import { shops, summary } from './shops';

// Twelve shops with constants drawn from the prior; the whole three hundred are printed by `npm run learning-sim`.
const outcomes = shops(12, 'inside', 7);
const { nothing, card, all } = {
  nothing: summary(outcomes, 'nothing'),
  card: summary(outcomes, 'card'),
  all: summary(outcomes, 'card and both'),
};

test('a card narrows the band of the piece, and thumb and paper with it no less', () => {
  expect(nothing.factor).toBeGreaterThan(2);
  expect(card.factor).toBeLessThan(nothing.factor * 0.75);
  expect(all.factor).toBeLessThanOrEqual(card.factor);
  expect(card.error).toBeLessThan(nothing.error);
});

// A band of eight in ten holds fewer than six of twelve once in two hundred and fifty times (binomial).
test.each(['nothing', 'thumb', 'paper', 'card', 'card and both'] as const)(
  'the band after %s holds about eight in ten',
  (way) => {
    const { inside } = summary(outcomes, way);
    expect(inside).toBeGreaterThanOrEqual(6 / 12);
  },
);
