import type { Outlook } from '../../../src/actions/outlook/outlook';
import { factsOf } from '../../../src/actions/verdicts/facts-of';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { DAY_1_MS, entry, fillJar, id, layCoat, PIECE, startPiece } from '../../logbook/entries';

export const HOUR_MS = 3_600_000;
export const ANY: [number, number, number] = [1, 2, 3];
export const OTHER_JAR = id(0xb2);
/** Wet 85 um at 22 % thinned by half: 12.47 um dry. */
export const COAT_M = 85e-6 * (0.22 / 1.5);

export type Timed = readonly [hour: number, body: EntryBody];
export const shopWith = (...timed: readonly Timed[]) =>
  fold(timed.map(([hour, body], n) => entry(n + 1, body, DAY_1_MS + hour * HOUR_MS)));
export const START: readonly Timed[] = [
  [0, startPiece()],
  [0, fillJar()],
];
export const factsAt = (hour: number, timed: readonly Timed[], outlook?: Outlook, jarId?: string) => {
  const shop = shopWith(...START, ...timed);
  const piece = shop.pieces.get(PIECE) as Piece;
  return factsOf({ shop, piece, outlook, nowMs: DAY_1_MS + hour * HOUR_MS }, jarId ? { jarId } : {});
};
export const check = (test: 'gum' | 'print', result: 'passes' | 'fails'): EntryBody => ({
  kind: 'checked',
  piece: PIECE,
  test,
  result,
});
export const sanded = (um: string, stage: 'scuff' | 'level' | 'rub-out' = 'scuff'): EntryBody => ({
  kind: 'sanded',
  piece: PIECE,
  removed: { text: um, unit: 'um' },
  stage,
});
export const coat = (more: object = {}): EntryBody => ({ ...layCoat(), ...more }) as EntryBody;
