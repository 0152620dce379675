import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../../src/logbook/entry';
import { fold } from '../../../../src/logbook/fold/fold';
import { filterClock, filtersInUse, openDays } from '../../../../src/shop/air/filter-clock';
import { findingOf, hasLayers, oldFinishOf, sandingRule } from '../../../../src/shop/stack/old-finish';
import { sheetOf } from '../../../../src/shop/stack/sheet-times';
import { DAY_1_MS, fillJar, id, inTurn, JAR, PIECE, startPiece, strike } from '../../entries';

const CARTRIDGE = id(0xc1);
const HOUR_MS = 3_600_000;
const open = (more: object = {}): EntryBody =>
  ({ kind: 'filter-opened', filter: CARTRIDGE, part: 'cartridge', name: 'A2', ...more }) as EntryBody;
const sprayed = (minutes: number, filters = [CARTRIDGE]): EntryBody => ({
  kind: 'spraying-ended',
  lasted: { text: String(minutes), unit: 'min' },
  filters,
});
const shopOf = (...bodies: EntryBody[]) => fold(bodies.map(inTurn));

describe('a cartridge', () => {
  const schedule = { wear: { text: '8', unit: 'h' }, open: { text: '30', unit: 'd' } };
  const clockOf = (shop: ReturnType<typeof shopOf>, hours: number) => {
    const filter = shop.filters.get(CARTRIDGE);
    if (!filter) throw new Error('no filter');
    return filterClock(filter, filter.openedMs + hours * HOUR_MS);
  };

  test.each([
    { minutes: [60, 60], hours: 5, state: 'fresh' },
    { minutes: [240, 150], hours: 9, state: 'soon' },
    { minutes: [240, 240], hours: 9, state: 'due' },
    { minutes: [], hours: 29 * 24, state: 'soon' },
    { minutes: [], hours: 30 * 24, state: 'due' },
  ])('worn $minutes min, open $hours h: $state', ({ minutes, hours, state }) => {
    const shop = shopOf(open(schedule), ...minutes.map((one) => sprayed(one)));
    expect(clockOf(shop, hours).state).toBe(state);
  });

  test('without a schedule it says so, and its clock still runs', () => {
    expect(clockOf(shopOf(open(), sprayed(90)), 48)).toEqual({
      wornS: 5400,
      openS: 172_800,
      state: 'no-schedule',
    });
  });

  test.each([
    { hours: 23, days: 0 },
    { hours: 24, days: 1 },
    { hours: 47, days: 1 },
    { hours: -5, days: 0 }, // opened by the clock of another phone
  ])('open $hours h it is $days days old', ({ hours, days }) => {
    expect(openDays(clockOf(shopOf(open()), hours))).toBe(days);
  });

  test('wears only by the sprayings it was worn in, and not by one that was undone', () => {
    expect(shopOf(open(), sprayed(30, []), sprayed(20)).filters.get(CARTRIDGE)?.wornS).toBe(1200);
    expect(shopOf(open(), sprayed(20), strike(id(2))).filters.get(CARTRIDGE)?.wornS).toBe(0);
  });

  test('thrown out, it is no longer in use', () => {
    const shop = shopOf(open(), { kind: 'filter-thrown-out', filter: CARTRIDGE });
    expect(filtersInUse(shop.filters)).toEqual([]);
    expect(shop.filters.get(CARTRIDGE)?.thrownOutMs).toBe(DAY_1_MS + 2 * 60_000);
  });
});

