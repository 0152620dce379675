import { expect, test } from 'vitest';
import { filmSolvent } from '../../../src/estimator/laws/film-solvents';
import { type SolventId, solvent } from '../../../src/science/solvents/solvents';
import { vapourPressurePa } from '../../../src/science/solvents/vapour-pressure';

const IDS: readonly SolventId[] = [
  'acetone',
  'toluene',
  'ethanol',
  'n-butyl-acetate',
  '2-butoxyethanol',
  'pm',
];
const volume = (id: SolventId) => solvent(id).molarMassKgMol / solvent(id).densityKgM3;

// The published set of Antoine (bar, kelvin, power of ten) that the science holds.
test.each(IDS)('%s has in a film the vapour pressure that it has by itself', (id) => {
  const { lnA, lnB, cK } = filmSolvent(id).vapour;
  for (const temperatureK of [273.15, 294.15, 313.15])
    expect(
      Math.exp(lnA - lnB / (temperatureK + cK)) / vapourPressurePa(solvent(id), temperatureK),
    ).toBeCloseTo(1, 9);
});

// Fitted to common practice together with the prior, no source: relative to toluene; a larger molecule is slower.
test('those that were fitted keep their order', () => {
  const ratios = (
    ['acetone', 'mek', 'toluene', 'isobutyl-acetate', 'n-butyl-acetate', '2-butoxyethanol'] as const
  ).map((id) => filmSolvent(id).ratio);
  expect(ratios).toEqual([...ratios].sort((a, b) => b - a));
  expect(filmSolvent('toluene').ratio).toBe(1);
});

test('the others are the slower the larger, by the power -0.95 of their molar volume', () => {
  expect(filmSolvent('ethanol').ratio).toBeCloseTo((volume('ethanol') / volume('toluene')) ** -0.95, 12);
  expect(filmSolvent('ethanol').ratio).toBeGreaterThan(filmSolvent('isopropanol').ratio);
});

// As 2-butoxyethanol shows (judgement by it alone): three tenths slower than their size says.
test.each(['pm', 'dpm', 'dpnb', 'diacetone-alcohol'] as const)('%s binds to the film former', (id) => {
  expect(filmSolvent(id).ratio / (volume(id) / volume('toluene')) ** -0.95).toBeCloseTo(0.7, 12);
});
