import { expect, test } from 'vitest';
import { factsOf } from '../../../src/actions/verdicts/facts-of';
import type { EntryBody } from '../../../src/logbook/entry';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { byUrgency, type RowStanding, rowStanding, sinceMs } from '../../../src/parts/time/row-standing';
import { standingOf } from '../../../src/verdicts/standing';
import { DAY_1_MS, layCoat, PIECE, sand } from '../../logbook/entries';
import { anOutlook, aShop } from '../an-outlook';

const HOUR_MS = 3_600_000;
const coat = { hour: 0, body: layCoat() };
const done = (stage: string, hour: number) => ({ hour, body: { ...sand(), stage } as EntryBody });
const fails = (hour: number) => ({
  hour,
  body: { kind: 'checked', piece: PIECE, test: 'print', result: 'fails' } as EntryBody,
});

// Milestones of the made-up outlook, in hours: recoat 1-2-3, level-sand 100-200-300, rub out 200-300-400.
test.each([
  { what: 'no coat yet', entries: [], hour: 1, word: 'bare', act: 'coat' },
  { what: 'before the band', entries: [coat], hour: 0.9, word: 'wait', act: 'coat', likely: 2 },
  {
    what: 'from the early end of the band',
    entries: [coat],
    hour: 1,
    word: 'perhaps',
    act: 'coat',
    likely: 2,
  },
  { what: 'from the likely time', entries: [coat], hour: 2, word: 'ready', act: 'coat', likely: 2 },
  { what: 'hard enough to level', entries: [coat], hour: 200, word: 'ready', act: 'level-sand', likely: 200 },
  { what: 'a film that prints', entries: [coat, fails(210)], hour: 220, word: 'hold', act: 'level-sand' },
  {
    what: 'levelled',
    entries: [coat, done('level', 210)],
    hour: 220,
    word: 'perhaps',
    act: 'rub-out',
    likely: 300,
  },
])('$what: $word', ({ entries, hour, word, act, likely }) => {
  const nowMs = DAY_1_MS + hour * HOUR_MS;
  const { shop, piece } = aShop(...entries);
  const outlook = anOutlook();
  const row = rowStanding(piece, standingOf(factsOf({ shop, piece, outlook, nowMs })), outlook);
  expect({ word: row.word, act: row.act }).toEqual({ word, act });
  if (likely !== undefined) expect(row.band?.likelyMs).toBe(DAY_1_MS + likely * HOUR_MS);
});

// The film is likely hard enough to level from hour 200, to rub out from hour 300.
test.each([
  {
    what: 'rubbed out after its time: from then',
    entries: [coat, done('rub-out', 310)],
    hour: 340,
    since: 310,
  },
  { what: 'levelled late', entries: [coat, done('level', 320)], hour: 340, since: 320 },
  {
    what: 'levelled in time: from the time of the film',
    entries: [coat, done('level', 210)],
    hour: 340,
    since: 300,
  },
  { what: 'not sanded', entries: [coat], hour: 340, since: 300 },
])('it is ready since: $what', ({ entries, hour, since }) => {
  const nowMs = DAY_1_MS + hour * HOUR_MS;
  const { shop, piece } = aShop(...entries);
  const outlook = anOutlook();
  const { word, band } = rowStanding(piece, standingOf(factsOf({ shop, piece, outlook, nowMs })), outlook);
  expect(word).toBe('ready');
  expect(sinceMs(piece, band ?? expect.unreachable())).toBe(DAY_1_MS + since * HOUR_MS);
});

test('before the judge has come it is being worked out, unless it is finished', () => {
  const { piece } = aShop(coat);
  expect(rowStanding(piece, undefined, undefined).word).toBe('working');
  expect(rowStanding({ ...piece, closedMs: 1 }, undefined, undefined).word).toBe('closed');
});

test('what is due within the hour comes first, then what is ready, what waits, and what has no coat', () => {
  const row = (name: string, word: RowStanding['word'], hours?: number): RowStanding => ({
    piece: { id: name, name, startedMs: 0, closedMs: undefined } as Piece,
    word,
    ...(hours !== undefined && {
      band: { earliestMs: 0, likelyMs: DAY_1_MS + hours * HOUR_MS, lateMs: 0 },
    }),
  });
  const rows = [
    row('bare', 'bare'),
    row('in a week', 'wait', 168),
    row('in three minutes', 'wait', 0.05),
    row('ready for weeks', 'ready', -400),
    row('held since just now', 'hold', 0),
    row('tomorrow', 'wait', 24),
    row('ready since this morning', 'ready', -3),
    row('ready for half an hour', 'ready', -0.5),
    row('perhaps', 'perhaps', 30),
  ];
  expect(byUrgency(rows, DAY_1_MS).map(({ piece }) => piece.name)).toEqual([
    'ready for half an hour',
    'in three minutes',
    'ready since this morning',
    'ready for weeks',
    'perhaps',
    'held since just now',
    'tomorrow',
    'in a week',
    'bare',
  ]);
});
