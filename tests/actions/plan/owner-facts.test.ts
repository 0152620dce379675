import { signal } from '@preact/signals';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { followPlan } from '../../../src/actions/plan/follow-plan';
import { ownerFacts } from '../../../src/actions/plan/owner-facts';
import type { OpenShop } from '../../../src/actions/shop';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { check, DAY_1_MS, entry, fillJar, id, layCoat, PIECE, startPiece } from '../../logbook/entries';
import { anOutlook, HOURS } from '../../parts/an-outlook';

vi.hoisted(() => vi.stubEnv('TZ', 'UTC')); // before the words of days take the zone of the machine
beforeEach(() => void vi.stubGlobal('localStorage', undefined));

const HOUR_MS = 3_600_000;
const NAMES = {
  piece: (pieceId: string) => `the box ${pieceId === PIECE}`,
  step: (stepId: string) => stepId.slice(-2),
};
// On UTC; open from 07:00 to 20:00 on every day; it is Sunday the first of March, 08:00.
const week = (close: string): EntryBody => ({
  kind: 'hours-set',
  week: Array.from({ length: 7 }, () => ({ work: [{ open: '07:00', close }] })),
});
const coat = (n: number) =>
  ({ kind: 'work', id: id(n), task: 'coat', place: 'booth', minutes: 10, isCoat: true }) as const;
const wait = (n: number, hours: number) =>
  ({
    kind: 'wait',
    id: id(n),
    until: 'recoat',
    isOwn: true,
    minutes: { earliest: hours * 60, likely: hours * 60, late: hours * 60 },
  }) as const;
const look = {
  kind: 'gate',
  id: id(0x29),
  check: 'look-over',
  minutes: 5,
  againAfterMinutes: 60,
  mostFailures: 3,
} as const;
const plan = (...steps: readonly unknown[]): EntryBody =>
  ({ kind: 'piece-planned', piece: PIECE, coatsADay: 3, steps }) as unknown as EntryBody;
const flash = { ...layCoat(), how: 'flash' } as EntryBody;
const promised = (iso: string): EntryBody => ({ kind: 'piece-promised', piece: PIECE, promised: iso });
const PLAN = plan(coat(0x21), wait(0x22, 26), coat(0x23), wait(0x24, 1), look);

function opened(bodies: readonly EntryBody[], outlook?: Outlook, nowHour = 0) {
  const entries: Entry[] = [week('20:00'), startPiece(), fillJar(), ...bodies].map((body, n) =>
    entry(n + 1, body, DAY_1_MS),
  );
  const shop = signal(fold(entries));
  const outlooks = signal(new Map<string, Outlook>(outlook ? [[PIECE, outlook]] : []));
  const settled = signal({ shop: shop.value, outlooks: outlooks.value });
  const nowMs = signal(DAY_1_MS + nowHour * HOUR_MS);
  const needs = { zone: () => 'UTC' };
  const open = {
    which: 'own',
    shop,
    outlooks,
    settled,
    nowMs,
    needs,
    isWhole: signal(true),
  } as unknown as OpenShop;
  const log = (body: EntryBody): void => {
    entries.push(entry(entries.length + 1, body, DAY_1_MS));
    shop.value = fold(entries);
    settled.value = { ...settled.value, shop: shop.value };
  };
  const facts = (pieceId = PIECE) => ownerFacts(open, pieceId, NAMES, ({ says }) => says);
  return { open, log, facts };
}
const factsOn = (bodies: readonly EntryBody[], outlook?: Outlook, nowHour = 0) =>
  opened(bodies, outlook, nowHour).facts();

describe('what an owner is told', () => {
  test('is what is on, what is to come, and the days of the plan', () => {
    expect(factsOn([PLAN, layCoat(), flash])).toMatchObject({
      piece: 'the box true',
      coatsDone: 1,
      coatsPlanned: 2,
      next: 'Coat',
      earliest: expect.stringContaining('2 Mar'),
      likely: expect.stringContaining('2 Mar'),
      promised: undefined,
      isHeld: false,
      setAside: [],
    });
    expect(factsOn([PLAN])).toMatchObject({ coatsDone: 0, coatsPlanned: 2 });
    expect(factsOn([plan(look), layCoat()])?.next).toBe('Check: look over');
  });

  test('is nothing where nothing is planned, or no plan can be made', () => {
    expect(factsOn([])).toBeUndefined();
    expect(factsOn([layCoat()])).toBeUndefined(); // its rags are on the bench's plan, and nothing to come
    expect(opened([PLAN]).facts(id(0xee))).toBeUndefined();
    expect(factsOn([plan({ ...coat(0x21), minutes: 900 })])).toBeUndefined();
  });

  test.each([
    { by: '2026-03-20T15:00:00.000Z', is: true },
    { by: '2026-03-01T15:00:00.000Z', is: false },
    { by: '2026-02-20T15:00:00.000Z', is: false },
  ])('says of the day promised, $by, whether it is kept: $is', ({ by, is }) => {
    const facts = factsOn([PLAN, layCoat(), promised(by)]);
    expect(facts?.promised).toBeDefined();
    expect(facts?.isPromiseKept).toBe(is);
  });

  test('says why the next step waits, where it is more than the step before', () => {
    expect(factsOn([plan(coat(0x21), wait(0x22, 1), coat(0x23)), layCoat()])?.why).toBeUndefined();
    expect(factsOn([PLAN])?.why).toBeUndefined(); // it may begin now
    const closed: EntryBody = {
      kind: 'closure-set',
      closure: id(0x51),
      span: { from: new Date(DAY_1_MS).toISOString(), to: new Date(DAY_1_MS + 3 * HOUR_MS).toISOString() },
      closes: 'everything',
    } as EntryBody;
    expect(factsOn([PLAN, closed])?.why).toBeDefined();
  });

  test('says what moved the piece before what holds it', () => {
    const { open, log, facts } = opened([plan(coat(0x21), wait(0x22, 1), coat(0x23)), layCoat()]);
    followPlan(open);
    log(plan(coat(0x21), wait(0x22, 4), coat(0x23)));
    expect(facts()?.why).toContain('22');
  });
});

describe('the day from which the film is settled', () => {
  const settled = (late: number) => anOutlook({ ...HOURS, settled: [10, 20, late] });
  const bodies = [PLAN, layCoat()];

  test('is the last that the model gives, while it lies ahead', () => {
    expect(factsOn(bodies, settled(48))?.settled).toContain('3 Mar');
    expect(factsOn(bodies, settled(48), 48)?.settled).toBeUndefined();
    expect(factsOn(bodies, settled(Number.POSITIVE_INFINITY))?.settled).toBeUndefined();
    expect(factsOn(bodies, { state: 'computing' })?.settled).toBeUndefined();
  });

  test('is none while a check has found the film soft', () => {
    expect(factsOn([...bodies, check()], settled(48))?.settled).toBeUndefined();
  });
});

test('a hold that was set aside is told with the reason that was written', () => {
  const override: EntryBody = {
    kind: 'hold-overridden',
    piece: PIECE,
    rule: 'film-prints',
    act: 'promise',
    reason: 'Only the hidden edge, the rest is hard.',
  } as EntryBody;
  const held = factsOn([PLAN, layCoat(), check()], anOutlook(), 500);
  expect(held).toMatchObject({ isHeld: true, setAside: [] });
  const facts = factsOn([PLAN, layCoat(), check(), override], anOutlook(), 500);
  expect(facts?.setAside).toEqual([expect.stringContaining('Only the hidden edge')]);
});
