import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { bringCrashShop } from '../crash-shop';
import { type Killable, newProfile, startKillable } from '../killable';
import { closeLine, logging, marksIn, rows, type Said, startPiece, typedAs, untilSaid } from '../logging';

// The browser process dies at a random moment while work is logged, `KILLS` times over (`KILLS=300` for a long run). Whatever the
// screen had confirmed must be there once, and nothing may be there by half. What this cannot show: a power cut, which
// loses what the system has not yet written to its disk.
const KILLS = Number(process.env['KILLS'] ?? 8);
const LONGEST_LIFE_MS = 2_500;
const base = inject('baseUrl');
const profile = newProfile();

/** What the screen has confirmed, by its mark: `coat 60.001`. */
const confirmed = new Set<string>();
/** What was asked for; nothing else may appear. */
const asked = new Set<string>();
let marks = 0;
let shop: Awaited<ReturnType<typeof bringCrashShop>>;
let browser: Killable | undefined;

const nextMark = (): string => (++marks / 1000).toFixed(3);

async function openPage(hash = ''): Promise<Page> {
  if (!browser) throw new Error('no browser');
  const page = await browser.context.newPage();
  page.setDefaultTimeout(15_000);
  await page.goto(`${base}${hash}`, { waitUntil: 'domcontentloaded' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  return page;
}

// A pour in the other tab moves the weigh-up on, and takes back what is being typed of it here: only one tab pours.
const WHAT: readonly (readonly Said[])[] = [
  ['coat', 'pour', 'air'],
  ['coat', 'air'],
];

/** Logs one thing after another until the browser is gone. */
async function work(page: Page, which: readonly Said[], onConfirmed: () => void): Promise<void> {
  for (;;) {
    const what = which[Math.floor(Math.random() * which.length)] ?? 'air';
    const mark = nextMark();
    asked.add(`${what} ${typedAs(what, mark)}`);
    await logging(shop.weighUp)[what](page, mark);
    await untilSaid(page, what);
    confirmed.add(`${what} ${typedAs(what, mark)}`);
    onConfirmed();
    await closeLine(page);
  }
}

const lacking = async (page: Page): Promise<string[]> => {
  const kept = marksIn(await rows(page).catch(() => [])); // a database that is just made may have no store yet
  return [...confirmed].filter((mark) => !kept.includes(mark));
};

/** A browser may come back with its database empty: then the second copy puts everything back, and that is said. */
async function mended(page: Page): Promise<void> {
  const lost = await lacking(page);
  await expect.poll(() => lacking(page), { timeout: 20_000 }).toEqual([]);
  if (lost.length === 0) return;
  await page.getByText(/The browser had lost .*back/).waitFor();
  console.log(
    `the browser came back without ${lost.length} of ${confirmed.size}; they are back, and it is said`,
  );
}

async function expectNothingLost(page: Page): Promise<void> {
  await mended(page);
  const kept = marksIn(await rows(page));
  expect(kept.length, 'an entry is there twice').toBe(new Set(kept).size);
  expect(kept.filter((mark) => !asked.has(mark))).toEqual([]);
  // And the app shows what the database holds.
  await page.goto(`${base}#/bench`);
  expect(await page.getByText(/could not be (read|opened)/).count()).toBe(0);
  await page.goto(`${base}#/mix/weigh/${shop.weighUp}`);
  const grams = kept.flatMap((mark) => (mark.startsWith('pour ') ? Number(mark.slice(5)) : []));
  const sumG = grams.reduce((sum, g) => sum + g, 0);
  const shown = (await page.getByText(/In the cup so far/).textContent()) ?? '';
  expect(Number(/so far: ([\d.]+) g/.exec(shown)?.[1]), shown).toBeCloseTo(sumG, 1);
}

beforeAll(async () => {
  browser = await startKillable(profile.folder);
  shop = await bringCrashShop(await openPage());
});
let hasFailed = false;
afterEach(({ task }) => {
  if (task.result?.state !== 'fail') return;
  hasFailed = true;
  console.log(
    `The profile is kept in ${profile.folder}. What the browser stored in it:\n${profile.stored()}`,
  );
});
afterAll(async () => {
  await browser?.kill();
  if (!hasFailed) profile.remove();
});

test(
  `${KILLS} kills lose no confirmed entry, double none, and leave none by half`,
  async () => {
    const { log } = console;
    for (let kill = 0; kill < KILLS; kill++) {
      const tabs = [await openPage(), ...(kill % 2 ? [await openPage()] : [])];
      await startPiece(tabs[0] as Page, `Piece ${kill}`);
      const current = browser;
      // Every third time right as the screen confirms; else whenever.
      let strike = (): void => undefined;
      const struck = new Promise<void>((resolve) => {
        strike = resolve;
      });
      setTimeout(strike, 200 + Math.random() * LONGEST_LIFE_MS);
      const onConfirmed = kill % 3 === 0 ? () => strike() : () => undefined;
      const working = tabs.map((page, tab) =>
        work(page, WHAT[tab] ?? [], onConfirmed).catch((error: unknown) => error),
      );
      await struck;
      await current?.kill();
      for (const end of await Promise.all(working))
        expect(String(end)).toMatch(/closed|crashed|disconnected|detached/i);
      browser = await startKillable(profile.folder);
      const page = await openPage();
      await expectNothingLost(page);
      await page.close();
      if (kill % 25 === 24) log(`kills ${kill + 1}, confirmed entries ${confirmed.size}, lost 0 so far`);
    }
    log(`kills ${KILLS}, confirmed entries ${confirmed.size}, asked for ${asked.size}, lost 0`);
    expect(confirmed.size).toBeGreaterThan(KILLS);
  },
  60_000 + KILLS * 30_000,
);

test('two tabs that log at once lose nothing, and each shows what the other logged', async () => {
  const tabs = [await openPage(), await openPage()] as const;
  const before = confirmed.size;
  await Promise.all(
    tabs.map(async (page, tab) => {
      const what = tab === 0 ? 'pour' : 'air';
      for (let times = 0; times < 6; times++) {
        const mark = nextMark();
        asked.add(`${what} ${typedAs(what, mark)}`);
        await logging(shop.weighUp)[what](page, mark);
        await untilSaid(page, what);
        await untilSaid(page, what);
        confirmed.add(`${what} ${typedAs(what, mark)}`);
        await closeLine(page);
      }
    }),
  );
  expect(confirmed.size - before).toBe(12);
  for (const page of tabs) await page.goto(`${base}#/mix/weigh/${shop.weighUp}`);
  const cups = await Promise.all(tabs.map((page) => page.getByText(/In the cup so far/).textContent()));
  expect(cups[0]).toBe(cups[1]);
  for (const page of tabs) await expectNothingLost(page);
});
