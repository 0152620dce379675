import { expect, test } from 'vitest';
import { quantity } from '../../../src/logbook/typed';
import { volumeSolidsOfCut } from '../../../src/science/film/cut';

// 1 lb = 0.45359237 kg and 1 US gallon = 3.785411784 L exactly, so a 2-pound cut is 239.65 g/L. Flakes at 1,150 kg/m3 (from memory).
test.each([
  { text: '1', gL: 119.83, solids: 0.0944 },
  { text: '2', gL: 239.65, solids: 0.1725 },
  { text: '3', gL: 359.48, solids: 0.2381 },
])('a $text-pound cut is $gL g/L', ({ text, gL, solids }) => {
  const cut = quantity({ text, unit: 'lb-cut' }).si;
  expect(cut).toBeCloseTo(gL, 2);
  expect(volumeSolidsOfCut(cut)).toBeCloseTo(solids, 4);
});
