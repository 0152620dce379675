import { expect, test } from 'vitest';
import { requestFor } from '../../../src/actions/outlook/request';
import { createEstimator } from '../../../src/estimator/run/client';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { saidOf, usualDraft, withVessel } from '../../../src/screens/mix/jar/jar-draft';
import { DAY_1_MS, entry, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';
import { worker } from '../a-shop';

const HOUR_MS = 3_600_000;
const nine = { by: 'usual', dryFilm: { text: '9', unit: 'um' } };

/** Days from the last of fifteen coats of 9 um to rubbing out. */
async function daysToRubOut(comesAs: 'jar' | 'can') {
  const said = saidOf(withVessel(usualDraft('nitrocellulose', false), comesAs, false));
  const coats = Array.from({ length: 15 }, (_, i): Entry => {
    const coat = { ...layCoat(), film: nine } as EntryBody;
    return entry(10 + i, coat, DAY_1_MS + 3 * i * HOUR_MS);
  });
  const filled = { kind: 'jar-filled', jar: JAR, ...said } as EntryBody;
  const shop = fold([entry(1, startPiece(), DAY_1_MS), entry(2, filled, DAY_1_MS), ...coats]);
  const piece = shop.pieces.get(PIECE);
  const lastMs = piece?.coats.at(-1)?.atMs ?? 0;
  const asked = piece && requestFor(piece, shop, lastMs + 60_000);
  if (!asked?.ok) throw new Error('There is no request.');
  const { milestones } = await createEstimator(() => worker()).estimate(asked.value.request).result;
  const days = (s: number): number => (asked.value.startMs + s * 1000 - lastMs) / 24 / HOUR_MS;
  return { likely: days(milestones.rubOut.likelyS), late: days(milestones.rubOut.lateS) };
}

// Common practice, no source: a heavy build from a can takes 28 to 60 days, for its solvents are slow.
test('a heavy build from a can hardens weeks later than its surface says, and later than one from a jar', async () => {
  const [can, jar] = [await daysToRubOut('can'), await daysToRubOut('jar')];
  expect(can.likely).toBeGreaterThan(21);
  expect(can.late).toBeGreaterThan(50);
  expect(can.late).toBeLessThan(70);
  expect(can.likely).toBeGreaterThan(1.15 * jar.likely);
});
