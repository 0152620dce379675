import { describe, expect, test } from 'vitest';
import { factsOf } from '../../../src/actions/verdicts/facts-of';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { toKelvin } from '../../../src/units';
import { DAY_1_MS, entry, fillJar, PIECE, startPiece } from '../../logbook/entries';

const HOUR_MS = 3_600_000;
type Timed = readonly [hour: number, body: EntryBody];

const read = (celsius: string, humidity = '45', more: object = {}): EntryBody => ({
  kind: 'air-read',
  temperature: { text: celsius, unit: 'C' },
  humidity: { text: humidity, unit: '%' },
  movement: 'gentle',
  ...more,
});
const forecast = (day: string, night: string): EntryBody => ({
  kind: 'forecast-set',
  dayTemperature: { text: day, unit: 'C' },
  nightTemperature: { text: night, unit: 'C' },
  dayFrom: '08:00',
  nightFrom: '18:00',
  movement: 'still',
});
/** The air as the judge is told of it, so many hours into the first day: 9 in the morning in Berlin, and on. */
function airAt(hour: number, ...timed: readonly Timed[]) {
  const entries = [[0, startPiece()], ...timed] as readonly Timed[];
  const shop = fold(entries.map(([at, body], n) => entry(n + 1, body, DAY_1_MS + at * HOUR_MS)));
  const piece = shop.pieces.get(PIECE) as Piece;
  return factsOf({ shop, piece, outlook: undefined, nowMs: DAY_1_MS + hour * HOUR_MS }).air;
}
const celsius = (kelvin: number | undefined) => kelvin && Number((kelvin - toKelvin(0)).toFixed(2));

describe('the air of now', () => {
  test('is the last reading, its hygrometer corrected, for less than eight hours', () => {
    const told = read('21', '45', { correction: { text: '5', unit: '%' } });
    expect(airAt(9.99, [2, told]).now).toEqual({
      atMs: DAY_1_MS + 2 * HOUR_MS,
      temperatureK: toKelvin(21),
      humidity: expect.closeTo(0.5, 9),
    });
    expect(airAt(10, [2, told]).now).toBeUndefined();
    expect(airAt(2, [2, told]).now).toBeDefined();
  });

  test('is none before the first reading; one to come says nothing yet', () => {
    expect(airAt(1)).toEqual({});
    expect(airAt(1, [2, read('21')])).toEqual({});
    expect(airAt(3, [2, read('18')], [4, read('25')]).now?.temperatureK).toBe(toKelvin(18));
  });

  test('says whether a film of the jar in hand blushes in it; of no jar, and of stale air, nothing', () => {
    expect(airAt(3, [0, fillJar()], [2, read('21', '20')]).blush).toBe('stays-clear');
    expect(airAt(3, [0, fillJar()], [2, read('21', '90')]).blush).toBe('blushes');
    expect(airAt(3, [2, read('21', '90')]).blush).toBeUndefined();
    expect(airAt(12, [0, fillJar()], [2, read('21', '90')]).blush).toBeUndefined();
  });
});

describe('the coldest that the shop was lately', () => {
  test.each<{ what: string; hour: number; timed: readonly Timed[]; is: number | undefined }>([
    {
      what: 'the coldest reading',
      hour: 9,
      timed: [
        [1, read('12')],
        [4, read('20')],
      ],
      is: 12,
    },
    {
      what: 'one of three days ago still',
      hour: 72,
      timed: [
        [0, read('5')],
        [1, read('20')],
      ],
      is: 5,
    },
    {
      what: 'none that ended longer ago',
      hour: 74,
      timed: [
        [0, read('5')],
        [1, read('20')],
      ],
      is: 20,
    },
    {
      what: 'as cold as it is at this very instant',
      hour: 9,
      timed: [
        [1, read('20')],
        [9, read('8')],
      ],
      is: 8,
    },
    {
      what: 'the night of the forecast',
      hour: 48,
      timed: [
        [1, forecast('20', '7')],
        [2, read('20')],
      ],
      is: 7,
    },
    { what: 'the forecast alone', hour: 48, timed: [[1, forecast('20', '7')]], is: 7 },
    { what: 'not known where nobody said', hour: 48, timed: [], is: undefined },
  ])('is $what', ({ hour, timed, is }) => {
    expect(celsius(airAt(hour, ...timed).coldestK)).toBe(is);
  });

  test('with the night to come, where there is a forecast', () => {
    expect(celsius(airAt(2, [1, forecast('20', '7')]).nightK)).toBe(7);
    expect(airAt(2, [1, read('20')]).nightK).toBeUndefined();
  });
});
