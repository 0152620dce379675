import { describe, expect, test } from 'vitest';
import { requestFor } from '../../../src/actions/outlook/request';
import { movedToSheet } from '../../../src/actions/outlook/to-sheet';
import { estimateByLaw } from '../../../src/estimator/finishes/estimate-by-law';
import { createEstimator } from '../../../src/estimator/run/client';
import type { EntryBody } from '../../../src/logbook/entry';
import { onePiece } from '../../estimator/finishes/cases';
import { JAR, layCoat, PIECE } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';
import { worker } from '../a-shop';

// A sheet that says: recoat after 2 h at 23 °C and 50 %, for a coat of 100 um wet. The law: a coat dries in proportion to its thickness.
const AT = { temperatureK: 296.15, relativeHumidity: 0.5 };

describe('a waterborne coat', () => {
  const recoatHours = (dryUm: number, filmDryM?: number): number => {
    const sheet = { ...AT, recoatFromS: 7200, ...(filmDryM && { filmDryM }) };
    const request = onePiece({ ...AT, dryM: dryUm * 1e-6, sheet });
    return estimateByLaw('waterborne', request).milestones.recoat.likelyS / 3600;
  };

  test.each([
    { dryUm: 30, hours: 2 },
    { dryUm: 15, hours: 1 },
    { dryUm: 60, hours: 4 },
  ])('of $dryUm um dry recoats after $hours h where the sheet’s 2 h are for 30 um', ({ dryUm, hours }) => {
    expect(recoatHours(dryUm, 30e-6)).toBeCloseTo(hours, 1);
  });

  test('where the sheet says no film, its times are those of a usual coat', () => {
    expect(recoatHours(30)).toBeGreaterThan(recoatHours(30, 30e-6));
  });
});

describe('a lacquer', () => {
  const sheet = (wetUm?: string): EntryBody => ({
    kind: 'sheet-entered',
    jar: JAR,
    temperature: { text: '23', unit: 'C' },
    humidity: { text: '50', unit: '%' },
    times: { recoatFrom: { text: '2', unit: 'h' } },
    ...(wetUm && { wetFilm: { text: wetUm, unit: 'um' } }),
  });
  const coat = { ...layCoat(), film: { by: 'wet', wetFilm: { text: '100', unit: 'um' } } } as EntryBody;
  const recoatHours = async (wetUm?: string): Promise<number> => {
    const { shop, piece } = aShop({ hour: 1, body: sheet(wetUm) }, { hour: 2, body: coat });
    const asked = requestFor(piece, shop, (piece.coats[0]?.atMs ?? 0) + 60_000);
    if (!asked.ok) throw new Error('There is no request.');
    const { request } = asked.value;
    const estimator = createEstimator(() => worker());
    const estimate = await estimator.estimate(request).result;
    const moved = await movedToSheet(estimate, request, piece, shop, estimator);
    return moved.milestones.recoat.likelyS / 3600;
  };

  test('of the sheet’s film waits what the sheet says, a thicker one longer, a thinner one less', async () => {
    const [thicker, same, unsaid, thinner] = [
      await recoatHours('50'),
      await recoatHours('100'),
      await recoatHours(),
      await recoatHours('200'),
    ];
    expect(same).toBeCloseTo(unsaid, 6); // the coat itself was taken as the sheet's
    expect(thicker).toBeGreaterThan(1.2 * same);
    expect(thinner).toBeLessThan(same / 1.2);
  });
});

type Done = { readonly hour: number; readonly body: EntryBody };

// Common practice, no source: a padded film rests 7 to 28 days, however thin; one's own hand comes before that.
describe('a padded film without a sheet', () => {
  const padded = {
    ...layCoat(),
    how: 'pad',
    film: { by: 'usual', dryFilm: { text: '2', unit: 'um' } },
  } as EntryBody;
  const checked = (result: 'passes' | 'fails'): EntryBody => ({
    kind: 'checked',
    piece: PIECE,
    test: 'gum',
    result,
  });
  const rubOutDays = async (...more: readonly Done[]): Promise<readonly number[]> => {
    const { shop, piece } = aShop({ hour: 1, body: padded }, { hour: 25, body: padded }, ...more);
    const asked = requestFor(piece, shop, (piece.coats.at(-1)?.atMs ?? 0) + 60_000);
    if (!asked.ok) throw new Error('There is no request.');
    const { request } = asked.value;
    const estimator = createEstimator(() => worker());
    const estimate = await estimator.estimate(request).result;
    const { rubOut, settled } = (await movedToSheet(estimate, request, piece, shop, estimator)).milestones;
    expect(settled).toEqual(rubOut);
    return [rubOut.earliestS, rubOut.likelyS, rubOut.lateS].map((s) => s / 86_400 - 1);
  };

  test('rests from its last session, and from a sprayed coat on no more', async () => {
    expect(await rubOutDays()).toEqual([7, 14, 28]);
    expect((await rubOutDays({ hour: 26, body: layCoat() }))[0]).toBeLessThan(7);
  });

  test('rests on where paper gums, and no longer where it powders', async () => {
    expect(await rubOutDays({ hour: 49, body: checked('fails') })).toEqual([7, 14, 28]);
    expect((await rubOutDays({ hour: 49, body: checked('passes') }))[0]).toBeLessThan(7);
  });
});
