import { signal } from '@preact/signals';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { followStandings, standingsOf } from '../../../src/actions/verdicts/follow-standings';
import { isAllWorkedOut, keepStandings } from '../../../src/actions/verdicts/keep-standings';
import { keptStandings, standingAt } from '../../../src/actions/verdicts/kept-standings';
import { closedStanding, type Standing } from '../../../src/verdicts/standing';
import { DAY_1_MS, layCoat, PIECE } from '../../logbook/entries';
import { anOutlook, aShop, HOURS } from '../../parts/an-outlook';

const HOUR_MS = 3_600_000;
const KEPT = 'coatwait-standings';
let kept: Map<string, string>;
beforeEach(() => {
  kept = new Map();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  });
});
const at = (hour: number): number => DAY_1_MS + hour * HOUR_MS;
const COATED = { hour: 0, body: layCoat() };
const CLOSED = { hour: 1, body: { kind: 'piece-closed', piece: PIECE } } as const;
const on = (outlook: Outlook): ReadonlyMap<string, Outlook> => new Map([[PIECE, outlook]]);
const COMPUTING: Outlook = { state: 'computing' };

// The made-up outlook: recoat 1, 2, 3 h after the coat.
function following(outlook: Outlook, hour = 0.5) {
  const open = aShop(COATED);
  const shop = signal(open.shop);
  const outlooks = signal(on(outlook));
  const nowMs = signal(at(hour));
  const standings = signal<ReadonlyMap<string, Standing>>(new Map());
  const stop = followStandings({
    which: 'own',
    shop,
    outlooks,
    nowMs,
    standings,
    beforeDrawing: (job) => job(),
  });
  const word = () => standings.value.get(PIECE)?.verdict?.word;
  return { shop, outlooks, nowMs, standings, stop, word };
}

describe('where a piece stands', () => {
  test('follows its estimate, the clock and what is logged, until it is stopped', () => {
    const { shop, outlooks, nowMs, stop, word } = following(anOutlook());
    expect(word()).toBe('wait');
    nowMs.value = at(1.5);
    expect(word()).toBe('perhaps');
    outlooks.value = on(anOutlook({ ...HOURS, recoat: [0.1, 0.2, 0.3] }));
    expect(word()).toBe('ready');
    shop.value = aShop(COATED, { hour: 1.4, body: layCoat() }, CLOSED).shop;
    expect(word()).toBeUndefined();
    shop.value = aShop(COATED).shop;
    stop();
    nowMs.value = at(0.05);
    expect(word()).toBe('ready');
  });

  test('is kept for the next first frame once all is worked out, and anew with every estimate', () => {
    const { outlooks, nowMs } = following(COMPUTING);
    expect(kept.has(KEPT)).toBe(false);
    outlooks.value = on(anOutlook());
    const first = kept.get(KEPT);
    expect(first).toBeDefined();
    kept.clear();
    nowMs.value = at(0.6); // time alone is told by what is kept
    expect(kept.has(KEPT)).toBe(false);
    outlooks.value = on(anOutlook({ ...HOURS, recoat: [5, 6, 7] }));
    expect(kept.get(KEPT)).not.toBe(first);
  });

  test('of a closed piece is that it is closed, of one that is not worked out what was kept of it', () => {
    const closed = aShop(COATED, CLOSED).shop;
    expect(standingsOf(closed, on(anOutlook()), at(2)).get(PIECE)).toEqual(closedStanding(at(1)));
    const { shop } = aShop(COATED);
    const before = standingsOf(shop, on(anOutlook()), at(0.5));
    const asKept: Outlook = { ...anOutlook(), state: 'kept', key: '' };
    const then = standingsOf(shop, on(asKept), at(1.5), before).get(PIECE);
    expect(then?.verdict?.word).toBe('perhaps');
    expect(standingsOf(shop, on(asKept), at(1.5)).get(PIECE)?.verdict?.word).toBe('wait'); // nothing was
    expect(standingsOf(shop, on(COMPUTING), at(1.5), before).get(PIECE)?.verdict?.word).toBe('wait');
  });
});

describe('what is kept', () => {
  test.each<{ what: string; outlook: Outlook; is: boolean }>([
    { what: 'worked out', outlook: anOutlook(), is: true },
    { what: 'failed', outlook: { state: 'failed', message: '' }, is: true },
    { what: 'without a coat', outlook: { state: 'no-coats' }, is: true },
    { what: 'still the old one', outlook: { ...anOutlook(), state: 'kept', key: '' }, is: false },
    { what: 'being worked out', outlook: COMPUTING, is: false },
  ])('waits for all: $what is enough: $is', ({ outlook, is }) => {
    expect(isAllWorkedOut(on(outlook))).toBe(is);
  });

  test('is nothing of a piece that failed, is not there, or was not judged', () => {
    const { shop } = aShop(COATED);
    const standings = standingsOf(shop, on(anOutlook()), at(1));
    const lines = (outlooks: ReadonlyMap<string, Outlook>, judged = standings) => {
      keepStandings('own', shop, outlooks, judged, at(1));
      return Object.keys(JSON.parse(kept.get(KEPT) ?? '{}'));
    };
    expect(lines(on(anOutlook()))).toEqual([PIECE]);
    expect(lines(on({ state: 'failed', message: '' }))).toEqual([]);
    expect(lines(new Map([['gone', anOutlook()]]))).toEqual([]);
    expect(lines(on(anOutlook()), new Map())).toEqual([]);
  });

  test('of a film is how it is about now, in an hour, in a day and at last, each layer of it', () => {
    const { shop } = aShop(COATED);
    const layers = [
      { dryM: 12e-6, solventM: 3e-6 },
      { dryM: 8e-6, solventM: 1.26e-6 },
    ];
    const profiles = [0.5, 1.5, 1.9, 24, 90].map((hour) => ({ timeS: hour * 3600, layers }));
    const looksAt = (hour: number, some = profiles) => {
      const outlook = anOutlook(HOURS, some as never);
      keepStandings('own', shop, on(outlook), standingsOf(shop, on(outlook), at(hour)), at(hour));
      const found = keptStandings('own', shop, at(hour)).outlooks.get(PIECE);
      return found?.state === 'kept' ? found.estimate.profiles : [];
    };
    expect(looksAt(1).map(({ timeS }) => timeS / 3600)).toEqual([0.5, 1.9, 24, 90]);
    expect(looksAt(0.1).map(({ timeS }) => timeS / 3600)).toEqual([0.5, 24, 90]); // before the first look the first
    expect(looksAt(1)[0]?.layers).toEqual([
      { dryM: expect.closeTo(12e-6, 9), solventM: expect.closeTo(3e-6, 9) },
      { dryM: expect.closeTo(8e-6, 9), solventM: expect.closeTo(1.3e-6, 9) },
    ]);
    expect(looksAt(1, [])).toEqual([]);
  });
});

test('time alone changes no standing that waits for nothing, and no hold', () => {
  const { shop } = aShop(COATED);
  const [standing] = standingsOf(shop, on(anOutlook()), at(0.5)).values();
  const { verdict } = standing as Standing;
  const held = { ...standing, verdict: { ...verdict, word: 'hold' } } as Standing;
  expect(standingAt(held, at(99))).toBe(held);
  const free = { ...standing, verdict: { ...verdict, until: undefined } } as Standing;
  expect(standingAt(free, at(99))).toBe(free);
  const judged = ([1, 1.999, 2] as const).map(
    (hour) => standingAt(standing as Standing, at(hour)).verdict?.word,
  );
  expect(judged).toEqual(['perhaps', 'perhaps', 'ready']);
});
