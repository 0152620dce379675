import { describe, expect, test } from 'vitest';
import { factsOf } from '../../src/actions/verdicts/facts-of';
import type { EntryBody } from '../../src/logbook/entry';
import { sandingRoom } from '../../src/shop/stack/sanding-room';
import type { Act } from '../../src/verdicts/act';
import { verdictOn } from '../../src/verdicts/verdict';
import { DAY_1_MS, fillJar, layCoat, PIECE } from '../logbook/entries';
import { anOutlook, aShop } from '../parts/an-outlook';

const DAY_H = 24;
const air = (celsius: number): EntryBody => ({
  kind: 'air-read',
  temperature: { text: String(celsius), unit: 'C' },
  humidity: { text: '50', unit: '%' },
  movement: 'still',
});
const check = (result: 'passes' | 'fails'): EntryBody => ({
  kind: 'checked',
  piece: PIECE,
  test: 'print',
  result,
});

type Done = readonly { readonly hour: number; readonly body: EntryBody }[];
function judged(done: Done, act: Act, hour: number) {
  const { shop, piece } = aShop(...done);
  const nowMs = DAY_1_MS + hour * 3_600_000;
  const outlook = piece.coats.length === 0 ? ({ state: 'no-coats' } as const) : anOutlook();
  const verdict = verdictOn({ act }, factsOf({ shop, piece, outlook, nowMs }));
  return { shop, word: verdict.word, says: verdict.reasons.map(({ says }) => says) };
}

// The milestones of the made-up outlook: level-sand likely after 200 h, rub out after 300.
describe('a winter garage', () => {
  const cold: Done = [
    { hour: 0, body: air(12) },
    { hour: 1, body: layCoat() },
    { hour: 10 * DAY_H + 1, body: air(21) },
  ];

  test('is judged for a warm room, never for the cold one', () => {
    const before = judged([{ hour: 0, body: air(12) }], 'coat', 1).shop;
    expect(sandingRoom(before)).toEqual({ temperatureK: 294.15, from: 'usual' });
  });

  test('warned of a sudden change, and asks for a try before the rubbing out', () => {
    const { says } = judged(cold, 'rub-out', 12 * DAY_H + 20);
    expect(says).toEqual(expect.arrayContaining(['coldShock', 'untried']));
  });

  test('a print holds the rubbing out and every promise, until a thumb leaves none', () => {
    const printed: Done = [...cold, { hour: 310, body: check('fails') }];
    expect(judged(printed, 'rub-out', 320).word).toBe('hold');
    expect(judged(printed, 'promise', 320).word).toBe('hold');
    expect(judged([...printed, { hour: 480, body: check('passes') }], 'promise', 481).word).toBe('ready');
  });
});

describe('an old white chair', () => {
  const body = (more: object): EntryBody => ({ piece: PIECE, ...more }) as unknown as EntryBody;
  const chair: Done = [
    { hour: 0, body: body({ kind: 'piece-changed', base: 'old-closed' }) },
    { hour: 1, body: body({ kind: 'old-finish-seen', opaque: true, signs: [] }) },
  ];
  const lead = { hour: 2, body: body({ kind: 'lead-tested', finding: 'found' }) };
  const wroteWhy = {
    hour: 3,
    body: body({
      kind: 'hold-overridden',
      rule: 'lead',
      act: 'promise',
      reason: 'Stabilised and disclosed, removal by a licensed firm.',
    }),
  };

  test.each([
    { what: 'untested', done: chair, act: 'scuff', word: 'hold', says: 'leadUntested' },
    { what: 'with lead found', done: [...chair, lead], act: 'level-sand', word: 'hold', says: 'leadFound' },
    { what: 'with lead found', done: [...chair, lead], act: 'promise', word: 'hold', says: 'leadFound' },
    {
      what: 'with the reason in writing',
      done: [...chair, lead, wroteWhy],
      act: 'promise',
      word: 'ready',
      says: 'leadFound',
    },
  ] as const)('$what: $act is $word', ({ done, act, word, says }) => {
    const verdict = judged(done, act, 4);
    expect(verdict.word).toBe(word);
    expect(verdict.says).toContain(says);
  });
});

// 66 F by day and 59 F overnight: waterborne wants 65 F. Never a word that belongs to lacquer.
test('a waterborne table is warned of the night, and hears nothing of blush', () => {
  const jar = fillJar() as Extract<EntryBody, { kind: 'jar-filled' }>;
  const other = {
    ...jar,
    jar: '019caa01-0000-7000-9000-0000000000b9',
    product: { ...jar.product, finish: 'waterborne' },
  };
  const done: Done = [
    { hour: 0, body: other as EntryBody },
    { hour: 0, body: { ...air(19), humidity: { text: '58', unit: '%' } } as EntryBody },
    {
      hour: 0,
      body: {
        kind: 'forecast-set',
        dayTemperature: { text: '66', unit: 'F' },
        nightTemperature: { text: '59', unit: 'F' },
        dayFrom: '07:00',
        nightFrom: '19:00',
        movement: 'gentle',
      } as EntryBody,
    },
    { hour: 1, body: layCoat(PIECE, other.jar) },
  ];
  const { says } = judged(done, 'coat', 4);
  expect(says).toContain('coldNight');
  expect(says).not.toContain('mayBlush');
  expect(judged(done, 'coat', 30).says).toContain('scuffFirst');
  expect(judged(done, 'flash-coat', 4)).toMatchObject({ word: 'hold' });
});

test('what the air makes of a film is told of the jar in hand, where it blushes at all', () => {
  const blushOf = (celsius: number, humidity: string, finish = 'nitrocellulose') => {
    const read = { ...air(celsius), humidity: { text: humidity, unit: '%' } } as EntryBody;
    const jar = {
      ...fillJar(),
      jar: OTHER_JAR,
      product: { finish, volumeSolids: { text: '22', unit: '%' } },
    };
    const { shop, piece } = aShop({ hour: 0, body: jar as EntryBody }, { hour: 1, body: read });
    const nowMs = DAY_1_MS + 2 * 3_600_000;
    return factsOf({ shop, piece, outlook: { state: 'no-coats' }, nowMs }, { jarId: OTHER_JAR }).air.blush;
  };
  expect([blushOf(21, '20'), blushOf(21, '95'), blushOf(21, '95', 'waterborne')]).toEqual([
    'stays-clear',
    'blushes',
    undefined,
  ]);
});

const OTHER_JAR = '019caa01-0000-7000-9000-0000000000b7';
