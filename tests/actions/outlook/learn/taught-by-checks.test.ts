import { describe, expect, test } from 'vitest';
import { learnedSoFar } from '../../../../src/actions/outlook/learn/learned-so-far';
import { productOf, taughtTo } from '../../../../src/actions/outlook/learn/taught';
import type { Outlook } from '../../../../src/actions/outlook/outlook';
import { WEIGHED_AT } from '../../../../src/estimator/belief';
import { known } from '../../../../src/estimator/known';
import type { EntryBody } from '../../../../src/logbook/entry';
import { fold, type Shop } from '../../../../src/logbook/fold/fold';
import type { Piece } from '../../../../src/logbook/fold/piece/pieces';
import { standById } from '../../../../src/shop/zone/stands';
import { check, DAY_1_MS, entry, fillJar, id, JAR, layCoat, startPiece } from '../../../logbook/entries';
import { anOutlook } from '../../../parts/an-outlook';

const [BOX, TRAY, LID] = [id(0xa1), id(0xa2), id(0xa3)];
const [OTHER_JAR, THIRD_JAR] = [id(0xb2), id(0xb3)];
const DAY_MS = 86_400_000;
const YEAR_MS = 365.25 * DAY_MS;
type Timed = readonly [days: number, body: EntryBody];
const shopOf = (...timed: readonly Timed[]): Shop =>
  fold(
    [[0, fillJar()] as const, ...timed].map(([days, body], n) =>
      entry(n + 1, body, DAY_1_MS + days * DAY_MS),
    ),
  );
const coated = (piece: string, days = 1, jar = JAR): readonly Timed[] => [
  [0, startPiece(piece)],
  [days, layCoat(piece, jar)],
];
/** What its checks alone say: it dries slowly, with this precision. */
const slow = (own = 8): Outlook => ({
  ...anOutlook(),
  estimate: known({
    ...anOutlook().estimate,
    learned: WEIGHED_AT.map((x) => -0.5 * own * (x + 0.6) ** 2),
  }),
});
const taught = (piece: string, shop: Shop, outlooks: Record<string, Outlook>) => {
  const stand = standById(piece, shop) ?? expect.unreachable();
  return taughtTo(stand, { shop, outlooks: new Map(Object.entries(outlooks)), cards: new Map() });
};
const spread = (...is: Parameters<typeof taught>): number | undefined => taught(...is).diffusivity?.spread;

describe('what is believed of a piece', () => {
  const shop = shopOf(...coated(BOX), ...coated(TRAY), [2, check(TRAY)]);

  test('is what the checks of another with its product say, once those are worked out', () => {
    expect(taught(BOX, shop, { [TRAY]: slow() }).diffusivity?.mean).toBeLessThan(-0.2);
    expect(taught(BOX, shop, { [TRAY]: { state: 'computing' } }).diffusivity).toBeUndefined();
    expect(taught(BOX, shop, {}).diffusivity).toBeUndefined();
    expect(taught(BOX, shop, { [TRAY]: slow() }).law).toBeUndefined();
  });

  test('is nothing of its own checks: those are in its own estimate', () => {
    expect(taught(TRAY, shop, { [TRAY]: slow() }).diffusivity).toBeUndefined();
  });

  test('is nothing that was found without a check, on another product, or on what is no piece', () => {
    const unchecked = shopOf(...coated(BOX), ...coated(TRAY));
    expect(taught(BOX, unchecked, { [TRAY]: slow() }).diffusivity).toBeUndefined();
    const acrylic = {
      ...fillJar(OTHER_JAR),
      product: { finish: 'acrylic', volumeSolids: { text: '22', unit: '%' } },
    } as EntryBody;
    const other = shopOf([0, acrylic], ...coated(BOX), ...coated(TRAY, 1, OTHER_JAR), [2, check(TRAY)]);
    expect(taught(BOX, other, { [TRAY]: slow() }).diffusivity).toBeUndefined();
    expect(taught(BOX, shop, { [id(0xee)]: slow() }).diffusivity).toBeUndefined();
  });

  test('is told less surely from another jar, of a jar poured together, and from long ago, whichever was first', () => {
    const boxedFrom = [{ jar: JAR, volume: { text: '50', unit: 'mL' } }];
    const poured: Timed = [0, { ...fillJar(THIRD_JAR), boxedFrom } as EntryBody];
    const same = spread(BOX, shop, { [TRAY]: slow() }) ?? Number.NaN;
    const of = (days: readonly [box: number, tray: number], boxJar: string, trayJar = JAR): number => {
      const jars: readonly Timed[] = [[0, fillJar(OTHER_JAR)], poured];
      const pieces = [...coated(BOX, days[0], boxJar), ...coated(TRAY, days[1], trayJar)];
      return spread(BOX, shopOf(...jars, ...pieces, [900, check(TRAY)]), { [TRAY]: slow() }) ?? Number.NaN;
    };
    const [otherJar, pouredJar] = [of([1, 1], OTHER_JAR), of([1, 1], THIRD_JAR)];
    expect(otherJar).toBeGreaterThan(same + 0.001);
    expect(pouredJar).toBeGreaterThan(otherJar + 0.005);
    expect(of([1, 1], THIRD_JAR, THIRD_JAR)).toBeGreaterThan(same + 0.005); // of one jar, and nobody knows of what
    const [before, after] = [of([1, 2 * 365.25 + 1], JAR), of([2 * 365.25 + 1, 1], JAR)];
    expect(before).toBeGreaterThan(same + 0.02);
    expect(after).toBe(before);
  });

  test('grows weaker with the root of the time between', () => {
    const of = (years: number): number =>
      spread(BOX, shopOf(...coated(BOX, (years * YEAR_MS) / DAY_MS), ...coated(TRAY, 0), [1, check(TRAY)]), {
        [TRAY]: slow(1e4),
      }) ?? Number.NaN;
    // By hand: 0.3 between two pieces; for each year 0.3 of the prior's spread of 0.715, which is 0.2145, squared and added.
    const by = (years: number): number =>
      (1 / (1e-4 + 0.3 ** 2 + years * (0.3 * 0.71497) ** 2) + 1.9563) ** -0.5;
    expect(of(1) / by(1)).toBeCloseTo(1, 1);
    expect(of(4) / by(4)).toBeCloseTo(1, 1);
  });
});

