import { expect, test } from 'vitest';
import type { CardOutlooks } from '../../../src/actions/outlook/card-outlook';
import { taughtTo } from '../../../src/actions/outlook/learn/taught';
import { PRIOR } from '../../../src/estimator/belief';
import type { CardReading } from '../../../src/estimator/card/card';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { standById } from '../../../src/shop/zone/stands';
import { DAY_1_MS, entry, fillJar, id, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';

const OTHER_PIECE = id(0xa2);
const OTHER_JAR = id(0xb2);
const CARD = id(0xc1);
const YEAR_MS = 365.25 * 86_400_000;
const film = { by: 'wet', wetFilm: { text: '85', unit: 'um' } } as const;
const g = (text: string) => ({ text, unit: 'g' }) as const;

const ENTRIES = (boxed: object = {}) => [
  entry(1, startPiece()),
  entry(2, startPiece(OTHER_PIECE)),
  entry(3, fillJar()),
  entry(4, { ...fillJar(OTHER_JAR), ...boxed } as EntryBody),
  entry(5, {
    kind: 'card-made',
    card: CARD,
    piece: PIECE,
    area: { text: '200', unit: 'cm2' },
    faces: 1,
    bare: g('1'),
    division: g('0.001'),
  }),
  entry(6, layCoat()),
  entry(7, { kind: 'card-coated', card: CARD, coat: id(6), jar: JAR, how: 'spray', film }),
  entry(8, { kind: 'card-weighed', card: CARD, mass: g('1.3') }),
];
/** The card has told that it dries slowly, within 0.2 of the logarithm. */
const cards: CardOutlooks = new Map([
  [
    CARD,
    {
      state: 'ready',
      reading: { diffusivity: { mean: -0.6, spread: 0.2 } } as CardReading,
      startMs: DAY_1_MS,
      isGuessed: false,
    },
  ],
]);
const spreadOn = (piece: string, entries: ReturnType<typeof ENTRIES>, said = cards): number => {
  const shop = fold(entries);
  const stand = standById(piece, shop);
  if (!stand) throw new Error('no such piece');
  const { diffusivity } = taughtTo(stand, { shop, outlooks: new Map(), cards: said });
  return diffusivity?.spread ?? PRIOR.spread;
};
const onOther = (jar: string, atMs = DAY_1_MS + 9 * 60_000) => entry(9, layCoat(OTHER_PIECE, jar), atMs);

test('a card teaches the piece whose coats it got most, then the same jar, then another, then one poured together', () => {
  const own = spreadOn(PIECE, ENTRIES());
  const sameJar = spreadOn(OTHER_PIECE, [...ENTRIES(), onOther(JAR)]);
  const otherJar = spreadOn(OTHER_PIECE, [...ENTRIES(), onOther(OTHER_JAR)]);
  const boxedFrom = [{ jar: JAR, volume: { text: '50', unit: 'mL' } }];
  const poured = spreadOn(OTHER_PIECE, [...ENTRIES({ boxedFrom }), onOther(OTHER_JAR)]);
  // By hand: 0.2 widened by 0.1 for its own card, by 0.3 for another piece; the prior's precision 1.956 beside it. What the grid's
  // own prior takes away again moves it by less than a fiftieth.
  expect(own).toBeCloseTo((1 / (0.2 ** 2 + 0.1 ** 2) + 1.956) ** -0.5, 1);
  expect(sameJar).toBeCloseTo((1 / (0.2 ** 2 + 0.3 ** 2) + 1.956) ** -0.5, 1);
  expect([own, sameJar, otherJar, poured, PRIOR.spread]).toEqual(
    [own, sameJar, otherJar, poured, PRIOR.spread].toSorted((one, other) => one - other),
  );
  expect(new Set([own, sameJar, otherJar, poured]).size).toBe(4);
});

test('a card is a piece’s own though it missed a coat', () => {
  const own = spreadOn(PIECE, ENTRIES());
  const sameJar = spreadOn(OTHER_PIECE, [...ENTRIES(), onOther(JAR)]);
  const missed = spreadOn(PIECE, [...ENTRIES(), entry(9, layCoat())]);
  expect(missed - own).toBeLessThan((sameJar - own) / 2);
});

test('the longer ago, the less', () => {
  const soon = spreadOn(OTHER_PIECE, [...ENTRIES(), onOther(JAR)]);
  const late = spreadOn(OTHER_PIECE, [...ENTRIES(), onOther(JAR, DAY_1_MS + 2 * YEAR_MS)]);
  expect(late).toBeGreaterThan(soon * 1.05);
});

test('another product learns nothing, nor does anybody from a card that was never weighed', () => {
  const other = {
    ...fillJar(OTHER_JAR),
    product: { finish: 'acrylic', volumeSolids: { text: '22', unit: '%' } },
  };
  expect(spreadOn(OTHER_PIECE, [...ENTRIES(other), onOther(OTHER_JAR)])).toBe(PRIOR.spread);
  expect(spreadOn(PIECE, ENTRIES().slice(0, -1))).toBe(PRIOR.spread);
});
