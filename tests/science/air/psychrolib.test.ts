import psychrolib from 'psychrolib';
import { beforeAll, describe, expect, test } from 'vitest';
import { standardPressurePa } from '../../../src/science/air/atmosphere';
import { dewPointC } from '../../../src/science/air/dew-point';
import { humidityRatio } from '../../../src/science/air/humidity-ratio';
import { saturationPressurePa } from '../../../src/science/air/saturation';
import { humidityRatioFromWetBulb, wetBulbC } from '../../../src/science/air/wet-bulb';
import { expectWithin } from './close';

const TEMPERATURES_C = Array.from({ length: 23 }, (_, i) => -10 + 2.5 * i); // to 45
const HUMIDITIES = Array.from({ length: 20 }, (_, i) => 0.05 * (i + 1)).map((h) => Math.min(1, h));
const PRESSURES_PA = [101_325, 89_875, 79_495]; // sea level, 1000 m, 2000 m

beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

// Two independent implementations of the same handbook chapter: psychrolib 1.1.1 (npm).
describe.each(TEMPERATURES_C)('air of %d °C, as psychrolib', (temperatureC) => {
  test('saturation pressure and dew point', () => {
    const saturationPa = psychrolib.GetSatVapPres(temperatureC);
    expectWithin(saturationPressurePa(temperatureC), saturationPa, 1e-9 * saturationPa);
    for (const humidity of HUMIDITIES) {
      const expected = psychrolib.GetTDewPointFromRelHum(temperatureC, humidity);
      expectWithin(dewPointC(temperatureC, humidity), expected, 0.002);
    }
  });

  test.each(PRESSURES_PA)('water carried and density at %d Pa', (pressurePa) => {
    for (const humidity of HUMIDITIES) {
      const ratio = psychrolib.GetHumRatioFromRelHum(temperatureC, humidity, pressurePa);
      expectWithin(humidityRatio(temperatureC, humidity, pressurePa), ratio, 1e-9);
    }
  });

  test.each(PRESSURES_PA)('wet bulb at %d Pa', (pressurePa) => {
    for (const humidity of HUMIDITIES) {
      const expected = psychrolib.GetTWetBulbFromRelHum(temperatureC, humidity, pressurePa);
      const actual = wetBulbC(temperatureC, humidity, pressurePa);
      const isIcyOrWet = actual >= 0 && expected < 0;
      if (isIcyOrWet) {
        // Both wicks have an answer here. Ours is the wet one; theirs carries the same water over ice.
        const ratio = humidityRatio(temperatureC, humidity, pressurePa);
        expectWithin(humidityRatioFromWetBulb(temperatureC, expected, pressurePa), ratio, 2e-6);
        expectWithin(actual, expected, 0.7); // the gap between a wet and an iced wick in this climate
      } else expectWithin(actual, expected, 0.002);
    }
  });
});

test.each([-500, 0, 150, 500, 1000, 2400, 4000, 5000])('standard pressure at %d m', (altitudeM) => {
  expectWithin(standardPressurePa(altitudeM), psychrolib.GetStandardAtmPressure(altitudeM), 0.01);
});

test('the grid is the one promised', () => {
  expect(TEMPERATURES_C.at(0)).toBe(-10);
  expect(TEMPERATURES_C.at(-1)).toBe(45);
  expect(HUMIDITIES.at(-1)).toBe(1);
});
