import { test } from 'vitest';
import { standingsOf } from '../../src/actions/verdicts/follow-standings';
import type { Entry, EntryBody } from '../../src/logbook/entry';
import { fold } from '../../src/logbook/fold/fold';
import { DAY_1_MS, entry, fillJar, id, layCoat, startPiece } from '../logbook/entries';
import { anOutlook } from '../parts/an-outlook';
import { processorMs, say } from './clock';

const PIECES = 100;
const COATS = 6;

// Prints what it costs to judge a whole bench again, as after every entry and every tick.
test('verdicts', () => {
  const piece = (n: number): string => id(0x1000 + n);
  const entries: Entry[] = [entry(1, fillJar(), DAY_1_MS)];
  for (let n = 0; n < PIECES; n++) {
    entries.push(entry(0x2000 + n, startPiece(piece(n)), DAY_1_MS));
    for (let coat = 0; coat < COATS; coat++)
      entries.push(
        entry(0x3000 + n * COATS + coat, layCoat(piece(n)) as EntryBody, DAY_1_MS + coat * 7_200_000),
      );
  }
  const shop = fold(entries);
  const outlooks = new Map([...shop.pieces.keys()].map((key) => [key, anOutlook()]));
  const nowMs = DAY_1_MS + 20 * 86_400_000;
  const ms = processorMs(() => void standingsOf(shop, outlooks, nowMs));
  say(
    `verdicts on the next act of ${PIECES} pieces with ${COATS} coats: ${ms.toFixed(1)} ms of processor time`,
  );
});
