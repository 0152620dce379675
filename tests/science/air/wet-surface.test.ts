import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { relativeHumidityFromDewPoint } from '../../../src/science/air/dew-point';
import { saturationPressurePa } from '../../../src/science/air/saturation';
import { FILM_COOLING_SHARE, type WetSolvent } from '../../../src/science/air/wet-surface';
import published from '../../reference/wet-surface.json';
import { expectWithin } from './close';
import { wetSurfaceC } from './wet-alone';

type Row = (typeof published.rows)[number];

const liquid = ({ antoine: { A, B, C }, latentHeatJMol, airDiffusivityM2S }: Row): WetSolvent => ({
  latentHeatJMol,
  airDiffusivityM2S,
  vapourPressurePa: (temperatureC) => 1e5 * 10 ** (A - B / (temperatureC + 273.15 + C)),
});
const solvent = (id: string): WetSolvent => {
  const row = published.rows.find((candidate) => candidate.solvent === id);
  if (!row) throw new Error(`No reference row of ${id}.`);
  return liquid(row);
};

// An independent evaluation with air properties that follow the temperature, printed to 0.1 K.
describe.each(published.rows)('$solvent', (row) => {
  test.each(['20', '25', '26.7'] as const)('in air of %s °C', (airC) => {
    const surfaceC = wetSurfaceC(liquid(row), Number(airC));
    expectWithin(surfaceC, row.surfaceC[airC], 0.2);
    // Printed to whole per cent; 0.2 K of surface is up to 1.5 % of humidity.
    const critical = relativeHumidityFromDewPoint(Number(airC), surfaceC);
    expectWithin(critical, row.criticalRelativeHumidity[airC], 0.02);
  });
});

test('covers the whole reference', () => {
  expect(published.rows).toHaveLength(19);
});

test('what boils in the cold is colder than its boiling point, in air however warm', () => {
  // An invented liquid that boils at 10 °C: its pressure doubles every 10 K.
  const boils = {
    latentHeatJMol: 25_000,
    airDiffusivityM2S: 1e-5,
    vapourPressurePa: (C: number) => 101_325 * 2 ** ((C - 10) / 10),
  };
  expect(wetSurfaceC(boils, 50)).toBeLessThan(10);
  expect(wetSurfaceC(boils, 50)).toBeGreaterThan(-23);
});

test('water in dry air of 25 °C: 7.77 °C by the reference (its wet bulb is 8.27 °C)', () => {
  // Latent heat 43.99 kJ/mol (CRC Handbook, from memory); vapour diffusivity 0.26 cm2/s (from memory, 0.25 to 0.26).
  const water = { latentHeatJMol: 43_990, airDiffusivityM2S: 2.6e-5, vapourPressurePa: saturationPressurePa };
  expectWithin(wetSurfaceC(water, 25), 7.77, 0.3);
});

describe('blush resistance at 26.7 °C', () => {
  // The humidities at which the dew point meets a film that cools by the highest and the lowest share.
  const bandOf = (id: string) => {
    const coolingK = 26.7 - wetSurfaceC(solvent(id), 26.7);
    const at = (share: number) => relativeHumidityFromDewPoint(26.7, 26.7 - share * coolingK);
    return { lowest: at(FILM_COOLING_SHARE.highest), highest: at(FILM_COOLING_SHARE.lowest) };
  };
  // n-butyl acetate 83 %: a producer's sheet (read). Ethyl acetate 38 %: lacquer-solvent tables (from memory).
  test.each([
    { id: 'n-butyl-acetate', published: 0.83 },
    { id: 'ethyl-acetate', published: 0.38 },
  ])('$id: $published lies in the band', ({ id, published }) => {
    const band = bandOf(id);
    expect(published).toBeGreaterThan(band.lowest);
    expect(published).toBeLessThan(band.highest);
  });

  test('isobutyl acetate, about 80 % (from memory), is at most 2 % above the band', () => {
    const band = bandOf('isobutyl-acetate');
    expectWithin(band.highest, 0.8, 0.02);
  });
});

describe('sense', () => {
  test('warmer air: a warmer surface, and more cooling', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...published.rows),
        fc.double({ min: 0, max: 49, noNaN: true }),
        (row, airC) => {
          const cool = wetSurfaceC(liquid(row), airC);
          const warm = wetSurfaceC(liquid(row), airC + 1);
          expect(warm).toBeGreaterThan(cool);
          expect(airC + 1 - warm).toBeGreaterThan(airC - cool);
        },
      ),
    );
  });

  test('thin air on a mountain cools more', () => {
    expect(wetSurfaceC(solvent('toluene'), 20, 79_495)).toBeLessThan(wetSurfaceC(solvent('toluene'), 20));
  });

  test('faster solvents stand colder: acetone, ethyl acetate, toluene, n-butyl acetate, 2-butoxyethanol', () => {
    const surfaces = ['acetone', 'ethyl-acetate', 'toluene', 'n-butyl-acetate', '2-butoxyethanol'].map((id) =>
      wetSurfaceC(solvent(id), 20),
    );
    expect(surfaces).toEqual(surfaces.toSorted((a, b) => a - b));
  });
});

test.each([
  { why: 'air of -5 °C', run: () => wetSurfaceC(solvent('acetone'), -5) },
  { why: 'NaN air', run: () => wetSurfaceC(solvent('acetone'), Number.NaN) },
  { why: 'a pressure in hPa', run: () => wetSurfaceC(solvent('acetone'), 20, 1013) },
])('refuses $why', ({ run }) => {
  expect(run).toThrow(RangeError);
});
