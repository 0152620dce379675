import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { lawHistory } from '../../../src/shop/stack/law-history';
import {
  DAY_1_MS,
  entry,
  fillJar,
  inTurn,
  JAR,
  layCoat,
  PIECE,
  sand,
  startPiece,
} from '../../logbook/entries';

const C = (text: string) => ({ text, unit: 'C' }) as const;
const percent = (text: string) => ({ text, unit: '%' }) as const;

const filled = (finish: 'conversion' | 'nitrocellulose'): EntryBody =>
  ({
    ...fillJar(),
    product: { finish, volumeSolids: percent('20') },
    thinning: { of: 'lacquer', percent: percent('0') },
  }) as EntryBody;
const read: EntryBody = {
  kind: 'air-read',
  temperature: C('24'),
  humidity: percent('60'),
  movement: 'gentle',
};
const forecast: EntryBody = {
  kind: 'forecast-set',
  dayTemperature: C('21'),
  nightTemperature: C('11'),
  dayFrom: '07:00',
  nightFrom: '19:00',
  humidity: percent('50'),
  movement: 'still',
};
function historyOf(...bodies: EntryBody[]) {
  const shop = fold(bodies.map(inTurn));
  const piece = shop.pieces.get(PIECE);
  if (!piece) throw new Error('no piece');
  return lawHistory(piece, shop);
}
const coated = [startPiece(), filled('conversion'), read, layCoat(), sand(), layCoat()] as const;

describe('the history of a finish that cures', () => {
  test('counts its seconds from the first coat, with dry films and what evaporates', () => {
    const told = historyOf(...coated);
    expect(told?.finish).toBe('conversion');
    expect(told?.startMs).toBe(DAY_1_MS + 4 * 60_000);
    // 85 um wet at 20 %: 17 um dry, 68 um into the air.
    expect(told?.history.coats.map(({ atS }) => atS)).toEqual([0, 120]);
    expect(told?.history.coats[0]?.dryM).toBeCloseTo(17e-6, 9);
    expect(told?.history.coats[0]?.volatileM).toBeCloseTo(68e-6, 9);
    expect(told?.history.sandings[0]?.removedM).toBeCloseTo(4e-6, 12);
  });

  test('has the humidity as it was read, then the forecast’s; the same water is damper in a cold night', () => {
    const { air } = historyOf(...coated, forecast)?.history ?? { air: [] };
    expect(air[0]).toMatchObject({ fromS: 0, relativeHumidity: 0.6 });
    const day = air.find(({ temperatureK }) => Math.abs(temperatureK - 294.15) < 0.01);
    const night = air.find(({ temperatureK }) => Math.abs(temperatureK - 284.15) < 0.01);
    expect(day?.relativeHumidity).toBeCloseTo(0.5, 6);
    // Water at saturation 24.86 hPa at 21 °C and 13.12 hPa at 11 °C (tables): 0.5 x 24.86/13.12 = 0.95.
    expect(night?.relativeHumidity).toBeCloseTo(0.95, 2);
  });

  describe('with more readings', () => {
    const damp = (celsius: string, humidity: string): EntryBody =>
      ({ ...read, temperature: C(celsius), humidity: percent(humidity) }) as EntryBody;
    const HOUR_MS = 3_600_000;
    const humidities = (...timed: readonly (readonly [hour: number, body: EntryBody])[]) => {
      const shop = fold(timed.map(([hour, body], n) => entry(n + 1, body, DAY_1_MS + hour * HOUR_MS)));
      const piece = shop.pieces.get(PIECE) ?? expect.unreachable();
      return (lawHistory(piece, shop)?.history.air ?? []).map(({ fromS, relativeHumidity }) => [
        fromS / 3600,
        Math.round(relativeHumidity * 1000) / 1000,
      ]);
    };
    const begun = [
      [0, startPiece()],
      [0, filled('conversion')],
    ] as const;

    test('each holds from its own time on', () => {
      expect(humidities(...begun, [1, damp('24', '60')], [1, layCoat()], [3, damp('20', '40')])).toEqual([
        [0, 0.6],
        [2, 0.4],
        [10, 0.4],
      ]);
    });

    test('the first speaks for the time before it', () => {
      expect(humidities(...begun, [1, layCoat()], [3, damp('24', '60')])[0]).toEqual([0, 0.6]);
    });

    test('none at all: half, and where only a temperature is known, the water last read', () => {
      expect(humidities(...begun, [1, layCoat()])).toEqual([[0, 0.5]]);
      const { humidity: _, ...dry } = forecast as Extract<EntryBody, { kind: 'forecast-set' }>;
      const night = humidities(...begun, [0, dry as EntryBody], [1, damp('21', '50')], [1, layCoat()]);
      // As in a forecast of 50 %: 0.95 in the night of 11 °C.
      expect(Math.max(...night.map(([, humidity]) => humidity ?? 0))).toBeCloseTo(0.95, 2);
    });
  });

  test('takes the sheet of its newest jar', () => {
    const sheet: EntryBody = {
      kind: 'sheet-entered',
      jar: JAR,
      temperature: C('20'),
      humidity: percent('50'),
      times: { recoatFrom: { text: '45', unit: 'min' } },
      wetFilm: { text: '100', unit: 'um' },
    };
    expect(historyOf(...coated, sheet)?.history.sheet).toMatchObject({
      recoatFromS: 2700,
      relativeHumidity: 0.5,
    });
    // 100 um wet at the 20 % of this jar leave 20 um.
    expect(historyOf(...coated, sheet)?.history.sheet?.filmDryM).toBeCloseTo(20e-6, 9);
  });
});

test('a lacquer, and a piece without a coat, have none', () => {
  expect(historyOf(startPiece(), filled('nitrocellulose'), layCoat())).toBeUndefined();
  expect(historyOf(startPiece(), filled('conversion'))).toBeUndefined();
});
