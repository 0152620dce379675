import { expect, test } from 'vitest';
import { goTo, page } from '../app';
import { choose, said, section } from '../on-screen';
import { closeToast, DAY_MS, fillJar, logCoat, openAt, plan, readAir, startPiece } from './judged-shop';

const HOUR_MS = 3_600_000;
const COATS = 8;
const dayOf = (text: string): number => Date.parse(`${text} 2026`);

// Common practice, no source: 21 days at 21 C were told, so that from 19 January about 15.6 are left; handed over from 10 to 13 February
// at the earliest, promised for 17 to 20 February.
test('a winter garage, heavy coats from a can: the plan’s own dates stand around those of the rule of thumb', async () => {
  await openAt('2026-01-08T09:00:00+01:00');
  await readAir('12', '50');
  await fillJar(/^Spray can/, 'Clear spray can');
  const piece = await startPiece('Garage guitar', /^Sealed wood/);
  for (let coat = 1; coat <= COATS; coat++) {
    await logCoat(piece);
    await closeToast();
    await page.clock.fastForward(coat === COATS / 2 ? 18 * HOUR_MS : 2 * HOUR_MS);
  }
  await page.clock.fastForward(9 * DAY_MS + 16 * HOUR_MS); // from Friday 9 January, 17:00, to Monday the 19th, 09:00
  await readAir('21', '50');
  await plan(piece, /^The coats are on already/);
  await said('by the drying model').first().waitFor({ timeout: 30_000 });
  const ready = (await section('Ready').textContent()) ?? '';
  const [, likely = '', earliest = '', late = ''] =
    /Ready about\s*(\d+ [A-Z][a-z]+)\s*\((\d+ \w+)–(\d+ \w+)\)/.exec(ready) ?? [];
  const [, promise = ''] = /Earliest date to promise: (?:\w+ )?(\d+ \w+)/.exec(ready) ?? [];
  // Likely when the rule of thumb has it rubbed out, within a week; no date is given sooner than the rule's own.
  expect(Math.abs(dayOf(likely) - dayOf('4 Feb')) / DAY_MS).toBeLessThanOrEqual(7);
  expect(dayOf(earliest)).toBeLessThan(dayOf('10 Feb'));
  expect(dayOf(late)).toBeGreaterThan(dayOf('13 Feb'));
  expect(dayOf(promise)).toBeGreaterThanOrEqual(dayOf('17 Feb'));
  await goTo(`#/plan/${piece}/owner`, 'Write to the owner');
  await page.waitForFunction(() =>
    document.querySelector('textarea')?.value.includes('8 of 8 coats are on.'),
  );
  await choose('Accepted');
  await page.waitForFunction(
    (day) => document.querySelector('textarea')?.value.includes(day),
    `I can promise ${promise}`,
  );
});
