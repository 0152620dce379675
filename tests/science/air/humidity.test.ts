import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { standardPressurePa } from '../../../src/science/air/atmosphere';
import {
  dewPointC,
  relativeHumidityAt,
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

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyAirC = within(-40, 60);
const anyHumidity = within(0.01, 1);
const anyPressurePa = within(50_000, 110_000);

describe('there and back', () => {
  test('dew point', () => {
    fc.assert(
      fc.property(anyAirC, anyHumidity, (temperatureC, humidity) => {
        const back = relativeHumidityFromDewPoint(temperatureC, dewPointC(temperatureC, humidity));
        expectWithin(back, humidity, 1e-8);
      }),
    );
  });

  test('wet bulb, over water and over ice', () => {
    fc.assert(
      fc.property(anyAirC, anyHumidity, anyPressurePa, (temperatureC, humidity, pressurePa) => {
        const wickC = wetBulbC(temperatureC, humidity, pressurePa);
        expectWithin(relativeHumidityFromWetBulb(temperatureC, wickC, pressurePa), humidity, 1e-6);
      }),
    );
  });

  test('warmed and cooled again', () => {
    fc.assert(
      fc.property(anyAirC, within(0, 30), anyHumidity, (temperatureC, byK, humidity) => {
        const warmerC = Math.min(60, temperatureC + byK);
        const warmed = relativeHumidityAt(warmerC, temperatureC, humidity);
        fc.pre(warmed >= 0.01);
        expectWithin(relativeHumidityAt(temperatureC, warmerC, warmed), humidity, 1e-9);
      }),
    );
  });
});

describe('order', () => {
  test('dew point, wet bulb and air stand in this order, and meet in saturated air', () => {
    fc.assert(
      fc.property(anyAirC, anyHumidity, anyPressurePa, (temperatureC, humidity, pressurePa) => {
        const wickC = wetBulbC(temperatureC, humidity, pressurePa);
        expect(dewPointC(temperatureC, humidity)).toBeLessThanOrEqual(wickC + 1e-8);
        expect(wickC).toBeLessThanOrEqual(temperatureC);
        expectWithin(dewPointC(temperatureC, 1), temperatureC, 1e-8);
        expectWithin(wetBulbC(temperatureC, 1, pressurePa), temperatureC, 1e-6);
      }),
    );
  });

  test('a hair under freezing, in air a hair under saturation, the wick is no warmer than the air', () => {
    expect(wetBulbC(-1e-144, 0.9999999999999999, 110_000)).toBeLessThanOrEqual(-1e-144);
  });

  test('more vapour: higher dew point and wet bulb', () => {
    fc.assert(
      fc.property(anyAirC, within(0.01, 0.98), within(0.011, 0.02), (temperatureC, humidity, more) => {
        const damper = humidity + more;
        expect(dewPointC(temperatureC, damper)).toBeGreaterThan(dewPointC(temperatureC, humidity));
        expect(wetBulbC(temperatureC, damper)).toBeGreaterThan(wetBulbC(temperatureC, humidity));
      }),
    );
  });

  test('saturation pressure rises all the way, across freezing too', () => {
    const hundredths = Array.from({ length: 30_000 }, (_, i) => saturationPressurePa(-100 + i / 100));
    expect(hundredths.findIndex((Pa, i) => !(Pa > (hundredths[i - 1] ?? 0)))).toBe(-1);
  });
});

test('below freezing the vapour is held to ice, not to water that is colder than freezing', () => {
  // Ice 401.74 Pa at -5 °C (ASHRAE). Supercooled water would be 421.5 Pa (WMO Magnus formula, from memory).
  expectWithin(saturationPressurePa(-5), 401.74, 0.2);
  const row = published.grid.find((air) => air.temperatureC === 0 && air.relativeHumidity === 0.3);
  expectWithin(dewPointC(0, 0.3), row?.dewPointC ?? Number.NaN, 0.01);
});

test('air cooled under its dew point is saturated', () => {
  expect(relativeHumidityAt(10, 20, 0.6)).toBe(1); // its dew point is about 12 °C
});

test('cold air that is warmed is dry air: 0 °C at 80 % is 20.9 % at 20 °C', () => {
  // 488.92 Pa over 2338.8 Pa: the printed table.
  expectWithin(relativeHumidityAt(20, 0, 0.8), 488.92 / 2338.8, 1e-5);
});

describe('refuses what cannot be', () => {
  test.each([
    {
      why: 'a dew point above the air',
      run: () => relativeHumidityFromDewPoint(20, 20.1),
      says: 'Dew point',
    },
    { why: 'a wet bulb above the air', run: () => relativeHumidityFromWetBulb(20, 20.1), says: 'Wet bulb' },
    { why: 'a wet bulb too low', run: () => relativeHumidityFromWetBulb(40, 10), says: 'Wet bulb' },
    { why: 'too low for the ratio too', run: () => humidityRatioFromWetBulb(40, 10), says: 'Wet bulb' },
    { why: 'humidity 0', run: () => dewPointC(20, 0), says: 'humidity' },
    { why: 'humidity in per cent', run: () => dewPointC(20, 45), says: 'humidity' },
    { why: 'humidity 1.4', run: () => wetBulbC(20, 1.4), says: 'humidity' },
    { why: '-300 °C', run: () => vapourPressurePa(-300, 0.5), says: 'temperature' },
    { why: '-300 °C of saturation', run: () => saturationPressurePa(-300), says: 'Temperature' },
    { why: 'a pressure in hPa', run: () => wetBulbC(20, 0.5, 1013), says: 'pressure' },
    { why: 'a mountain too high', run: () => standardPressurePa(8848), says: 'Altitude' },
    { why: 'NaN degrees', run: () => dewPointC(Number.NaN, 0.5), says: 'temperature' },
    { why: 'NaN humidity', run: () => dewPointC(20, Number.NaN), says: 'humidity' },
    { why: 'a NaN dew point', run: () => relativeHumidityFromDewPoint(20, Number.NaN), says: 'Dew point' },
    { why: 'a NaN wet bulb', run: () => relativeHumidityFromWetBulb(20, Number.NaN), says: 'Wet bulb' },
    { why: 'a NaN pressure', run: () => humidityRatio(20, 0.5, Number.NaN), says: 'pressure' },
    { why: 'NaN to be warmed to', run: () => relativeHumidityAt(Number.NaN, 20, 0.5), says: 'temperature' },
  ])('$why', ({ run, says }) => {
    expect(run).toThrow(RangeError);
    expect(run).toThrow(says);
  });

  test.each([
    [-40, 0.01],
    [-40, 1],
    [60, 0.01],
    [60, 1],
  ])('but takes the edges: %d °C at humidity %d', (temperatureC, humidity) => {
    expect(dewPointC(temperatureC, humidity)).toBeLessThanOrEqual(temperatureC);
    expect(wetBulbC(temperatureC, humidity, 50_000)).toBeLessThanOrEqual(temperatureC);
  });
});
