import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { coatBlush } from '../../../src/shop/air/coat-blush';
import { DAY_1_MS, entry, fillJar, id, layCoat, PIECE, startPiece } from '../../logbook/entries';

const percent = (text: string) => ({ text, unit: '%' }) as const;
const read = (humidity: string): EntryBody => ({
  kind: 'air-read',
  temperature: { text: '21', unit: 'C' },
  humidity: percent(humidity),
  movement: 'gentle',
});
const laid = (more: object = {}): EntryBody => ({ ...layCoat(), ...more }) as EntryBody;
const waterborne = {
  ...fillJar(),
  product: { finish: 'waterborne', volumeSolids: percent('30') },
} as EntryBody;

function blushOf(bodies: readonly EntryBody[], laidMs?: number) {
  const last = bodies.length;
  const shop = fold(bodies.map((body, n) => entry(n + 1, body, n + 1 === last ? laidMs : undefined)));
  const coat = shop.pieces.get(PIECE)?.coats[0];
  return coat && coatBlush(coat, shop);
}

describe('the film of a coat against the dew point', () => {
  // Dew points of air of 21 °C (Magnus equation): 10.2 °C at 50 %, 18.4 °C at 85 %.
  test('goes by the reading that the coat names', () => {
    const bodies = [startPiece(), fillJar(), read('85'), read('50'), laid({ air: id(3) })];
    expect(blushOf(bodies)?.dewPointC).toBeCloseTo(18.4, 1);
    expect(blushOf(bodies)?.outlook).toBe('blushes');
  });

  test('goes by the last reading before it where it names none', () => {
    const bodies = [startPiece(), fillJar(), read('85'), read('50'), laid()];
    expect(blushOf(bodies)?.dewPointC).toBeCloseTo(10.2, 1);
    expect(blushOf(bodies)?.outlook).not.toBe('blushes');
  });

  test.each([
    { why: 'there was no reading', bodies: [startPiece(), fillJar(), laid()] },
    {
      why: 'the reading is a day old',
      bodies: [startPiece(), fillJar(), read('85'), laid()],
      laidMs: DAY_1_MS + 86_400_000,
    },
    { why: 'it was thinner alone', bodies: [startPiece(), fillJar(), read('85'), laid({ how: 'flash' })] },
    { why: 'it is waterborne', bodies: [startPiece(), waterborne, read('85'), laid()] },
  ])('is not known where $why', ({ bodies, laidMs }) => {
    expect(blushOf(bodies, laidMs)).toBeUndefined();
  });
});
