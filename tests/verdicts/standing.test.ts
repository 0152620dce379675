import { describe, expect, test } from 'vitest';
import type { Outlook } from '../../src/actions/outlook/outlook';
import { factsOf } from '../../src/actions/verdicts/facts-of';
import type { EntryBody } from '../../src/logbook/entry';
import { type Standing, standingOf } from '../../src/verdicts/standing';
import { DAY_1_MS, layCoat, PIECE, sand } from '../logbook/entries';
import { anOutlook, aShop, HOURS } from '../parts/an-outlook';

const coat = { hour: 0, body: layCoat() };
const level = (hour: number) => ({ hour, body: { ...sand(), stage: 'level' } as EntryBody });
const rubOut = (hour: number) => ({ hour, body: { ...sand(), stage: 'rub-out' } as EntryBody });
const close = (hour: number) => ({ hour, body: { kind: 'piece-closed', piece: PIECE } as EntryBody });
const hoursOn = (hour: number): number => DAY_1_MS + hour * 3_600_000;

// Milestones of the made-up outlook, in hours: recoat 1-2-3, level-sand 100-200-300, rub out 200-300-400.
describe('where a piece stands', () => {
  test.each([
    { name: 'without a coat it is ready for one', done: [], hour: 1, group: 'now', ready: 'coat' },
    { name: 'wet, it waits for recoat', done: [coat], hour: 0.5, group: 'next', waits: 'recoat' },
    {
      name: 'inside the band and before the likely time it still waits',
      done: [coat],
      hour: 1.5,
      group: 'next',
      waits: 'recoat',
    },
    {
      name: 'from the likely time on it may take a coat',
      done: [coat],
      hour: 2,
      group: 'now',
      ready: 'coat',
      waits: 'level',
    },
    {
      name: 'after a night it may still take a coat',
      done: [coat],
      hour: 16,
      group: 'now',
      ready: 'coat',
      waits: 'level',
    },
    {
      name: 'days after its last coat it waits for the sanding',
      done: [coat],
      hour: 80,
      group: 'later',
      waits: 'level',
    },
    {
      name: 'on the last day it comes next',
      done: [coat],
      hour: 180,
      group: 'next',
      waits: 'level',
    },
    {
      name: 'then it may be level-sanded',
      done: [coat],
      hour: 210,
      group: 'now',
      ready: 'level-sand',
      waits: 'rubOut',
    },
    {
      name: 'level-sanded, it waits for rubbing out',
      done: [coat, level(210)],
      hour: 220,
      group: 'later',
      waits: 'rubOut',
    },
    {
      name: 'level-sanded late, it may be rubbed out',
      done: [coat, level(310)],
      hour: 320,
      group: 'now',
      ready: 'rub-out',
    },
    {
      name: 'rubbed out, it may be handed over',
      done: [coat, level(310), rubOut(320)],
      hour: 330,
      group: 'now',
      ready: 'hand-over',
    },
    { name: 'closed, it leaves the bench', done: [coat, close(5)], hour: 6, group: 'closed' },
  ])('$name', ({ done, hour, group, ready, waits }) => {
    const standing = standingIn(aShop(...done), anOutlook(), hour);
    const { verdict } = standing;
    expect(standing.group).toBe(group);
    expect(verdict?.word === 'ready' ? verdict.act : undefined).toBe(ready);
    expect((ready === undefined ? standing.moment : standing.after)?.name).toBe(waits);
  });

  test.each([
    { what: 'a weekend after its coat it may still take one', done: [coat], hour: 71, act: 'coat' },
    { what: 'from the third day on it waits for the sanding', done: [coat], hour: 72, act: 'level-sand' },
  ])('$what', ({ done, hour, act }) => {
    expect(standingIn(aShop(...done), anOutlook(), hour).verdict?.act).toBe(act);
  });

  test('a coat whose recoat time is still to come waits for it, however long ago it was laid', () => {
    const slow = anOutlook({ ...HOURS, recoat: [100, 150, 200] });
    expect(standingIn(aShop(coat), slow, 90).moment?.name).toBe('recoat');
    expect(standingIn(aShop(coat), slow, 90).verdict?.act).toBe('coat');
    expect(standingIn(aShop(coat), slow, 150).moment?.name).toBe('level');
  });

  test('comes next from less than a day before its time on', () => {
    const group = (hour: number) => standingIn(aShop(coat), anOutlook(), hour).group;
    expect([group(176), group(176.1)]).toEqual(['later', 'next']); // level-sand after 200 h
  });

  test('is sorted by the moment that it waits for', () => {
    const sortMs = (done: (typeof coat)[], outlook: Outlook | undefined, hour: number) =>
      standingIn(aShop(...done), outlook, hour).sortMs;
    expect(sortMs([], undefined, 1)).toBe(hoursOn(0)); // when it was begun
    expect(sortMs([coat], anOutlook(), 1)).toBe(hoursOn(2));
    expect(sortMs([coat], { state: 'computing' }, 1)).toBe(Number.POSITIVE_INFINITY);
    expect(sortMs([coat, close(5)], anOutlook(), 6)).toBe(-hoursOn(5)); // the one closed last first
  });

  test('tells when it is dry to touch, and what is held', () => {
    const standing = standingIn(aShop(coat), anOutlook(), 1);
    expect(standing.touch?.likelyMs).toBeCloseTo(hoursOn(0.2), -1);
    const printed = {
      hour: 210,
      body: { kind: 'checked', piece: PIECE, test: 'print', result: 'fails' } as EntryBody,
    };
    expect(standingIn(aShop(coat, printed), anOutlook(), 220).group).toBe('held');
  });

  test.each<{ outlook: Outlook | undefined; word: string }>([
    { outlook: undefined, word: 'wait' },
    { outlook: { state: 'computing' }, word: 'wait' },
    { outlook: { state: 'failed', message: '' }, word: 'perhaps' },
  ])('with no estimate ($outlook.state) nothing is claimed', ({ outlook, word }) => {
    const standing = standingIn(aShop(coat), outlook, 3);
    expect([standing.group, standing.verdict?.word]).toEqual(['later', word]);
  });
});

const standingIn = (shop: ReturnType<typeof aShop>, outlook: Outlook | undefined, hour: number): Standing =>
  standingOf(factsOf({ ...shop, outlook, nowMs: hoursOn(hour) }));
