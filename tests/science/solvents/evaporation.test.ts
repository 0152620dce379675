import { describe, expect, test } from 'vitest';
import {
  draughtTransferMS,
  expectedEvaporationRate,
  quietPoolEvaporation,
  transferRatio,
} from '../../../src/science/solvents/evaporation';
import { type SolventId, solvent } from '../../../src/science/solvents/solvents';
import { vapourPressurePa } from '../../../src/science/solvents/vapour-pressure';
import { E1, E3, E5 } from '../../reference/evaporation.json';

const ID: Partial<Record<string, SolventId>> = {
  'n-butyl acetate': 'n-butyl-acetate',
  toluene: 'toluene',
  acetone: 'acetone',
  MEK: 'mek',
  'ethyl acetate': 'ethyl-acetate',
  MIBK: 'mibk',
  xylene: 'xylene-mixed',
  'n-butanol': 'n-butanol',
  ethanol: 'ethanol',
  IPA: 'isopropanol',
  'isobutyl acetate': 'isobutyl-acetate',
  isobutanol: 'isobutanol',
  MAK: 'mak',
  water: 'water',
};
const named = (name: string) => solvent(ID[name] as SolventId);
const pressures = E1.inputs.P25_Pa as Partial<Record<string, number>>;
const pressurePa = (name: string) => pressures[name] ?? vapourPressurePa(named(name), 298.15);

describe('E1: evaporation of quiet pools at 25 C, within 2 %', () => {
  const fluxes = Object.entries(E1.expected.flux_kg_m2_s);
  test('eight liquids', () => expect(fluxes).toHaveLength(8));
  test.each(fluxes)('%s: %s kg/(m2 s)', (name, expected) => {
    const ratio = quietPoolEvaporation(pressurePa(name), named(name)) / expected;
    expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
  });
  test.each(Object.entries(E1.expected.recession_um_s))('%s sinks %s um/s', (name, expected) => {
    const { densityKgM3 } = named(name);
    const recessionUmS = (quietPoolEvaporation(pressurePa(name), named(name)) / densityKgM3) * 1e6;
    expect(Math.abs(recessionUmS / expected - 1)).toBeLessThan(0.02);
  });
});

describe('E3: relative evaporation rates from vapour pressure', () => {
  const predicted = E3.expected.predicted as Record<string, number>;
  const listed = E3.expected.listed as Record<string, number>;
  const names = Object.keys(predicted).filter((name) => ID[name] !== undefined);
  const liquid = (name: string) => ({ ...named(name), vapourPressurePa: pressurePa(name) });
  test('heptane, propyl acetate and cyclohexanone are not in the table', () =>
    expect(names).toHaveLength(13));
  test.each(names)('%s', (name) => {
    const rate = expectedEvaporationRate(liquid(name), liquid('n-butyl acetate'));
    expect(Math.abs(rate / (predicted[name] as number) - 1)).toBeLessThan(0.05); // predicted from its own pressures, two or three figures
    const factor = name === 'acetone' ? 1.5 : 1.35;
    expect(Math.abs(Math.log(rate / (listed[name] as number)))).toBeLessThan(Math.log(factor));
  });
});

describe('E5: screening formula, within 0.02 mm/s', () => {
  const rows = Object.entries(E5.expected.k_mm_s).flatMap(([molarMass, expected]) =>
    expected.map((mmS, i) => ({
      gMol: Number(molarMass.slice(1)),
      airSpeedMS: E5.inputs.u_m_s[i] as number,
      mmS,
    })),
  );
  test('sixteen values', () => expect(rows).toHaveLength(16));
  test.each(rows)('$gMol g/mol at $airSpeedMS m/s: $mmS mm/s', ({ gMol, airSpeedMS, mmS }) => {
    const found = draughtTransferMS(airSpeedMS, { molarMassKgMol: gMol / 1000 }) * 1000;
    expect(Math.abs(found - mmS)).toBeLessThanOrEqual(0.02);
  });
  test('refuses still air', () =>
    expect(() => draughtTransferMS(0, { molarMassKgMol: 0.1 })).toThrow(RangeError));
});

test('a lighter molecule crosses the air faster; the scale is butyl acetate', () => {
  expect(transferRatio(solvent('n-butyl-acetate'))).toBe(1);
  expect(transferRatio(solvent('acetone'))).toBeGreaterThan(1.2); // (0.1058/0.0722)^(2/3) = 1.29
  expect(transferRatio(solvent('dpnb'))).toBeLessThan(1);
});
