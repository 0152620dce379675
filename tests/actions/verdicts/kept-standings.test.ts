import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { factsOf } from '../../../src/actions/verdicts/facts-of';
import { isAllWorkedOut, keepStandings } from '../../../src/actions/verdicts/keep-standings';
import { keptStandings } from '../../../src/actions/verdicts/kept-standings';
import type { EntryBody } from '../../../src/logbook/entry';
import { standingOf } from '../../../src/verdicts/standing';
import { DAY_1_MS, layCoat, PIECE } from '../../logbook/entries';
import { anOutlook, aShop, HOURS } from '../../parts/an-outlook';

const HOUR_MS = 3_600_000;
const profiles = [0, 1, 20, 400].map((hour) => ({
  timeS: hour * 3600,
  layers: [{ dryM: 12e-6, solventM: 30e-6 / (hour + 1) }],
}));

beforeEach(() => {
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  });
});
afterEach(() => vi.unstubAllGlobals());

const coat = { hour: 0, body: layCoat() };

/** A piece with a coat, judged and kept so many hours after it. */
function keptAfter(hours: number) {
  const { shop, piece } = aShop(coat);
  const outlook = anOutlook(HOURS, profiles);
  const nowMs = DAY_1_MS + hours * HOUR_MS;
  const standing = standingOf(factsOf({ shop, piece, outlook, nowMs }));
  keepStandings('own', shop, new Map([[PIECE, outlook]]), new Map([[PIECE, standing]]), nowMs);
  return { shop, standing, outlook, nowMs };
}

test('what was judged comes back in the next first frame: the same standing, the same milestones, the film as it is', () => {
  const { shop, standing, outlook, nowMs } = keptAfter(1);
  const { standings, outlooks } = keptStandings('own', shop, nowMs);
  const { verdict, ...others } = standings.get(PIECE) ?? standing;
  expect(others).toEqual({ ...others, moment: standing.moment, sortMs: standing.sortMs });
  expect(verdict).toMatchObject({ word: 'perhaps', act: 'coat', until: { likelyMs: standing.sortMs } });
  const kept = outlooks.get(PIECE);
  expect(kept).toMatchObject({ state: 'kept', estimate: { milestones: outlook.estimate.milestones } });
  const looks = kept?.state === 'kept' ? kept.estimate.profiles : [];
  expect(looks.map(({ timeS }) => timeS / 3600)).toEqual([1, 20, 400]);
  expect(looks[0]?.layers[0]?.solventM).toBeCloseTo(15e-6, 8);
  expect(keptStandings('demo', shop, nowMs).standings.size).toBe(0);
});

// Recoat in the made-up outlook: 1-2-3 h.
test.each([
  { hours: 0.9, word: 'wait' },
  { hours: 1.5, word: 'perhaps' },
  { hours: 2, word: 'ready' },
])(
  '$hours h after the coat the kept word is $word, though it was kept when it was wet',
  ({ hours, word }) => {
    const { shop } = keptAfter(0.1);
    const { standings } = keptStandings('own', shop, DAY_1_MS + hours * HOUR_MS);
    expect(standings.get(PIECE)?.verdict?.word).toBe(word);
  },
);

test('what a person alone can clear stays held, whatever the time', () => {
  const printed = { kind: 'checked', piece: PIECE, test: 'print', result: 'fails' } as const;
  const { shop, piece } = aShop(coat, { hour: 210, body: printed });
  const outlook = anOutlook(HOURS, profiles);
  const nowMs = DAY_1_MS + 210 * HOUR_MS;
  const standing = standingOf(factsOf({ shop, piece, outlook, nowMs }));
  expect(standing.verdict?.word).toBe('hold');
  keepStandings('own', shop, new Map([[PIECE, outlook]]), new Map([[PIECE, standing]]), nowMs);
  const later = keptStandings('own', shop, nowMs + 1000 * HOUR_MS).standings.get(PIECE);
  expect(later?.verdict?.word).toBe('hold');
});

test('a time that is never reached is none after it was kept, too', () => {
  const { shop, piece } = aShop(coat);
  const never = Number.POSITIVE_INFINITY;
  const outlook = anOutlook({ ...HOURS, recoat: [1, never, never] }, profiles);
  const nowMs = DAY_1_MS + HOUR_MS / 2;
  const standing = standingOf(factsOf({ shop, piece, outlook, nowMs }));
  keepStandings('own', shop, new Map([[PIECE, outlook]]), new Map([[PIECE, standing]]), nowMs);
  const read = (hour: number) => keptStandings('own', shop, DAY_1_MS + hour * HOUR_MS).standings.get(PIECE);
  expect(read(0.5)?.verdict).toMatchObject({ word: 'wait', until: { likelyMs: never, lateMs: never } });
  expect(read(9000)?.verdict?.word).toBe('perhaps');
  expect(read(0.5)?.moment?.lateMs).toBe(never);
});

test('a piece without a coat is kept with its standing alone, a closed one not at all', () => {
  const keptOf = (...done: readonly { readonly hour: number; readonly body: EntryBody }[]) => {
    const { shop, piece } = aShop(...done);
    const standing = standingOf(factsOf({ shop, piece, outlook: undefined, nowMs: DAY_1_MS }));
    const outlooks = new Map([[PIECE, { state: 'no-coats' } as const]]);
    keepStandings('own', shop, outlooks, new Map([[PIECE, standing]]), DAY_1_MS);
    return keptStandings('own', shop, DAY_1_MS);
  };
  const open = keptOf();
  expect(open.standings.get(PIECE)?.group).toBe('now');
  expect(open.outlooks.size).toBe(0);
  expect(keptOf({ hour: 1, body: { kind: 'piece-closed', piece: PIECE } }).standings.size).toBe(0);
});

test('what was judged before more work on the piece is not shown after it', () => {
  keptAfter(1);
  const later = aShop(coat, { hour: 1, body: layCoat() });
  expect(keptStandings('own', later.shop, DAY_1_MS).standings.size).toBe(0);
});

test.each(['', '{', '[]', '{"a":1}', `{"${PIECE}":[]}`])('what is not ours is left alone: %s', (text) => {
  localStorage.setItem('coatwait-standings', text);
  expect(keptStandings('own', aShop(coat).shop, DAY_1_MS).outlooks.size).toBe(0);
});

test('nothing is kept while anything is still worked out', () => {
  expect(isAllWorkedOut(new Map([[PIECE, anOutlook()]]))).toBe(true);
  expect(isAllWorkedOut(new Map([[PIECE, { state: 'computing' } as const]]))).toBe(false);
});