describe('an old finish', () => {
  const seen = (opaque: boolean): EntryBody => ({ kind: 'old-finish-seen', piece: PIECE, opaque, signs: [] });
  const LEAD = { kind: 'lead-tested', piece: PIECE } as const;
  const lead = (finding: 'none-found' | 'found' | 'treat-as-lead') => ({ ...LEAD, finding });
  const rule = (...bodies: EntryBody[]) => sandingRule(oldFinishOf(PIECE, shopOf(startPiece(), ...bodies)));

  test.each<{ said: string; bodies: EntryBody[]; expected: string }>([
    { said: 'nothing', bodies: [], expected: 'any' },
    { said: 'clear', bodies: [seen(false)], expected: 'any' },
    { said: 'opaque', bodies: [seen(true)], expected: 'test-first' },
    { said: 'opaque, none found', bodies: [seen(true), lead('none-found')], expected: 'any' },
    { said: 'opaque, found', bodies: [seen(true), lead('found')], expected: 'wet-only' },
    { said: 'opaque, treated as lead', bodies: [seen(true), lead('treat-as-lead')], expected: 'wet-only' },
    { said: 'found, later said to be clear', bodies: [lead('found'), seen(false)], expected: 'wet-only' },
    {
      said: 'found, then none, not in writing',
      bodies: [lead('found'), lead('none-found')],
      expected: 'wet-only',
    },
    {
      said: 'found, then treated as lead',
      bodies: [lead('found'), lead('treat-as-lead')],
      expected: 'wet-only',
    },
    {
      said: 'found, corrected in writing',
      bodies: [seen(true), lead('found'), { ...lead('none-found'), correction: 'A laboratory found none.' }],
      expected: 'any',
    },
    {
      said: 'found, taken back in writing',
      bodies: [
        seen(true),
        lead('found'),
        { ...LEAD, finding: 'untested', correction: 'It was another piece.' },
      ],
      expected: 'test-first',
    },
    {
      said: 'none, then found',
      bodies: [seen(true), lead('none-found'), lead('found')],
      expected: 'wet-only',
    },
    {
      said: 'treated as lead, then tested',
      bodies: [seen(true), lead('treat-as-lead'), lead('none-found')],
      expected: 'any',
    },
  ])('$said: $expected', ({ bodies, expected }) => expect(rule(...bodies)).toBe(expected));

  test('has more than one layer where it was seen so, or a drop moved the top one alone', () => {
    const layered = (...bodies: EntryBody[]) =>
      hasLayers(oldFinishOf(PIECE, shopOf(startPiece(), ...bodies)));
    const looked = (layers?: number) => ({ ...seen(true), ...(layers && { layers }) }) as EntryBody;
    const drop = (isTopOnly: boolean) =>
      ({
        kind: 'spot-tested',
        piece: PIECE,
        solvent: 'ethanol',
        dwell: { text: '60', unit: 's' },
        reading: 'dissolves',
        ...(isTopOnly && { isTopOnly }),
      }) as EntryBody;
    expect([layered(), layered(looked()), layered(looked(1)), layered(drop(false))]).not.toContain(true);
    expect([layered(looked(2)), layered(drop(true)), layered(looked(1), drop(true))]).not.toContain(false);
  });

  test('is classified from its logged drops, and an undone drop does not count', () => {
    const drop = (solvent: 'naphtha' | 'ethanol', reading: 'nothing' | 'dissolves'): EntryBody => ({
      kind: 'spot-tested',
      piece: PIECE,
      solvent,
      dwell: { text: '60', unit: 's' },
      reading,
    });
    const bodies = [startPiece(), drop('naphtha', 'nothing'), drop('ethanol', 'dissolves')];
    expect(findingOf(oldFinishOf(PIECE, shopOf(...bodies))).finish).toBe('shellac');
    expect(findingOf(oldFinishOf(PIECE, shopOf(...bodies, strike(id(3))))).finish).toBe('unknown');
  });
});

describe('a data sheet', () => {
  const sheet = (jar: string): EntryBody => ({
    kind: 'sheet-entered',
    jar,
    temperature: { text: '20', unit: 'C' },
    humidity: { text: '50', unit: '%' },
    times: { touch: { text: '15', unit: 'min' } },
  });
  const OTHER = id(0xb9);

  test('holds for its jar, and for a new jar of the same name and finish', () => {
    const shop = shopOf(fillJar(), fillJar(OTHER), sheet(JAR));
    expect(sheetOf(JAR, shop)?.times.touch?.si).toBe(900);
    expect(sheetOf(OTHER, shop)?.jar).toBe(JAR);
  });

  test('is the newest of those entered for other jars, and its own before all', () => {
    const THIRD = id(0xba);
    const [one, other, third] = [fillJar(), fillJar(OTHER), fillJar(THIRD)];
    expect(sheetOf(THIRD, shopOf(one, other, third, sheet(JAR), sheet(OTHER)))?.jar).toBe(OTHER);
    expect(sheetOf(THIRD, shopOf(one, other, third, sheet(OTHER), sheet(JAR)))?.jar).toBe(JAR);
    expect(sheetOf(JAR, shopOf(one, other, sheet(JAR), sheet(OTHER)))?.jar).toBe(JAR);
  });

  test('does not hold for a jar of another finish by the same name', () => {
    const acrylic = {
      ...fillJar(OTHER),
      product: { finish: 'acrylic', volumeSolids: { text: '22', unit: '%' } },
    };
    expect(sheetOf(OTHER, shopOf(fillJar(), acrylic as EntryBody, sheet(JAR)))).toBeUndefined();
  });

  test('does not hold for a jar of another name', () => {
    const shop = shopOf(fillJar(), { ...fillJar(OTHER), name: 'Satin' } as EntryBody, sheet(JAR));
    expect(sheetOf(OTHER, shop)).toBeUndefined();
  });
});

test('a caution put away comes back when asked for', () => {
  const silence = (silenced: boolean): EntryBody => ({ kind: 'caution-silenced', caution: 'skin', silenced });
  expect([...shopOf(silence(true)).silencedCautions]).toEqual(['skin']);
  expect([...shopOf(silence(true), silence(false)).silencedCautions]).toEqual([]);
});
