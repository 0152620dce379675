import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { airAsRead, airLog, asRead } from '../../../src/shop/air/air-between';
import type { AirFrom } from '../../../src/shop/air/forecast';
import { entry } from '../../logbook/entries';

const at = (iso: string): number => Date.parse(`${iso}:00Z`);
const read = (iso: string, celsius: number, movement: AirFrom['movement'] = 'booth'): AirFrom => ({
  atMs: at(iso),
  temperatureK: celsius + 273.15,
  movement,
});
const forecastOf = (dayFrom: string, nightFrom: string) => {
  const body: EntryBody = {
    kind: 'forecast-set',
    dayTemperature: { text: '21', unit: 'C' },
    nightTemperature: { text: '16', unit: 'C' },
    dayFrom,
    nightFrom,
    movement: 'gentle',
  };
  return fold([entry(1, body)]).forecast; // in Europe/Berlin: an hour ahead of UTC in winter, two in summer
};
const written = (air: readonly AirFrom[]) =>
  air.map(
    ({ atMs, temperatureK, movement }) =>
      `${new Date(atMs).toISOString().slice(5, 16)} ${(temperatureK - 273.15).toFixed(0)} ${movement}`,
  );

describe('with a forecast', () => {
  const forecast = forecastOf('08:00', '18:00');

  test('goes day and night, and through the night in which the clocks change', () => {
    // By the wall clock 08:00 and 18:00; the clocks go forward on 29 March 2026 at 01:00 UTC.
    const air = airLog([], forecast, at('2026-03-27T12:00'), at('2026-03-30T00:00'));
    expect(written(air)).toEqual([
      '03-27T12:00 21 gentle',
      '03-27T17:00 16 gentle',
      '03-28T07:00 21 gentle',
      '03-28T17:00 16 gentle',
      '03-29T06:00 21 gentle',
      '03-29T16:00 16 gentle',
    ]);
  });

  test('ends before a change at the very instant up to which it is asked for', () => {
    const until = (end: string) => written(airLog([], forecast, at('2026-03-02T12:00'), at(end)));
    expect(until('2026-03-02T17:00')).toEqual(['03-02T12:00 21 gentle']);
    expect(until('2026-03-02T17:01')).toEqual(['03-02T12:00 21 gentle', '03-02T17:00 16 gentle']);
  });

  test('takes over from a reading after eight hours', () => {
    const air = airLog(
      [read('2026-03-02T07:30', 25)],
      forecast,
      at('2026-03-02T07:00'),
      at('2026-03-02T20:00'),
    );
    expect(written(air)).toEqual([
      '03-02T07:00 21 gentle',
      '03-02T07:30 25 booth',
      '03-02T15:30 21 gentle',
      '03-02T17:00 16 gentle',
    ]);
  });

  test('takes over from a reading at nightfall', () => {
    const air = airLog(
      [read('2026-03-02T14:00', 25)],
      forecast,
      at('2026-03-02T15:00'),
      at('2026-03-03T08:00'),
    );
    expect(written(air)).toEqual(['03-02T15:00 25 booth', '03-02T17:00 16 gentle', '03-03T07:00 21 gentle']);
  });

  test('leaves the night to a reading taken in it', () => {
    const air = airLog(
      [read('2026-03-02T20:00', 12)],
      forecast,
      at('2026-03-02T19:00'),
      at('2026-03-03T05:00'),
    );
    expect(written(air)).toEqual(['03-02T19:00 16 gentle', '03-02T20:00 12 booth', '03-03T04:00 16 gentle']);
  });

  test('has no night where day and night begin together', () => {
    const air = airLog([], forecastOf('08:00', '08:00'), at('2026-03-02T12:00'), at('2026-03-04T00:00'));
    expect(written(air)).toEqual(['03-02T12:00 21 gentle', '03-03T07:00 21 gentle']);
  });
});

describe('without a forecast', () => {
  const until = at('2026-03-03T00:00');

  test('a reading gives way to the next', () => {
    const readings = [read('2026-03-02T08:00', 20), read('2026-03-02T11:00', 23)];
    expect(written(airLog(readings, undefined, at('2026-03-02T09:00'), at('2026-03-02T12:00')))).toEqual([
      '03-02T09:00 20 booth',
      '03-02T11:00 23 booth',
    ]);
  });

  test('the last temperature stays, and its air goes still after eight hours', () => {
    expect(written(airLog([read('2026-03-02T08:00', 20)], undefined, at('2026-03-02T09:00'), until))).toEqual(
      ['03-02T09:00 20 booth', '03-02T16:00 20 still'],
    );
  });

  test('the first reading speaks for the time before it', () => {
    expect(written(airLog([read('2026-03-02T20:00', 18)], undefined, at('2026-03-02T09:00'), until))).toEqual(
      ['03-02T09:00 18 booth', '03-02T20:00 18 booth'],
    );
  });

  test('a shop of which nothing was said is at 21 C in gently moving air', () => {
    expect(written(airLog([], undefined, at('2026-03-02T09:00'), until))).toEqual(['03-02T09:00 21 gentle']);
  });

  test('a reading of long ago still gives its temperature', () => {
    expect(written(airLog([read('2026-02-02T08:00', 15)], undefined, at('2026-03-02T09:00'), until))).toEqual(
      ['03-02T09:00 15 still'],
    );
  });
});

test('two readings at one instant are the later one', () => {
  const readings = [read('2026-03-02T08:00', 20), read('2026-03-02T08:00', 24)];
  expect(written(airLog(readings, undefined, at('2026-03-02T08:00'), at('2026-03-02T09:00')))).toEqual([
    '03-02T08:00 24 booth',
  ]);
});

const HOUR_MS = 3_600_000;
const START_MS = Date.UTC(2026, 2, 2, 8);

test('what was read before the last reading before an instant changes nothing of the air since', () => {
  const hour = fc.integer({ min: 0, max: 200 });
  const readings = fc.array(fc.tuple(hour, fc.integer({ min: -5, max: 35 })), { maxLength: 30 });
  fc.assert(
    fc.property(
      readings,
      hour,
      fc.option(fc.constant(forecastOf('08:00', '20:00')), { nil: undefined }),
      (some, from, forecast) => {
        const sorted = some.toSorted(([one], [other]) => one - other);
        const bodies = sorted.map(
          ([, degrees]): EntryBody => ({
            kind: 'air-read',
            temperature: { text: String(degrees), unit: 'C' },
            humidity: { text: '50', unit: '%' },
            movement: 'gentle',
          }),
        );
        const { airReadings } = fold(
          bodies.map((body, n) => entry(n + 1, body, START_MS + (sorted[n]?.[0] ?? 0) * HOUR_MS)),
        );
        const fromMs = START_MS + from * HOUR_MS;
        const untilMs = fromMs + 300 * HOUR_MS;
        expect(airLog(airAsRead(airReadings, fromMs), forecast, fromMs, untilMs)).toEqual(
          airLog(airReadings.map(asRead), forecast, fromMs, untilMs),
        );
      },
    ),
  );
});
