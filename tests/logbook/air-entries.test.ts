import { describe, expect, test } from 'vitest';
import { admit } from '../../src/logbook/admit/admit';
import { type EntryBody, parseEntry } from '../../src/logbook/entry';
import { fold } from '../../src/logbook/fold/fold';
import { LOGBOOK_WORDS } from '../../src/words/frame/logbook';
import { A_YEAR_ON_MS, entry, id, JAR, PIECE, SHIPPED, startPiece } from './entries';

const shipped = (kind: string): Record<string, unknown> => {
  const found = SHIPPED.find((one) => one['kind'] === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
};
const min = (text: string) => ({ text, unit: 'min' });
const percent = (text: string) => ({ text, unit: '%' });
const sheet = shipped('sheet-entered');
const room = shipped('room-described');

describe('what cannot be is refused where it stands, with what would be accepted', () => {
  test.each([
    {
      why: 'a recoat window that ends before it begins',
      from: { ...sheet, times: { recoatFrom: min('60'), recoatUntil: min('45') } },
      path: 'times.recoatUntil',
      says: LOGBOOK_WORDS.windowEndsFirst,
    },
    {
      why: 'a window without length',
      from: { ...sheet, times: { recoatFrom: min('60'), recoatUntil: { text: '1', unit: 'h' } } },
      path: 'times.recoatUntil',
      says: LOGBOOK_WORDS.windowEndsFirst,
    },
    {
      why: 'a time that is no number',
      from: { ...sheet, times: { recoatFrom: min('soon'), recoatUntil: min('45') } },
      path: 'times.recoatFrom',
      says: LOGBOOK_WORDS.notANumber,
    },
    {
      why: 'an explosive limit of 0',
      from: { ...room, explosiveLimit: percent('0') },
      path: 'explosiveLimit',
      says: '0.1 to 30 %',
    },
    {
      why: 'a room of nothing',
      from: { ...room, volume: { text: '0', unit: 'm3' } },
      path: 'volume',
      says: '1 to 100000 m³',
    },
    {
      why: 'a mixing factor under 1',
      from: { ...room, mixing: { text: '0.5', unit: 'ratio' } },
      path: 'mixing',
      says: '1 to 10',
    },
    {
      why: 'a drop left for a day',
      from: { ...shipped('spot-tested'), dwell: { text: '1440', unit: 'min' } },
      path: 'dwell',
      says: 'min',
    },
    {
      why: 'silencing a caution of fire',
      from: { ...shipped('caution-silenced'), caution: 'ignition' },
      path: 'caution',
      says: LOGBOOK_WORDS.alwaysShown,
    },
    {
      why: 'silencing the rags',
      from: { ...shipped('caution-silenced'), caution: 'rags' },
      path: 'caution',
      says: LOGBOOK_WORDS.alwaysShown,
    },
    {
      why: 'silencing isocyanate',
      from: { ...shipped('caution-silenced'), caution: 'isocyanate' },
      path: 'caution',
      says: LOGBOOK_WORDS.alwaysShown,
    },
    {
      why: 'a correction of half the scale',
      from: { ...shipped('air-read'), correction: percent('50') },
      path: 'correction',
      says: '30 %',
    },
  ])('$why', ({ from, path, says }) => {
    const parsed = parseEntry(from, A_YEAR_ON_MS);
    if (parsed.ok) throw new Error('It was accepted.');
    expect(parsed.failure.map((issue) => issue.path)).toContain(path);
    expect(parsed.failure.find((issue) => issue.path === path)?.problem).toContain(says);
  });
});

const shop = fold([
  entry(1, startPiece()),
  entry(2, { kind: 'filter-opened', filter: id(0xc1), part: 'cartridge', name: 'A2' }),
  entry(3, { kind: 'spraying-ended', lasted: { text: '20', unit: 'min' }, filters: [id(0xc1)] }),
]);

describe('an entry must fit the shop', () => {
  test.each<{ why: string; body: EntryBody; ground: string }>([
    {
      why: 'a test on no piece',
      body: { kind: 'lead-tested', piece: id(9), finding: 'found' },
      ground: 'unknown-piece',
    },
    {
      why: 'a sheet for no jar',
      body: {
        kind: 'sheet-entered',
        jar: JAR,
        temperature: { text: '20', unit: 'C' },
        humidity: { text: '50', unit: '%' },
        times: {},
      },
      ground: 'unknown-jar',
    },
    {
      why: 'throwing out no filter',
      body: { kind: 'filter-thrown-out', filter: id(9) },
      ground: 'unknown-filter',
    },
    {
      why: 'a spraying with a filter that is not there',
      body: { kind: 'spraying-ended', lasted: { text: '20', unit: 'min' }, filters: [id(9)] },
      ground: 'unknown-filter',
    },
    {
      why: 'the same filter again',
      body: { kind: 'filter-opened', filter: id(0xc1), part: 'cartridge', name: 'A2' },
      ground: 'filter-there-already',
    },
    { why: 'undoing a filter that has worn', body: { kind: 'struck', entry: id(2) }, ground: 'still-used' },
  ])('$why: $ground', ({ body, ground }) => {
    expect(admit(entry(50, body), shop, A_YEAR_ON_MS)).toMatchObject({
      ok: false,
      failure: { kind: ground },
    });
  });

  test('one that does is taken', () => {
    const body: EntryBody = { kind: 'lead-tested', piece: PIECE, finding: 'none-found' };
    expect(admit(entry(50, body), shop, A_YEAR_ON_MS).ok).toBe(true);
  });
});