describe('a product', () => {
  const product = (piece: string, ...timed: readonly Timed[]): string | undefined => {
    const shop = shopOf(...timed);
    return productOf(shop.pieces.get(piece) as Piece, shop);
  };
  const cured = (jar: string): EntryBody =>
    ({
      ...fillJar(jar),
      product: { finish: 'conversion', volumeSolids: { text: '28', unit: '%' } },
    }) as EntryBody;
  const sheet = (jar: string): EntryBody => ({
    kind: 'sheet-entered',
    jar,
    temperature: { text: '20', unit: 'C' },
    humidity: { text: '50', unit: '%' },
    times: {},
  });

  test('is that of the newest coat; of a piece with none, or from a jar that is not known, none', () => {
    const two: readonly Timed[] = [[0, cured(OTHER_JAR)], ...coated(BOX), [2, layCoat(BOX, OTHER_JAR)]];
    expect(product(BOX, ...two)).toContain('conversion');
    expect(product(BOX, [0, startPiece(BOX)])).toBeUndefined();
    expect(product(BOX, ...coated(BOX, 1, id(0xb9)))).toBeUndefined();
  });

  test('that cures belongs to its sheet; a lacquer is the same with and without one', () => {
    const [plain, own]: readonly Timed[] = [
      [0, cured(OTHER_JAR)],
      [0, sheet(OTHER_JAR)],
    ];
    const on: readonly Timed[] = [plain as Timed, ...coated(BOX, 1, OTHER_JAR)];
    expect(product(BOX, ...on, own as Timed)).not.toBe(product(BOX, ...on));
    expect(product(BOX, ...coated(BOX), [0, sheet(JAR)])).toBe(product(BOX, ...coated(BOX)));
  });

  test('is told under the name on its newest jar, by when that was used', () => {
    const named: Timed = [0, { ...fillJar(OTHER_JAR), name: 'New tin' } as EntryBody];
    const told = (days: number, trayDays: number) => {
      const pieces = [
        ...coated(BOX, days, OTHER_JAR),
        ...coated(TRAY, trayDays),
        [0, startPiece(LID)] as Timed,
      ];
      const shop = shopOf(named, ...pieces, [9, check(TRAY)]);
      return learnedSoFar({ shop, outlooks: new Map([[TRAY, slow()]]), cards: new Map() }).map(
        ({ jar }) => jar,
      );
    };
    expect(told(2, 1)).toEqual(['New tin']);
    expect(told(1, 2)).toEqual(['Gloss']);
  });
});
