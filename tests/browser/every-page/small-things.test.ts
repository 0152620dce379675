import type { Locator } from 'playwright-core';
import { expect, test } from 'vitest';
import { goTo, newPage, openApp, page, takePhone } from '../app';
import { keepOnPhone, manyPieces } from '../bench/bench-shop';
import { MOBILE } from '../browser';
import { button, unfold } from '../on-screen';
import { openDemo } from './each-screen';

// What was once seen and looked poor, each held so that it does not come back.
const box = async (one: Locator) => (await one.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
const SMALL = { viewport: { width: 360, height: 640 } };

test('on a small phone the demo’s line is one line, and two things due are told whole', async () => {
  await takePhone({ ...MOBILE, ...SMALL, timezoneId: 'UTC' });
  await newPage();
  await page.clock.install({ time: new Date('2026-11-27T13:25:00Z') }); // blush was to be looked for, and a rub-out waits
  await goTo('');
  await button(/demo shop/)
    .first()
    .tap();
  await page.locator('.piece-row .wait-bar').first().waitFor();
  expect(await page.evaluate(() => scrollY)).toBe(0); // the button stood further down
  expect((await box(page.locator('.demo-line'))).height).toBeLessThanOrEqual(44);
  const words = page.locator('.notice-link .notice-words');
  await expect.poll(() => words.textContent()).toMatch(/ and \d more$/);
  expect(await words.evaluate((one) => one.scrollHeight - one.clientHeight)).toBeLessThanOrEqual(1);
  await goTo('#/plan');
  const line = await box(page.locator('.timeline-now').first());
  for (const name of await page.locator('.timeline-name').all()) {
    const at = await box(name);
    const above = [...(await page.locator('.timeline-now').all())].map(async (now) => (await box(now)).y);
    expect(at.x).toBeLessThan(line.x + 20); // it would go through it
    for (const top of await Promise.all(above))
      expect(top >= at.y + at.height - 3 || top + line.height <= at.y + 3).toBe(true);
  }
  await goTo('#/plan/reminders');
  await unfold('Which reminders');
  const tiles = page.locator('.fold .tiles > .tile');
  const [first, second, third] = [await box(tiles.nth(0)), await box(tiles.nth(1)), await box(tiles.nth(2))];
  expect(second.x - first.x - first.width).toBeGreaterThan(4);
  expect(third.y - first.y - first.height).toBeGreaterThan(4);
});

test('what was done is said for a quarter of a minute, and then what it covers is free', async () => {
  await takePhone(MOBILE);
  await keepOnPhone(manyPieces(2));
  await newPage();
  await page.clock.install({ time: new Date() });
  await goTo('#/air/read');
  await page.getByRole('textbox', { name: 'Air temperature', exact: true }).fill('21');
  await page.getByRole('textbox', { name: 'Humidity', exact: true }).fill('48');
  await button('Log the reading').tap();
  const toast = page.locator('.toast');
  await toast.getByText('Reading logged.').waitFor();
  await page.clock.runFor(10_000);
  expect(await toast.count()).toBe(1);
  await page.clock.runFor(6_000);
  await expect.poll(() => toast.count()).toBe(0);
});

test('the moments of a piece stand on an axis that says its times', async () => {
  await openDemo(SMALL);
  await page.locator('.piece-row > a').first().tap();
  const marks = page.locator('.moments .wait-axis span');
  await marks.first().waitFor();
  expect(await marks.allTextContents()).toEqual(['now', '1 h', '1 day', '1 wk', '1 mo']);
  const at = await Promise.all((await marks.all()).map(box));
  for (const [n, { x }] of at.slice(1).entries())
    expect(x).toBeGreaterThan((at[n]?.x ?? 0) + (at[n]?.width ?? 0));
});

test('a second jar of a finish is not called as the first', async () => {
  await openApp(MOBILE, '#/mix/jar/new');
  const name = page.getByRole('textbox', { name: 'Name of the jar' });
  expect(await name.inputValue()).toBe('Nitrocellulose');
  await button('Fill the jar').tap();
  await page.getByRole('heading', { level: 1, name: 'Nitrocellulose' }).waitFor();
  await goTo('#/mix');
  expect(
    (await page.locator('main .row').first().allTextContents()).join().match(/Nitrocellulose/g),
  ).toHaveLength(1);
  await goTo('#/mix/jar/new');
  const shown = () => name.inputValue();
  await expect.poll(shown).toBe('Nitrocellulose 2');
  await page.getByRole('radio', { name: /^Acrylic/ }).tap();
  await expect.poll(shown).toBe('Acrylic');
});

test.each([
  { width: 1200, height: 800 },
  { width: 1440, height: 900 },
])('at $width x $height the wall board shows all its tiles under the demo’s line', async (viewport) => {
  await openApp({ viewport, deviceScaleFactor: 1 });
  await button(/demo shop/)
    .first()
    .click();
  await page.locator('.piece-row .wait-bar').first().waitFor();
  await goTo('#/board');
  const tiles = await page.locator('.board > li').all();
  expect(tiles.length).toBeGreaterThan(3);
  for (const tile of tiles) {
    const { y, height } = await box(tile);
    expect(y + height).toBeLessThanOrEqual(viewport.height);
  }
  const demo = await box(page.locator('.demo-line'));
  const title = await box(page.getByRole('heading', { level: 1 }));
  expect(title.y).toBeGreaterThanOrEqual(demo.y + demo.height);
  expect(title.y - demo.y - demo.height).toBeLessThan(40); // no hole between them
});

/** Where one goes with gloves on, and what is tapped there. */
const BOOTH = ['#/bench', '#/lay', '#/air/day-end', '#/air/read', '#/board', '#/plan/reminders'] as const;

test('on the way to the booth and back every target is at least 56 px high and wide', async () => {
  await openDemo(SMALL);
  const piece = (await page.locator('.piece-row > a').first().getAttribute('href')) ?? '';
  const small: string[] = [];
  const look = async (where: string): Promise<void> => {
    const found = await page.evaluate(() =>
      [...document.querySelectorAll('a, button, input, select, summary')]
        .filter((one) => one.checkVisibility() && !one.closest('.demo-line, .skip'))
        .flatMap((one) => {
          const { width, height } = (one.closest('label') ?? one).getBoundingClientRect();
          const isSmall = width > 0 && (width < 55.5 || height < 55.5);
          return isSmall
            ? [`${Math.round(width)} x ${Math.round(height)}: ${one.outerHTML.slice(0, 90)}`]
            : [];
        }),
    );
    const shared = await page.evaluate(() => {
      const lines = [...document.querySelectorAll('main summary')].filter((one) => one.checkVisibility());
      return lines
        .filter((one, n) => {
          const below = lines[n + 1]?.getBoundingClientRect().top ?? Number.POSITIVE_INFINITY;
          return below < one.getBoundingClientRect().bottom - 1;
        })
        .map((one) => `reaches into the next line: ${one.textContent}`);
    });
    small.push(...[...found, ...shared].map((one) => `${where} ${one}`));
  };
  for (const hash of [...BOOTH, piece, `${piece}/check`, `${piece}/sand`]) {
    await goTo(hash);
    await page.waitForTimeout(500);
    await look(hash);
    if (hash !== '#/lay') continue;
    await button('Read and done').tap();
    await button(/^Log it: coat/).waitFor();
    await look('the coat itself');
  }
  expect(small).toEqual([]);
});

test('from the bench a piece that is ready is rubbed out in two taps, with the usual amount', async () => {
  await takePhone(MOBILE);
  await keepOnPhone(manyPieces());
  await newPage();
  await goTo('');
  await page.getByRole('link', { name: 'Ready to rub out: Folding music stand' }).tap();
  await page.getByRole('radio', { name: /^Rub out/, checked: true }).waitFor();
  await button('Log it').tap();
  await page
    .locator('.toast')
    .getByText(/^Rubbed out/)
    .waitFor();
});
