import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { wholeKey } from '../../../src/actions/outlook/awaited';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { verdictFor } from '../../../src/actions/verdicts/verdict-for';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { DAY_1_MS, entry, fillJar, id, layCoat, PIECE, startPiece } from '../../logbook/entries';
import { anOutlook, HOURS } from '../../parts/an-outlook';

const HOUR_MS = 3_600_000;
const LID = id(0xe1);
const BODIES: readonly EntryBody[] = [
  startPiece(),
  fillJar(),
  { kind: 'zone-described', zoneId: LID, piece: PIECE, name: 'Lid' } as EntryBody,
  layCoat(),
];
const shop = fold(BODIES.map((body, n) => entry(n + 1, body, DAY_1_MS)));

/** The word on the next coat, 2.5 h after the first; the outlook of the helper allows it after 2 h, a slow one after 20. */
function wordOn(where: string | undefined, outlooks: Record<string, Outlook>) {
  const open = {
    shop: signal(shop),
    outlooks: signal(new Map(Object.entries(outlooks))),
    nowMs: signal(DAY_1_MS + 2.5 * HOUR_MS),
  };
  return verdictFor(open, where, { act: 'coat' })?.word;
}
const [quick, slow] = [anOutlook(), anOutlook({ ...HOURS, recoat: [10, 20, 30] })];

test('a place is judged by its own film, and by that of the rest of the piece where it has none', () => {
  expect(wordOn(LID, { [PIECE]: slow, [LID]: quick })).toBe('ready');
  expect(wordOn(LID, { [PIECE]: quick, [LID]: slow })).toBe('wait');
  expect(wordOn(LID, { [PIECE]: quick, [wholeKey(PIECE)]: slow })).toBe('wait');
});

test('a piece is judged by the film that it waits for', () => {
  expect(wordOn(PIECE, { [PIECE]: slow, [wholeKey(PIECE)]: quick })).toBe('wait');
  expect(wordOn(PIECE, { [PIECE]: quick })).toBe('ready');
});

test('of what is not in this logbook nothing is said', () => {
  expect(wordOn(id(0xe9), { [PIECE]: quick })).toBeUndefined();
  expect(wordOn(undefined, { [PIECE]: quick })).toBeUndefined();
});
