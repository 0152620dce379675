import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { workingTimes } from '../../../src/shop/plan/working-times';
import { DAY_1_MS, entry, id, MINUTE_MS } from '../../logbook/entries';

const HOUR_MS = 60 * MINUTE_MS;
const C = (text: string) => ({ text, unit: 'C' }) as const;
const percent = (text: string) => ({ text, unit: '%' }) as const;
const at = (iso: string): number => Date.parse(`2026-03-${iso}:00Z`);
/** Sunday 1 March 2026, 09:00 on the wall in Berlin. */
const NOW = DAY_1_MS;
const timesOf = (...entries: ReturnType<typeof entry>[]) => workingTimes(fold(entries), NOW, 'Europe/Berlin');

describe('the hours of a shop', () => {
  const day = { work: [{ open: '06:30', close: '12:00' }] };
  const night = { work: [{ open: '22:00', close: '02:15' }], booth: [{ open: '00:00', close: '00:00' }] };
  const set: EntryBody = {
    kind: 'hours-set',
    week: [day, day, day, day, day, night, { work: [] }],
    quiet: { open: '22:00', close: '07:00' },
  };

  test('are nine to five from Monday to Friday until they are set', () => {
    const { week, quiet } = timesOf();
    const usual = { work: [{ open: 540, close: 1020 }] };
    expect(week).toEqual([usual, usual, usual, usual, usual, { work: [] }, { work: [] }]);
    expect(quiet).toBeUndefined();
  });

  test('are minutes after midnight, past it where they end on the next day', () => {
    const { week, quiet } = timesOf(entry(1, set));
    expect(week[0]).toEqual({ work: [{ open: 390, close: 720 }] });
    expect(week[5]).toEqual({ work: [{ open: 1320, close: 1575 }], booth: [{ open: 0, close: 1440 }] });
    expect(quiet).toEqual({ open: 1320, close: 1860 });
  });

  test('are closed where it was said so', () => {
    const span = { from: '2026-03-05T08:00:00.000Z', to: '2026-03-06T08:00:00.000Z' };
    const closed: EntryBody = { kind: 'closure-set', closure: id(0x51), span, closes: 'spraying' };
    const from = Date.parse(span.from) / MINUTE_MS;
    expect(timesOf(entry(1, closed)).closures).toEqual([{ from, to: from + 1440, closes: 'spraying' }]);
  });

  test('are those of the zone', () => {
    expect(timesOf().zone(NOW / MINUTE_MS)).toBe(60);
  });
});

// The strictest finish, waterborne: not below 18 °C nor above 70 % (common practice, no source). Dew point of 21 °C: 18.4 °C at 85 %
// (Magnus): a margin of 2.6 K, where 5 K are asked for.
describe('air that is unfit', () => {
  const read = (celsius: string, humidity: string, atMs = NOW - HOUR_MS) =>
    entry(
      1,
      {
        kind: 'air-read',
        temperature: C(celsius),
        humidity: percent(humidity),
        movement: 'gentle',
      } as EntryBody,
      atMs,
    );
  const forecast = (more: object = {}) =>
    entry(2, {
      kind: 'forecast-set',
      dayTemperature: C('21'),
      nightTemperature: C('12'),
      dayFrom: '08:00',
      nightFrom: '20:00',
      movement: 'gentle',
      ...more,
    } as EntryBody);
  const spells = (...entries: ReturnType<typeof entry>[]) =>
    timesOf(...entries).unfitAir.map(({ from, to, because }) => [from * MINUTE_MS, to * MINUTE_MS, because]);

  test.each([
    { what: 'fit', celsius: '21', humidity: '50', because: [] },
    { what: 'cold', celsius: '17.9', humidity: '50', because: ['cold'] },
    { what: 'at the limit of cold', celsius: '18', humidity: '50', because: [] },
    { what: 'damp, and near its dew point', celsius: '21', humidity: '85', because: ['blush', 'damp'] },
    { what: 'at the limit of damp', celsius: '25', humidity: '70', because: [] },
  ])('read as $what, for two hours after it', ({ celsius, humidity, because }) => {
    expect(spells(read(celsius, humidity))).toEqual(
      because.map((one) => [NOW - HOUR_MS, NOW + HOUR_MS, one]),
    );
  });

  test('read two hours ago says nothing any more', () => {
    expect(spells(read('10', '50', NOW - 2 * HOUR_MS))).toEqual([]);
    expect(spells()).toEqual([]);
  });

  test('is foretold night by night for ten days, from the end of the last reading on', () => {
    const found = spells(read('21', '50'), forecast());
    // Berlin is an hour ahead of UTC: nights from 19:00 to 07:00 UTC.
    expect(found.slice(0, 2)).toEqual([
      [at('01T19:00'), at('02T07:00'), 'cold'],
      [at('02T19:00'), at('03T07:00'), 'cold'],
    ]);
    expect(found).toHaveLength(10);
    const allCold = forecast({ dayTemperature: C('12') });
    expect(spells(read('21', '50'), allCold)).toEqual([[NOW + HOUR_MS, NOW + 240 * HOUR_MS, 'cold']]);
    expect(spells(allCold)).toEqual([[NOW, NOW + 240 * HOUR_MS, 'cold']]);
  });

  test('is foretold damp only where the forecast says how damp', () => {
    const damp = forecast({ nightTemperature: C('21'), humidity: percent('85') });
    expect(spells(damp).map(([, , because]) => because)).toEqual(['blush', 'damp']);
    expect(spells(forecast({ nightTemperature: C('21') }))).toEqual([]);
  });
});
