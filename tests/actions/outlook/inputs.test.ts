import { describe, expect, test } from 'vitest';
import { inputsOf } from '../../../src/actions/outlook/inputs';
import type { Taught } from '../../../src/actions/outlook/learn/taught';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { DAY_1_MS, entry, fillJar, id, JAR, layCoat, PIECE, sand, startPiece } from '../../logbook/entries';

const HOUR_MS = 3_600_000;
const C = (text: string) => ({ text, unit: 'C' }) as const;
const air = (celsius: string): EntryBody => ({
  kind: 'air-read',
  temperature: C(celsius),
  humidity: { text: '50', unit: '%' },
  movement: 'still',
});
const UNTAUGHT = { diffusivity: undefined, law: undefined } as unknown as Taught;
const START: readonly (readonly [hour: number, body: EntryBody])[] = [
  [0, air('18')],
  [1, air('19')],
  [2, startPiece()],
  [2, fillJar()],
  [2, fillJar(id(0xb2))],
  [3, layCoat()],
];
const inputs = (more: typeof START = [], taught = UNTAUGHT, start = START) => {
  const shop = fold(
    [...start, ...more].map(([hour, body], n) => entry(n + 1, body, DAY_1_MS + hour * HOUR_MS)),
  );
  return inputsOf(shop.pieces.get(PIECE) ?? expect.unreachable(), shop, taught);
};

describe('an outlook is worked out anew', () => {
  test.each<{ what: string; more: typeof START }>([
    { what: 'another coat', more: [[4, layCoat()]] },
    { what: 'a sanding', more: [[4, sand()]] },
    { what: 'a check', more: [[4, { kind: 'checked', piece: PIECE, test: 'print', result: 'fails' }]] },
    { what: 'a reading of the air', more: [[4, air('22')]] },
    {
      what: 'the warmth it is sanded in',
      more: [[4, { kind: 'settings-changed', patch: { sandingTemperature: C('25') } }]],
    },
    {
      what: 'what it lies on',
      more: [[4, { kind: 'piece-changed', piece: PIECE, base: 'sealed' } as EntryBody]],
    },
    {
      what: 'the sheet of its jar',
      more: [
        [
          4,
          {
            kind: 'sheet-entered',
            jar: JAR,
            temperature: C('20'),
            humidity: { text: '50', unit: '%' },
            times: {},
          },
        ],
      ],
    },
    {
      what: 'the forecast',
      more: [
        [
          4,
          {
            kind: 'forecast-set',
            dayTemperature: C('20'),
            nightTemperature: C('10'),
            dayFrom: '08:00',
            nightFrom: '20:00',
            movement: 'still',
          },
        ],
      ],
    },
    {
      what: 'a coat that was thicker than written',
      more: [
        [
          4,
          {
            kind: 'corrected',
            entry: id(6),
            to: { film: { by: 'wet', wetFilm: { text: '40', unit: 'um' } } },
          },
        ],
      ],
    },
    {
      what: 'a coat that went on earlier than written',
      more: [
        [
          4,
          { kind: 'corrected', entry: id(6), to: { at: new Date(DAY_1_MS + 2.5 * HOUR_MS).toISOString() } },
        ],
      ],
    },
    {
      what: 'air that was warmer than written',
      more: [[4, { kind: 'corrected', entry: id(2), to: { temperature: C('25') } }]],
    },
  ])('with $what', ({ more }) => {
    expect(inputs(more)).not.toBe(inputs());
  });

  test('with what was learned, to two places', () => {
    const taught = (mean: number) => ({ ...UNTAUGHT, diffusivity: { mean, spread: 0.5 } }) as Taught;
    expect(inputs([], taught(0.1))).not.toBe(inputs());
    expect(inputs([], taught(0.12))).not.toBe(inputs([], taught(0.1)));
    expect(inputs([], taught(0.1001))).toBe(inputs([], taught(0.1)));
  });

  test('by the reading that held at the first coat, and by none before it', () => {
    const [, ...later] = START;
    const changed = [[0, air('30')], ...later] as typeof START;
    expect(inputs([], UNTAUGHT, changed)).toBe(inputs());
  });
});

test('what concerns another piece or jar changes nothing', () => {
  const OTHER = id(0xa2);
  expect(
    inputs([
      [4, startPiece(OTHER)],
      [4, layCoat(OTHER, id(0xb2))],
    ]),
  ).toBe(inputs());
});
