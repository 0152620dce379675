import { describe, expect, test } from 'vitest';
import { requestFor } from '../../../src/actions/outlook/request';
import type { EntryBody } from '../../../src/logbook/entry';
import { DAY_1_MS, fillJar, id, layCoat, PIECE } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';

const HOUR_MS = 3_600_000;
const SLOW = id(0xb2);
const slow = {
  hour: 0,
  body: {
    ...fillJar(SLOW),
    retarder: { of: 'mix', solvent: 'pma', percent: { text: '10', unit: '%' } },
  } as EntryBody,
};
const coat = (hour: number, jar?: string) => ({ hour, body: layCoat(PIECE, jar) });

type Done = { readonly hour: number; readonly body: EntryBody };
function asked(nowHour: number, ...done: readonly Done[]) {
  const { piece, shop } = aShop(...done);
  const told = requestFor(piece, shop, DAY_1_MS + nowHour * HOUR_MS);
  return told.ok ? told.value : told.failure.kind;
}
const request = (nowHour: number, ...done: readonly Done[]) => {
  const told = asked(nowHour, ...done);
  return typeof told === 'string' ? expect.unreachable() : told.request;
};

describe('what the estimator is asked of a piece', () => {
  test('counts from its first coat; before that it is now', () => {
    const told = asked(5, coat(2));
    expect(told).toMatchObject({ startMs: DAY_1_MS + 2 * HOUR_MS, request: { nowS: 3 * 3600 } });
    expect(request(1, coat(2)).nowS).toBe(0); // a clock that was set back
  });

  test('is its next coat too, like the last, laid now', () => {
    const { nextCoat, history } = request(5, coat(2), coat(3));
    const last = history.events.at(-1);
    expect(nextCoat).toEqual({ ...last, atS: 3 * 3600 });
  });

  test('is what five kelvin and a thinner coat would do, and no retarder where a coat held some', () => {
    const names = (...done: readonly Done[]) => request(9, ...done).whatIf?.map(({ name }) => name);
    expect(names(coat(1))).toEqual(['warmer', 'cooler', 'thinner-coats']);
    expect(names(slow, coat(1))).toEqual(['warmer', 'cooler', 'thinner-coats']);
    expect(names(slow, coat(1), coat(2, SLOW))).toEqual(['warmer', 'cooler', 'thinner-coats', 'no-retarder']);
    const { history, whatIf = [] } = request(9, slow, coat(1, SLOW));
    const plain = whatIf.find(({ name }) => name === 'no-retarder')?.history;
    expect(history.solvents.length).toBe((plain?.solvents.length ?? 0) + 1);
    expect(plain?.air).toEqual(history.air);
    const kelvin = (name: string) =>
      whatIf.find((one) => one.name === name)?.history.air.at(-1)?.temperatureK ?? 0;
    expect(kelvin('warmer') - kelvin('cooler')).toBeCloseTo(10, 9);
  });

  test('is nothing without a coat', () => {
    expect(asked(1)).toEqual(expect.stringContaining('coat'));
  });
});
