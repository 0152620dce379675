import { describe, expect, test } from 'vitest';
import { blushOutlook, dewPointMarginK, relativeHumidityForMargin } from '../../../src/science/air/blush';
import { dewPointC, relativeHumidityFromDewPoint } from '../../../src/science/air/dew-point';
import { correctedRelativeHumidity } from '../../../src/science/air/hygrometer';
import { expectWithin } from './close';

// A humid afternoon, a worked case of competent finishers (common practice, no source): values to 0.1 K.
describe('27 °C at 78 %, the piece at 24 °C', () => {
  test.each([
    { what: 'dew point', actual: () => dewPointC(27, 0.78), expected: 22.8 },
    { what: 'margin of the air', actual: () => dewPointMarginK(27, 27, 0.78), expected: 4.2 },
    { what: 'margin of the piece', actual: () => dewPointMarginK(24, 27, 0.78), expected: 1.2 },
    { what: 'warm piece at 60 %', actual: () => dewPointMarginK(27, 27, 0.6), expected: 8.4 },
    { what: 'warm piece at 50 %', actual: () => dewPointMarginK(27, 27, 0.5), expected: 11.3 },
  ])('$what: $expected', ({ actual, expected }) => expectWithin(actual(), expected, 0.05));

  test.each([
    { pieceC: 24, humidity: 0.78, outlook: 'below-floor' },
    { pieceC: 27, humidity: 0.78, outlook: 'expect-blush' },
    { pieceC: 27, humidity: 0.6, outlook: 'care' },
    { pieceC: 27, humidity: 0.5, outlook: 'easy' },
  ])('$pieceC °C at humidity $humidity: $outlook', ({ pieceC, humidity, outlook }) => {
    expect(blushOutlook(dewPointMarginK(pieceC, 27, humidity))).toBe(outlook);
  });
});

// 3 K floor (ISO 8502-4 practice); 11 K easy, 5 to 11 K care, under 5 K expect blush (common practice).
test.each([
  { marginK: -1, outlook: 'below-floor' },
  { marginK: 2.99, outlook: 'below-floor' },
  { marginK: 3, outlook: 'expect-blush' },
  { marginK: 4.99, outlook: 'expect-blush' },
  { marginK: 5, outlook: 'care' },
  { marginK: 10.99, outlook: 'care' },
  { marginK: 11, outlook: 'easy' },
])('a margin of $marginK K: $outlook', ({ marginK, outlook }) => {
  expect(blushOutlook(marginK)).toBe(outlook);
});

test("a person's own limits count before the usual ones", () => {
  const own = { floorK: 3, careK: 4, easyK: 7 };
  expect(blushOutlook(4.5, own)).toBe('care');
  expect(blushOutlook(8, own)).toBe('easy');
});

// The 11 K rule as a humidity, computed apart from this code (printed to whole per cent).
test.each([
  { airC: 15, humidity: 0.47 },
  { airC: 20, humidity: 0.49 },
  { airC: 25, humidity: 0.5 },
  { airC: 30, humidity: 0.51 },
])('a margin of 11.1 K at $airC °C is a humidity of $humidity', ({ airC, humidity }) => {
  expectWithin(relativeHumidityForMargin(airC, airC, 11.1), humidity, 0.006);
});

// The 65 % rule as a margin, computed apart from this code.
test.each([
  { airC: 20, marginK: 6.8 },
  { airC: 25, marginK: 7.0 },
])('65 % at $airC °C leaves $marginK K', ({ airC, marginK }) => {
  expectWithin(dewPointMarginK(airC, airC, 0.65), marginK, 0.05);
});

test('a piece much warmer than the air keeps its margin even in saturated air', () => {
  expect(relativeHumidityForMargin(20, 35, 11)).toBe(1);
});

test('the humidity for a margin gives that margin', () => {
  expectWithin(dewPointMarginK(22, 24, relativeHumidityForMargin(24, 22, 5)), 5, 1e-6);
  expect(relativeHumidityForMargin(24, 22, 5)).toBe(relativeHumidityFromDewPoint(24, 17));
});

test.each([
  { shown: 0.45, offset: 0.04, is: 0.49 },
  { shown: 0.45, offset: -0.04, is: 0.41 },
  { shown: 0.99, offset: 0.03, is: 1 },
  { shown: 0.02, offset: -0.05, is: 0.01 },
])('a hygrometer that shows $shown with $offset to add: $is', ({ shown, offset, is }) => {
  expectWithin(correctedRelativeHumidity(shown, offset), is, 1e-12);
});

test.each([
  { why: 'a piece at NaN', run: () => dewPointMarginK(Number.NaN, 20, 0.5) },
  { why: 'a NaN margin', run: () => blushOutlook(Number.NaN) },
  { why: 'a hygrometer in per cent', run: () => correctedRelativeHumidity(45, 0) },
  { why: 'a correction in per cent', run: () => correctedRelativeHumidity(0.45, 4) },
  { why: 'a NaN reading', run: () => correctedRelativeHumidity(Number.NaN, 0) },
])('refuses $why', ({ run }) => {
  expect(run).toThrow(RangeError);
});
