import type { Locator } from 'playwright-core';
import { expect, test } from 'vitest';
import { goTo, openPage, page, takePhone } from '../app';
import { keepOnPhone, manyPieces } from '../bench/bench-shop';
import { MOBILE } from '../browser';
import { button, field, link, openLine, title } from '../on-screen';

const row = (name: string) => page.locator('.piece-row a', { hasText: name });

// What the daily jobs cost a thumb: taps, and pixels scrolled, from the bench of twelve pieces.
const scrolled = (): Promise<number> => page.evaluate(() => scrollY);

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
});
