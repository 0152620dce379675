import { expect, test } from 'vitest';
import { UNITS, type Unit } from '../../src/logbook/unit';

// NIST Special Publication 811 (2008), appendix B.8: international inch and foot, pound 0.45359237 kg, US gallon 3.785411784 L and its
// 128th; the imperial gallon, 4.54609 L, and its 160th: Units of Measurement Regulations 1995. A month is a twelfth of 365.25 days.
const SI: Readonly<Record<Unit, number>> = {
  um: 1e-6,
  mil: 25.4e-6,
  C: 274.15, // 1 °C
  F: 255.927_777_8, // 1 °F
  mm: 1e-3,
  cm: 1e-2,
  in: 0.0254,
  mm2: 1e-6,
  m2: 1,
  cm2: 1e-4,
  ft2: 0.092_903_04,
  in2: 6.4516e-4,
  m: 1,
  ft: 0.3048,
  '%': 0.01,
  ratio: 1,
  s: 1,
  min: 60,
  h: 3600,
  d: 86_400,
  m3: 1,
  ft3: 0.028_316_846_592,
  'm3/h': 1 / 3600,
  cfm: 4.719_474_432e-4,
  g: 1e-3,
  mL: 1e-6,
  L: 1e-3,
  'fl-oz-us': 29.573_529_562_5e-6,
  'fl-oz-imperial': 28.413_062_5e-6,
  'g/mL': 1000,
  'lb/gal': 119.826_427_3,
  'lb-cut': 119.826_427_3,
  'g/L': 1,
  'm2/L': 1000,
  'ft2/gal': 24.542_386_8,
  drops: 1,
  parts: 1,
  months: 2_629_800,
};

test.each(Object.entries(SI) as [Unit, number][])('one %s is %d in SI, and back', (unit, si) => {
  const { toSi, fromSi } = UNITS[unit];
  expect(toSi(1) / si).toBeCloseTo(1, 6);
  for (const amount of [-7, 0.5, 1, 3, 250]) expect(fromSi(toSi(amount))).toBeCloseTo(amount, 9);
});

test('every unit stands here', () => expect(Object.keys(SI).sort()).toEqual(Object.keys(UNITS).sort()));
