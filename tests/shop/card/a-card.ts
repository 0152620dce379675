import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { cardsOf, type TestCard } from '../../../src/shop/card/cards';
import { DAY_1_MS, entry, fillJar, id, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';

export const HOUR_MS = 3_600_000;
export const DAY_MS = 24 * HOUR_MS;
export const CARD = id(0xc1);
export const g = (text: string) => ({ text, unit: 'g' }) as const;
export const um = (text: string) => ({ text, unit: 'um' }) as const;

export const made = (more: Partial<Extract<EntryBody, { kind: 'card-made' }>> = {}): EntryBody => ({
  kind: 'card-made',
  card: CARD,
  piece: PIECE,
  area: { text: '200', unit: 'cm2' },
  faces: 1,
  bare: g('1.000'),
  division: g('0.001'),
  ...more,
});
export const coated = (coat?: string): EntryBody => ({
  kind: 'card-coated',
  card: CARD,
  jar: JAR,
  how: 'spray',
  film: { by: 'wet', wetFilm: um('85') },
  ...(coat !== undefined && { coat }),
});
export const weighed = (grams: string, more: object = {}): EntryBody => ({
  kind: 'card-weighed',
  card: CARD,
  mass: g(grams),
  ...more,
});
export const START: readonly Entry[] = [
  entry(1, startPiece()),
  entry(2, fillJar()),
  entry(3, made()),
  entry(4, layCoat()),
  entry(5, coated(id(4))),
];
export const shopOf = (...more: Entry[]) => fold([...START, ...more]);
export const cardOf = (...more: Entry[]) => cardsOf(shopOf(...more)).get(CARD) as TestCard;
export const COAT_MS = DAY_1_MS + 4 * 60_000;
