import { expect, test } from 'vitest';
import { STANDARD_PRESSURE_PA, standardPressurePa } from '../../../src/science/air/atmosphere';
import {
  dewPointC,
  relativeHumidityFromDewPoint,
  vapourPressurePa,
} from '../../../src/science/air/dew-point';
import { humidityRatio } from '../../../src/science/air/humidity-ratio';
import { saturationPressurePa } from '../../../src/science/air/saturation';
import {
  humidityRatioFromWetBulb,
  relativeHumidityFromWetBulb,
  wetBulbC,
} from '../../../src/science/air/wet-bulb';
import published from '../../reference/psychrometrics.json';
import { expectWithin } from './close';

/** A row names only the inputs that its quantity has; a missing one becomes NaN and is refused. */
type Row = Partial<Record<string, number | string>>;
const input = (row: Row, name: string): number => Number(row[name] ?? Number.NaN);

const QUANTITIES: Record<string, (row: Row) => number> = {
  saturationPressurePa: (row) => saturationPressurePa(input(row, 'temperatureC')),
  saturationHumidityRatio: (row) => humidityRatio(input(row, 'temperatureC'), 1, input(row, 'pressurePa')),
  vapourPressurePa: (row) => vapourPressurePa(input(row, 'temperatureC'), input(row, 'relativeHumidity')),
  dewPointRoundTripC: (row) => {
    const temperatureC = input(row, 'temperatureC');
    return dewPointC(temperatureC, relativeHumidityFromDewPoint(temperatureC, input(row, 'dewPointC')));
  },
  wetBulbC: (row) =>
    wetBulbC(input(row, 'temperatureC'), input(row, 'relativeHumidity'), input(row, 'pressurePa')),
  humidityRatioFromWetBulb: (row) =>
    humidityRatioFromWetBulb(input(row, 'temperatureC'), input(row, 'wetBulbC'), input(row, 'pressurePa')),
  relativeHumidityFromWetBulb: (row) =>
    relativeHumidityFromWetBulb(input(row, 'temperatureC'), input(row, 'wetBulbC'), input(row, 'pressurePa')),
  standardPressurePa: (row) => standardPressurePa(input(row, 'altitudeM')),
};

// ASHRAE Handbook Fundamentals 2017, chapter 1; the tolerances are those of the reference file.
test.each(published.checkValues)('ASHRAE: $quantity is $expected', ({ expected, tolerance, ...row }) => {
  const quantity = QUANTITIES[row.quantity];
  expectWithin(quantity?.(row) ?? Number.NaN, expected, tolerance);
});

// Two formulations of the same measurements differ by at most 2.2e-4 here; 3e-4 is the handbook tests' own tolerance.
test.each(published.saturation)('saturation at $temperatureC °C', (row) => {
  const pressurePa = saturationPressurePa(row.temperatureC);
  expectWithin(pressurePa, row.hylandWexlerPa, 1e-4 * row.hylandWexlerPa);
  expectWithin(pressurePa, row.iapwsPa, 3e-4 * row.iapwsPa);
  expectWithin(humidityRatio(row.temperatureC, 1), row.humidityRatio, 1e-4 * row.humidityRatio + 5e-7);
});

// psychrolib 1.1.1, confirmed by an independent implementation; the printed digits set the tolerances.
test.each(published.grid)('air of $temperatureC °C at humidity $relativeHumidity', (row) => {
  const { temperatureC, relativeHumidity } = row;
  const ratio = humidityRatio(temperatureC, relativeHumidity, STANDARD_PRESSURE_PA);
  expectWithin(vapourPressurePa(temperatureC, relativeHumidity), row.vapourPressurePa, 0.006);
  expectWithin(ratio, row.humidityRatio, 1e-4 * row.humidityRatio + 5e-7);
  expectWithin(dewPointC(temperatureC, relativeHumidity), row.dewPointC, 0.01);
  expectWithin(wetBulbC(temperatureC, relativeHumidity), row.wetBulbC, 0.01);
});

test('covers the whole of the tables', () => {
  expect(published.checkValues).toHaveLength(15);
  expect(published.saturation).toHaveLength(10);
  expect(published.grid).toHaveLength(40);
});

test('a wet bulb by the rule of thumb of R. Stull 2011: 13.7 °C at 20 °C and 50 % (from memory)', () => {
  expectWithin(wetBulbC(20, 0.5), 13.7, 0.3);
});
