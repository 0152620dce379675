import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { clearedMs, flowFor, sessionSolvent } from '../../../src/shop/air/session-solvent';
import { DAY_1_MS, entry, fillJar, JAR } from '../../logbook/entries';

type Filled = Extract<EntryBody, { kind: 'jar-filled' }>;
const percent = (text: string) => ({ text, unit: '%' }) as const;

const roomBody = (more: object = {}): EntryBody =>
  ({
    kind: 'room-described',
    volume: { text: '50', unit: 'm3' },
    airFlow: { text: '1000', unit: 'm3/h' },
    flowFrom: 'measured',
    mixing: { text: '5', unit: 'ratio' },
    ...more,
  }) as EntryBody;
/** Toluene alone around 20 % of solids, nothing added. */
const toluene: Filled = {
  ...(fillJar() as Filled),
  product: {
    finish: 'nitrocellulose',
    volumeSolids: percent('20'),
    solvents: [{ solvent: 'toluene', share: 1 }],
  },
  thinning: { of: 'lacquer', percent: percent('0') },
};
const SEA_LEVEL_PA = 101_325;
/** At 1000 m: ASHRAE Handbook Fundamentals 2017, ch. 1, table 1. */
const MOUNTAIN_PA = 89_875;
function session(jarBody: Filled, mixM3: number, more?: object, pressurePa = SEA_LEVEL_PA) {
  const shop = fold([entry(1, jarBody), entry(2, roomBody(more))]);
  const jar = shop.jars.get(JAR);
  if (!jar || !shop.room) throw new Error('nothing there');
  return { ...sessionSolvent(jar, mixM3, shop.room, pressurePa), room: shop.room };
}

describe('one litre of mix with 80 % toluene', () => {
  const { massKg, lelFraction, fireAirM3 = 0, healthAirM3, closedRoomShare = 0 } = session(toluene, 1e-3);

  test('gives all of its solvent to the air: 0.8 L at 867 kg/m3', () => {
    expect(massKg).toBeCloseTo(0.8 * 0.867, 2);
  });

  // By hand: n = 0.6936 kg/0.09214 kg/mol = 7.53 mol; at 24.05 L/mol 0.181 m3 of vapour; LEL of toluene 1.1 % (Pocket Guide).
  // Against fire: 4 (100 - 1.1) 0.181/1.1 = 65 m3. In the closed room of 50 m3: 0.181/50/0.011 = 33 %.
  test('asks for 65 m3 against fire, and fills a third of the limit in the closed room', () => {
    expect(lelFraction).toBeCloseTo(0.011, 3);
    expect(fireAirM3).toBeGreaterThan(63);
    expect(fireAirM3).toBeLessThan(67);
    expect(closedRoomShare).toBeGreaterThan(0.32);
    expect(closedRoomShare).toBeLessThan(0.34);
  });

  // By hand: 5 x 0.181 m3/100 ppm (the stricter of OSHA 200 and NIOSH 100) = 9050 m3.
  test('asks for 9050 m3 for breath with a mixing factor of 5', () => {
    expect(Math.abs(healthAirM3 / 9050 - 1)).toBeLessThan(0.02);
  });

  test('within half an hour that is 130 m3/h against fire', () => {
    expect(flowFor(fireAirM3, 1800) * 3600).toBeGreaterThan(126);
    expect(flowFor(fireAirM3, 1800) * 3600).toBeLessThan(134);
  });
});

// Boyle: the same vapour takes 101325/89875 = 1.127 times the room; its mass and its explosive limit, a volume fraction, stay.
test('in the thin air of 1000 m it asks for 12.7 % more air', () => {
  const [low, high] = [session(toluene, 1e-3), session(toluene, 1e-3, {}, MOUNTAIN_PA)];
  expect(Number(high.fireAirM3) / Number(low.fireAirM3)).toBeCloseTo(1.127, 3);
  expect(high.healthAirM3 / low.healthAirM3).toBeCloseTo(1.127, 3);
  expect(Number(high.closedRoomShare) / Number(low.closedRoomShare)).toBeCloseTo(1.127, 3);
  expect([high.massKg, high.lelFraction]).toEqual([low.massKg, low.lelFraction]);
});

