import { describe, expect, test } from 'vitest';
import {
  CAMI_GRADES,
  closestPGrade,
  type Grit,
  grainUm,
  gritOf,
  P_GRADES,
} from '../../src/science/abrasives';
import published from '../reference/grain-sizes.json';

// FEPA 43 / ISO 6344 grain size table.
test.each(published.P)('P$grade: $grainUm um', ({ grade, grainUm: expected }) => {
  expect(grainUm({ scale: 'P', grade } as Grit)).toBe(expected);
});

test.each(published.CAMI)('US $grade: $grainUm um', ({ grade, grainUm: expected }) => {
  expect(grainUm({ scale: 'CAMI', grade } as Grit)).toBe(expected);
});

test('every grade is in the table, from coarse to fine', () => {
  expect(P_GRADES).toEqual(published.P.map(({ grade }) => grade));
  expect(CAMI_GRADES).toEqual(published.CAMI.map(({ grade }) => grade));
  const grains = P_GRADES.map((grade) => grainUm({ scale: 'P', grade }));
  expect(grains).toEqual(grains.toSorted((a, b) => b - a));
});

describe('the two scales are not one', () => {
  test('a US number is finer than the same P number', () => {
    for (const grade of CAMI_GRADES)
      expect(grainUm({ scale: 'CAMI', grade })).toBeLessThan(grainUm({ scale: 'P', grade }));
  });

  // From the printed sizes: 1000 = 10.3 um = P2000, 800 = 12.6 um = P1500; 23 um lies between 25.8 and 21.8 um.
  test.each([
    { grade: 1000, P: 2000 },
    { grade: 800, P: 1500 },
    { grade: 400, P: 800 },
    { grade: 240, P: 280 },
  ] as const)('US $grade is nearest to P$P', ({ grade, P }) => {
    expect(closestPGrade({ scale: 'CAMI', grade })).toBe(P);
  });

  test('a P grade is nearest to itself', () => {
    for (const grade of P_GRADES) expect(closestPGrade({ scale: 'P', grade })).toBe(grade);
  });
});

describe('a paper as a person names it', () => {
  test.each([
    { text: 'P800', paper: { scale: 'P', grade: 800 } },
    { text: ' p 1500 ', paper: { scale: 'P', grade: 1500 } },
    { text: '600', paper: { scale: 'CAMI', grade: 600 } },
    { text: '', paper: undefined },
    { text: 'P3000', paper: undefined }, // exists, but no grain size was found
    { text: '700', paper: undefined },
    { text: 'steel wool', paper: undefined },
  ])('"$text"', ({ text, paper }) => {
    expect(gritOf(text)).toEqual(paper);
  });
});
