import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { parseEntry } from '../../src/logbook/entry';
import { crashShop } from './crash-shop';
import { type Killable, newProfile, startKillable } from './killable';

// The browser process dies at a random moment while work is logged, `KILLS` times over (`KILLS=300` for a long run). Whatever the
// screen had confirmed must be there once, and nothing may be there by half. What this cannot show: a power cut, which
// loses what the system has not yet written to its disk.
const KILLS = Number(process.env['KILLS'] ?? 8);
const LONGEST_LIFE_MS = 2_500;
const base = inject('baseUrl');
const profile = newProfile();

type Said = 'coat' | 'pour' | 'air';
/** What the screen has confirmed, by its mark: `coat 60.001`. */
const confirmed = new Set<string>();
/** What was asked for; nothing else may appear. */
const asked = new Set<string>();
let marks = 0;
let shop: Awaited<ReturnType<typeof crashShop>>;
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

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
// By event: a tab that is not in front draws no frames, and a real click would wait for one.
const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name }).first().dispatchEvent('click');
/** Waits until the screen says that it was done, then takes the line away, so that the next is a new one. */
async function untilSaid(page: Page, text: string | RegExp): Promise<void> {
  await page.locator('.toast').getByText(text).waitFor();
}
const closeLine = (page: Page) => press(page, 'Close');

/** Each way of logging something; the mark is typed into it, so that it is known again. */
const LOGGING: Record<Said, (page: Page, mark: string) => Promise<void>> = {
  async coat(page, mark) {
    await page.goto(`${base}#/lay`);
    await page
      .getByRole('button', { name: /^(Lay it|Read, and seen to)$/ })
      .first()
      .waitFor();
    const cautions = page.getByRole('button', { name: 'Read, and seen to' });
    if ((await cautions.count()) > 0) await press(page, 'Read, and seen to');
    await field(page, 'Wet film').fill(`6${mark}`);
    await press(page, 'Lay it');
    await untilSaid(page, /^Coat \d+ laid on /);
  },
  async pour(page, mark) {
    await page.goto(`${base}#/mix/weigh/${shop.weighUp}`);
    await field(page, 'The scale shows now').fill(mark);
    await press(page, 'Note what was poured');
    await untilSaid(page, / noted\.$/);
  },
  async air(page, mark) {
    await page.goto(`${base}#/air/read`);
    await field(page, 'Air temperature').fill(`2${mark}`);
    await field(page, 'Humidity').fill('50');
    await press(page, 'Log the reading');
    await untilSaid(page, 'Reading logged.');
  },
};
// A pour in the other tab moves the weigh-up on, and takes back what is being typed of it here: only one tab pours.
const WHAT: readonly (readonly Said[])[] = [
  ['coat', 'pour', 'air'],
  ['coat', 'air'],
];
const typedAs = (what: Said, mark: string) => ({ coat: `6${mark}`, pour: mark, air: `2${mark}` })[what];

/** Logs one thing after another until the browser is gone. */
async function work(page: Page, which: readonly Said[], onConfirmed: () => void): Promise<void> {
  for (;;) {
    const what = which[Math.floor(Math.random() * which.length)] ?? 'air';
    const mark = nextMark();
    asked.add(`${what} ${typedAs(what, mark)}`);
    await LOGGING[what](page, mark);
    confirmed.add(`${what} ${typedAs(what, mark)}`);
    onConfirmed();
    await closeLine(page);
  }
}

const startPiece = async (page: Page, name: string): Promise<void> => {
  await page.goto(`${base}#/piece/new`);
  await field(page, 'Name').fill(name);
  await page.getByRole('radio', { name: /^Sealed wood/ }).click();
  await press(page, 'Start this piece');
  await page.getByRole('heading', { name }).first().waitFor();
};

/** Every row as the database holds it, with nothing of the app between. */
const rows = (page: Page): Promise<unknown[]> =>
  page.evaluate(
    () =>
      new Promise<unknown[]>((resolve, reject) => {
        const opening = indexedDB.open('coatwait');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asking = opening.result.transaction('entries').objectStore('entries').getAll();
          asking.onerror = () => reject(asking.error);
          asking.onsuccess = () => {
            opening.result.close();
            resolve(asking.result);
          };
        };
      }),
  );

/** The marks among the rows, each as often as it is there; a row that is no whole entry fails the test. */
function marksIn(kept: readonly unknown[]): string[] {
  return kept.flatMap((row) => {
    const entry = parseEntry(row, Date.now());
    expect(entry, JSON.stringify(row)).toMatchObject({ ok: true });
    if (!entry.ok) return [];
    const { value } = entry;
    if (value.kind === 'coat-laid' && value.film.by === 'wet') return `coat ${value.film.wetFilm.text}`;
    if (value.kind === 'poured') return `pour ${value.scale.text}`;
    return value.kind === 'air-read' ? `air ${value.temperature.text}` : [];
  });
}

async function expectNothingLost(page: Page): Promise<void> {
  const kept = marksIn(await rows(page));
  expect(kept.length, 'an entry is there twice').toBe(new Set(kept).size);
  expect([...confirmed].filter((mark) => !kept.includes(mark))).toEqual([]);
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
  shop = await crashShop();
  browser = await startKillable(profile.folder);
  const page = await openPage('#/more');
  const buffer = Buffer.from(shop.backup);
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer });
  await page.getByText('5 entries brought in.').waitFor();
});
afterAll(async () => {
  await browser?.kill();
  profile.remove();
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
        await LOGGING[what](page, mark);
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
