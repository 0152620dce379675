import type { Locator } from 'playwright-core';
import { expect, test } from 'vitest';
import { goTo, newPage, openApp, openPage, page, takePhone } from './app';
import { keepOnPhone, manyPieces } from './bench-shop';
import { MOBILE } from './browser';
import { button, field, firstLink, link, openLine, title } from './on-screen';

// What the daily jobs cost a thumb: taps, and pixels scrolled, from the bench of twelve pieces.
const scrolled = (): Promise<number> => page.evaluate(() => scrollY);
const row = (name: string) => page.locator('.piece-row a', { hasText: name });
const places = () => page.getByRole('navigation');

/** Where a thumb hits it; undefined where it is out of sight or covered. */
const inReach = (what: Locator): Promise<{ readonly x: number; readonly y: number } | undefined> =>
  what.evaluate((one) => {
    const { left, top, width, height } = one.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + height / 2];
    const hit = document.elementFromPoint(x, y);
    return hit && (one.contains(hit) || hit.contains(one)) ? { x, y } : undefined;
  });

/** Taps as a thumb does, and counts: only what is out of reach is scrolled to first. */
function thumb() {
  const cost = { taps: 0, px: 0 };
  const tap = async (what: Locator): Promise<void> => {
    await what.waitFor();
    await page.waitForTimeout(300); // the page stands, and is read from its top
    cost.taps++;
    const at = await inReach(what);
    if (at) return page.touchscreen.tap(at.x, at.y);
    const before = await scrolled();
    await what.tap({ trial: true });
    cost.px += Math.abs((await scrolled()) - before);
    await what.tap();
  };
  return { cost, tap };
}
type Tap = ReturnType<typeof thumb>['tap'];

/** Each job, and what it may cost at most. */
const JOBS: readonly {
  readonly name: string;
  readonly taps: number;
  readonly px: number;
  readonly work: (tap: Tap) => Promise<void>;
}[] = [
  {
    name: 'the same coat again',
    taps: 2,
    px: 0,
    async work(tap) {
      await tap(places().getByRole('link', { name: 'Log a coat' }));
      await tap(button(/^Log it: coat/));
      await page.getByText(/^Coat \d+ logged on /).waitFor();
    },
  },
  {
    name: 'take that coat back',
    taps: 1,
    px: 0,
    async work(tap) {
      await tap(page.locator('.toast').getByRole('button', { name: 'Undo' }));
      await page.getByText(/^Undone/).waitFor();
    },
  },
  {
    name: 'rub out a piece that is ready, from its page, with the usual amount',
    taps: 2,
    px: 0,
    async work(tap) {
      await row('Folding music stand').tap();
      await tap(page.locator('.piece-acts').getByRole('link', { name: 'Rub out' }));
      await tap(button(/^Log/).first());
      await page
        .getByText(/^Rubbed out/)
        .first()
        .waitFor();
    },
  },
  {
    name: 'log a check',
    taps: 4,
    px: 0,
    async work(tap) {
      await tap(row('Ukulele, koa'));
      await tap(page.locator('.piece-acts').getByRole('link', { name: 'Log a check' }));
      await tap(page.getByRole('radio', { name: 'Leaves no print' }));
      await tap(button(/^Log/).first());
      await page.getByText(/^Logged/).waitFor();
    },
  },
  {
    name: 'the end of the day',
    taps: 1,
    px: 0,
    async work(tap) {
      await tap(page.locator('.notice-link[data-kind="fire"]'));
      await title('End of the day');
    },
  },
  {
    name: 'answer what is due',
    taps: 1,
    px: 0,
    async work(tap) {
      await tap(page.locator('.due-card').getByRole('button').first());
    },
  },
  {
    name: 'read the air',
    taps: 3,
    px: 0,
    async work(tap) {
      await tap(places().getByRole('link', { name: 'Air' }));
      await tap(link('Take a reading').first());
      await field('Air temperature').fill('21');
      await field('Humidity').fill('48');
      await tap(button('Log the reading'));
      await page.getByText('Reading logged.').waitFor();
    },
  },
  {
    name: 'why a time is what it is',
    taps: 2,
    px: 800,
    async work(tap) {
      await tap(row('Banjo rim'));
      await tap(link('Why these times?'));
      await title(/^Why/);
    },
  },
  {
    name: 'how much is left in a jar',
    taps: 2,
    px: 0,
    async work(tap) {
      await tap(places().getByRole('link', { name: 'Mix' }));
      await tap(link(/^Clear gloss/));
      await title('Clear gloss');
    },
  },
  {
    name: 'a round of five pieces, the same as the last one',
    taps: 3,
    px: 0,
    async work(tap) {
      await tap(places().getByRole('link', { name: 'Log a coat' }));
      await tap(button('Same 5 pieces as last round'));
      await tap(button('Log it: a coat on 5 pieces'));
      await page.getByText('A coat logged on 5 pieces.').waitFor();
    },
  },
];

/** A round on five pieces, so that there is a last one. */
async function layRound(): Promise<void> {
  await goTo('#/lay');
  await openLine('On these too');
  const boxes = page.locator('.line').getByRole('checkbox');
  for (let n = 0; n < 4; n++) await boxes.nth(n).check();
  await button('Log it: a coat on 5 pieces').tap();
  await page.getByText('A coat logged on 5 pieces.').waitFor();
}

test('ten jobs, in so many taps and pixels', async () => {
  await takePhone(MOBILE);
  await keepOnPhone(manyPieces(12, Date.now() - 30 * 60_000)); // the last round is over
  await openPage();
  await page.getByText('Working it out…').last().waitFor({ state: 'detached' });
  await goTo('#/lay');
  await button('Read and done').tap(); // once a session
  await button(/^Log it: coat/).waitFor();
  const costs: Record<string, unknown>[] = [];
  for (const { name, taps, px, work } of JOBS) {
    if (name.startsWith('a round')) await layRound();
    if (!name.startsWith('take')) await goTo('#/bench');
    if (!name.startsWith('take')) await page.evaluate(() => scrollTo(0, 0)); // as it is come to
    const { cost, tap } = thumb();
    await work(tap);
    costs.push({ name, ...cost });
    expect(cost.taps, name).toBeLessThanOrEqual(taps);
    expect(cost.px, name).toBeLessThanOrEqual(px);
  }
  console.table(costs);
}, 120_000);

/** Nine in the morning, and one piece whose coat went on seven minutes ago: nothing is due yet. */
const NINE_MS = Date.UTC(2026, 2, 2, 9);
function onePiece() {
  const all = manyPieces(9, NINE_MS);
  const box = all.find((entry) => entry.kind === 'piece-started' && entry.name.startsWith('Jewellery'));
  const id = box && 'piece' in box ? box.piece : undefined;
  return all.filter((entry) => !('piece' in entry) || entry.piece === id);
}

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
}, 60_000);

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
}, 120_000);
