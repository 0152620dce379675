import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { humidityFrom, readAirBy } from '../../../src/actions/air/read-air-by';
import { LOGBOOK_WORDS } from '../../../src/words/frame/logbook';
import { aShop, done, NOW_MS } from '../a-shop';

const C = (text: string) => ({ text, unit: 'C' }) as const;
const percent = (text: string) => ({ text, unit: '%' }) as const;
const from = (by: 'dew-point' | 'wet-bulb', air: string, damp: string) =>
  humidityFrom(by, C(air), C(damp), 101_325);

describe('at the edges of what air can be', () => {
  test.each(['dew-point', 'wet-bulb'] as const)('a %s as warm as the air says that it is saturated', (by) => {
    const found = from(by, '20', '20');
    expect(found.ok && found.value).toBeCloseTo(1, 6);
  });

  // Water of -20 °C has a pressure of 1.25 hPa, of 45 °C 95.9, of 60 °C 199.5 (tables of saturated vapour): 1.3 and 0.6 %.
  test('air too dry for a logbook is refused, air at the edge of it is not', () => {
    const dry = from('dew-point', '45', '-20');
    expect(dry.ok && dry.value).toBeCloseTo(0.013, 2);
    expect(from('dew-point', '60', '-20')).toEqual({ ok: false, failure: LOGBOOK_WORDS.wetTooLow });
  });

  test('a temperature of the air that is no number is refused as such', () => {
    expect(from('wet-bulb', 'warm', '15')).toEqual({ ok: false, failure: LOGBOOK_WORDS.notANumber });
  });
});

test('a hygrometer’s correction belongs to what it shows, and to nothing that was worked out', async () => {
  const { needs, shop } = await aShop();
  const said = { temperature: C('20'), correction: percent('3'), movement: 'still' } as const;
  done(await readAirBy(needs, { ...said, by: 'shown', damp: percent('48') }, NOW_MS - 60_000));
  done(await readAirBy(needs, { ...said, by: 'dew-point', damp: C('9.26') }, NOW_MS));
  const [shown, worked] = shop.value.airReadings;
  expect(shown).toMatchObject({ atMs: NOW_MS - 60_000, humidity: { typed: percent('48') } });
  expect(shown?.correction?.typed).toEqual(percent('3'));
  expect(shown?.humidityFrom).toBeUndefined();
  expect(worked?.correction).toBeUndefined();
});