test('the explosive limit of the product’s own sheet counts first', () => {
  expect(session(toluene, 1e-3, { explosiveLimit: percent('2.2') }).lelFraction).toBeCloseTo(0.022, 9);
});

test('a waterborne without organic solvent gives none to the air', () => {
  const water = [{ solvent: 'water', share: 1 }];
  const jar: Filled = {
    ...toluene,
    product: { finish: 'waterborne', volumeSolids: percent('30'), solvents: water },
    thinner: { name: 'Water', blend: water },
  };
  const { massKg, fireAirM3, lelFraction, healthAirM3 } = session(jar, 1e-3);
  expect([massKg, fireAirM3, lelFraction, healthAirM3]).toEqual([0, undefined, undefined, 0]);
});

test('a solvent without a limit is named, not left out in silence', () => {
  const jar: Filled = {
    ...toluene,
    product: {
      ...toluene.product,
      solvents: [
        { solvent: 'toluene', share: 0.9 },
        { solvent: 'pma', share: 0.1 },
      ],
    },
  };
  const { withoutLimit, withoutLel, parts } = session(jar, 1e-3);
  expect(parts.map(({ name }) => name)).toEqual(['toluene', '1-methoxy-2-propyl acetate (PM acetate)']);
  expect(withoutLimit).toEqual(['1-methoxy-2-propyl acetate (PM acetate)']);
  expect(withoutLel).toEqual([]);
});

const blend = (...solvents: readonly (readonly [solvent: string, share: number])[]): Filled => ({
  ...toluene,
  product: { ...toluene.product, solvents: solvents.map(([solvent, share]) => ({ solvent, share })) },
});

test('a solvent without an explosive limit is named; the others ask for their air', () => {
  const mixed = session(blend(['toluene', 0.5], ['dpnb', 0.5]), 1e-3);
  const alone = session(toluene, 0.5e-3);
  expect(mixed.withoutLel).toEqual(['dipropylene glycol n-butyl ether (DPnB)']);
  expect(mixed.lelFraction).toBeCloseTo(0.011, 9);
  expect(Number(mixed.fireAirM3) / Number(alone.fireAirM3)).toBeCloseTo(1, 9);
  expect(Number(mixed.closedRoomShare) / Number(alone.closedRoomShare)).toBeCloseTo(1, 9);
  expect(mixed.healthAirM3 / alone.healthAirM3).toBeCloseTo(1, 9);
  expect(mixed.massKg).toBeGreaterThan(alone.massKg);
});

test('nor is one without it left out where the sheet of the product gives a limit', () => {
  const limit = { explosiveLimit: percent('1') };
  const mixed = session(blend(['toluene', 0.5], ['dpnb', 0.5]), 1e-3, limit);
  expect(mixed.withoutLel).toEqual([]);
  expect(Number(mixed.fireAirM3)).toBeGreaterThan(Number(session(toluene, 0.5e-3, limit).fireAirM3));
});

test('where no solvent has an explosive limit none is made up', () => {
  const { lelFraction, fireAirM3, closedRoomShare } = session(blend(['dpnb', 1]), 1e-3);
  expect([lelFraction, fireAirM3, closedRoomShare]).toEqual([undefined, undefined, undefined]);
});

// By hand: 0.8 L at 901.5 kg/m3 are 0.7212 kg or 6.103 mol, at 24.05 L/mol 0.1468 m3; 5 x 0.1468 m3 / 5 ppm (NIOSH 5, OSHA 50).
test('the stricter of two limits counts', () => {
  expect(session(blend(['2-butoxyethanol', 1]), 1e-3).healthAirM3 / 146_800).toBeCloseTo(1, 1);
});

// t = K V/Q ln(1/0.01) (MMWR 1994): 5 x 50 m3/(1000 m3/h) x 4.605 = 1.151 h.
test('the room counts as cleared 69 min after the gun was put down', () => {
  const { room } = session(toluene, 1e-3);
  expect((clearedMs(room, DAY_1_MS) - DAY_1_MS) / 60_000).toBeCloseTo(69.1, 1);
});
