import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { jarAmount } from '../../../src/shop/jar/amount';
import { fillJar, inTurn, JAR, layCoat, PIECE } from '../../logbook/entries';

const typed = <Unit extends string>(text: string, unit: Unit) => ({ text, unit }) as const;
/** 200 mL of pure-toluene lacquer, 22 % thinned 1:0.5, at 0.9 g/mL. */
const filled = {
  ...fillJar(),
  product: {
    finish: 'nitrocellulose',
    volumeSolids: typed('22', '%'),
    solvents: [{ solvent: 'toluene', share: 1 }],
  },
  amount: typed('200', 'mL'),
  density: typed('0.9', 'g/mL'),
  keepBack: typed('10', '%'),
} as EntryBody;
const piece = (area?: string): EntryBody => ({
  kind: 'piece-started',
  piece: PIECE,
  name: 'Box',
  base: 'bare-wood',
  ...(area === undefined ? {} : { area: typed(area, 'm2') }),
});
const weighed = (grams: string, missing: 'used' | 'evaporated'): EntryBody => ({
  kind: 'jar-weighed',
  jar: JAR,
  mass: typed(grams, 'g'),
  missing,
});

function amountAfter(...bodies: EntryBody[]) {
  const shop = fold(bodies.map(inTurn));
  const jar = shop.jars.get(JAR);
  if (!jar) throw new Error('no jar');
  return jarAmount(jar, shop);
}
const ML = 1e-6;

describe('what is left in a jar', () => {
  test('is what was filled in, of which a share is kept back', () => {
    const { leftM3, keepBackM3, densityKgM3 } = amountAfter(filled);
    expect(leftM3).toBeCloseTo(200 * ML, 12);
    expect(keepBackM3).toBeCloseTo(20 * ML, 12);
    expect(densityKgM3).toBeCloseTo(900, 9);
  });

  test('goes down with every coat: area x wet film / transfer, here 0.1 m2 x 85 um / 0.35', () => {
    const { leftM3, laidM3 } = amountAfter(filled, piece('0.1'), layCoat(), layCoat());
    const oneM3 = (0.1 * 85e-6) / 0.35;
    expect(laidM3).toBeCloseTo(2 * oneM3, 12);
    expect(leftM3).toBeCloseTo(200 * ML - 2 * oneM3, 12);
  });

  // The same 90 um of wet film, said three ways: the dry film is that times 22 %/1.5 of solids by volume.
  test.each<{ film: Extract<EntryBody, { kind: 'coat-laid' }>['film'] }>([
    { film: { by: 'wet', wetFilm: typed('90', 'um') } },
    { film: { by: 'passes', passes: 3, perPass: typed('30', 'um') } },
    { film: { by: 'usual', dryFilm: typed('13.2', 'um') } },
  ])('goes down by the film of a coat said $film.by', ({ film }) => {
    const coat = { ...layCoat(), film } as EntryBody;
    expect(amountAfter(filled, piece('0.1'), coat).laidM3).toBeCloseTo((0.1 * 90e-6) / 0.35, 12);
  });

  test('does not count a coat on a piece of unknown area, and says so', () => {
    const { leftM3, uncountedCoats } = amountAfter(filled, piece(), layCoat());
    expect(leftM3).toBeCloseTo(200 * ML, 12);
    expect(uncountedCoats).toBe(1);
  });

  test('goes down by what was taken out, and never below nothing', () => {
    const drawn: EntryBody = { kind: 'jar-drawn', jar: JAR, volume: typed('150', 'mL') };
    expect(amountAfter(filled, drawn).leftM3).toBeCloseTo(50 * ML, 12);
    expect(amountAfter(filled, drawn, drawn).leftM3).toBe(0);
  });

  test('is set right by a weighing when more was used than reckoned', () => {
    const { leftM3, evaporatedKg } = amountAfter(filled, weighed('90', 'used'));
    expect(leftM3).toBeCloseTo(100 * ML, 12);
    expect(evaporatedKg).toBe(0);
  });

  test('loses solvent only, when it evaporated: the solids stay and grow in share', () => {
    // 180 g hold 200 mL x 14.667 % = 29.33 mL solids; 8.67 g of toluene are 10 mL (0.867 g/mL at 20 C)
    const { leftM3, volumeSolids, evaporatedKg, doubt } = amountAfter(
      filled,
      weighed('171.33', 'evaporated'),
    );
    expect(evaporatedKg).toBeCloseTo(8.67e-3, 9);
    expect((leftM3 ?? 0) / ML).toBeCloseTo(190, 0);
    expect(volumeSolids).toBeCloseTo(29.333 / 190, 3);
    expect(doubt).toBeUndefined();
  });

  test('has nothing lost any more once as much thinner was put back, and its first solids again', () => {
    const lost = weighed('171.33', 'evaporated');
    const { leftM3, volumeSolids, evaporatedKg, doubt } = amountAfter(
      filled,
      lost,
      weighed('180', 'evaporated'),
    );
    expect(leftM3).toBeCloseTo(200 * ML, 9);
    expect(volumeSolids).toBeCloseTo(22 / 150, 6);
    expect([evaporatedKg, doubt]).toEqual([0, undefined]);
    expect(amountAfter(filled, lost, weighed('185', 'evaporated')).doubt).toBe('heavier-than-expected');
  });

  test.each([
    { grams: '200', doubt: 'heavier-than-expected' },
    { grams: '10', doubt: 'lost-more-than-solvent' },
  ])('of $grams g where 180 are expected is doubted, and the weight stands', ({ grams, doubt }) => {
    const amount = amountAfter(filled, weighed(grams, 'evaporated'));
    expect(amount.doubt).toBe(doubt);
    expect(amount.leftM3).toBeCloseTo(Number(grams) / 900_000, 9);
  });

  test('is unknown until it is said or weighed', () => {
    expect(amountAfter(fillJar()).leftM3).toBeUndefined();
    const drawn: EntryBody = { kind: 'jar-drawn', jar: JAR, volume: typed('150', 'mL') };
    const { leftM3: stillUnknown, laidM3 } = amountAfter(fillJar(), piece('0.1'), layCoat(), drawn);
    expect(stillUnknown).toBeUndefined();
    expect(laidM3).toBeGreaterThan(0);
    // common practice for a clear: 0.95 g/mL
    const { leftM3, isDensityUsual } = amountAfter(fillJar(), weighed('95', 'used'));
    expect(leftM3).toBeCloseTo(100 * ML, 12);
    expect(isDensityUsual).toBe(true);
  });
});
