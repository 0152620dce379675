import { expect, test } from 'vitest';
import { goTo, newPage, openApp, page, takePhone } from '../app';
import { keepOnPhone, manyPieces } from '../bench/bench-shop';
import { MOBILE } from '../browser';
import { button, firstLink } from '../on-screen';

/** Nine in the morning, and one piece whose coat went on seven minutes ago: nothing is due yet. */
const NINE_MS = Date.UTC(2026, 2, 2, 9);

function onePiece() {
  const all = manyPieces(9, NINE_MS);
  const box = all.find((entry) => entry.kind === 'piece-started' && entry.name.startsWith('Jewellery'));
  const id = box && 'piece' in box ? box.piece : undefined;
  return all.filter((entry) => !('piece' in entry) || entry.piece === id);
}

/** The pages of the demo shop that tell something, and what on them is the answer. */
const PAGES: readonly (readonly [hash: string | RegExp, from: string, answer: string])[] = [
  ['#/plan', '', '.timeline'],
  [/^#\/plan\/[0-9a-f-]{36}$/, '#/plan', '.band-time'],
  ['#/plan/hours', '', '.line'],
  ['#/plan/reminders', '', 'h2'],
  ['#/mix', '', '.row'],
  [/^#\/mix\/jar\/[0-9a-f-]{36}$/, '#/mix', 'h2'],
  [/^#\/mix\/recipe\/[0-9a-f-]{36}$/, '#/mix', 'h2'],
  [/^#\/match\/[0-9a-f-]{36}$/, '#/match', '.state'],
  ['#/air', '', 'h2'],
  ['#/air/room', '', '.state'],
  ['#/air/cautions', '', '.caution-row'],
  ['#/more', '', 'h2'],
  [/^#\/piece\/[0-9a-f-]{36}$/, '#/bench', '.headline'],
  [/^#\/piece\/[0-9a-f-]{36}\/why$/, '', '.headline'],
];

const ANSWER_WITHIN = 600;

const TALLEST = 2_000;

test('what comes due while a form is open moves nothing in it', async () => {
  await takePhone({ ...MOBILE, timezoneId: 'UTC' });
  await keepOnPhone(onePiece());
  await newPage();
  await page.clock.install({ time: NINE_MS });
  await goTo('#/bench');
  await page.getByText(/^in \d+ min$/).waitFor(); // worked out
  const due = () => page.locator('.notice-line').textContent();
  const dueBefore = await due();
  await goTo('#/piece/new');
  const tops = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('main :is(h1, fieldset, .field, button)')].map(
        (part) => part.getBoundingClientRect().top + scrollY,
      ),
    );
  const before = await tops();
  expect(before.length).toBeGreaterThan(3);
  for (let minutes = 0; minutes < 150; minutes += 10) await page.clock.runFor(10 * 60_000);
  expect(await tops()).toEqual(before);
  await goTo('#/bench');
  await expect.poll(due).not.toBe(dueBefore); // it did come due
});

test('every page gives its answer in its first 600 px, and folds the rest to 2,000 in all', async () => {
  await openApp({ ...MOBILE, deviceScaleFactor: 1 });
  await page.clock.install({ time: new Date('2026-11-27T11:06:00Z') }); // nothing is due, whose card keeps the foot of a page clear
  await button(/demo shop/)
    .first()
    .tap();
  await page.locator('.piece-row .wait-bar').first().waitFor();
  await page.waitForTimeout(3_000);
  const found: Record<string, unknown>[] = [];
  for (const [hash, from, answer] of PAGES) {
    if (from) await goTo(from);
    const to = typeof hash === 'string' ? hash : await firstLink(hash);
    await goTo(to);
    await page.locator(`main ${answer}`).first().waitFor();
    await page.waitForTimeout(700); // what is worked out behind the page
    const { height, bottom } = await page.evaluate((selector) => {
      const demo = document.querySelector('.demo-line')?.getBoundingClientRect().height ?? 0;
      const box = document.querySelector(`main ${selector}`)?.getBoundingClientRect();
      const bottom = (box?.top ?? 0) + Math.min(box?.height ?? 0, 60) + scrollY - demo;
      return { height: document.documentElement.scrollHeight - demo, bottom };
    }, answer);
    found.push({ page: to.replace(/[0-9a-f]{8}-[0-9a-f-]{27}/g, '*'), height, bottom: Math.round(bottom) });
  }
  console.table(found);
  expect(
    found.filter(({ height, bottom }) => Number(height) > TALLEST || Number(bottom) > ANSWER_WITHIN),
  ).toEqual([]);
});
