import {
  existsSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, describe, expect, inject, test } from 'vitest';
import { crashShop } from './crash-shop';
import { type Killable, newProfile, type Profile, startKillable } from './killable';
import { rows, startPiece } from './logging';

// What a browser keeps is damaged on the disk, in every way that was seen to be passed over in silence; one store at a time, for the two
// do not share a fate. `DAMAGES=20` for more places in each file.
const PLACES = Number(process.env['DAMAGES'] ?? 1);
const base = inject('baseUrl');
let profile: Profile;
let browser: Killable;
const table: string[] = [];

type Harm = (path: string) => void;
const at = (path: string): number => Math.floor(Math.random() * statSync(path).size);
const HARMS: Record<string, Harm> = {
  cut: (path) => truncateSync(path, at(path)),
  zeroed: (path) => writeFileSync(path, Buffer.alloc(statSync(path).size)),
  flipped: (path) => {
    const bytes = readFileSync(path);
    for (let n = 0; n < 40 && bytes.length > 0; n++) {
      const place = at(path);
      bytes[place] = (bytes[place] ?? 0) ^ 0xff;
    }
    writeFileSync(path, bytes);
  },
  deleted: (path) => rmSync(path, { recursive: true }),
};

const filesUnder = (folder: string): string[] =>
  existsSync(folder)
    ? (readdirSync(folder, { recursive: true }) as string[])
        .map((path) => join(folder, path))
        .filter((path) => statSync(path).isFile())
    : [];
const database = (): string[] => filesUnder(join(profile.folder, 'Default', 'IndexedDB'));
const beside = (): string[] => filesUnder(join(profile.folder, 'Default', 'File System'));
/** The browser's own list of what lies there. */
const isIndex = (path: string): boolean => /[/\\](Paths|Origins)[/\\]/.test(path);

async function openPage(hash = ''): Promise<Page> {
  const page = await browser.context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(`${base}${hash}`, { waitUntil: 'domcontentloaded' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  return page;
}

const idsIn = async (page: Page): Promise<string[]> =>
  ((await rows(page).catch(() => [])) as { id: string }[]).map(({ id }) => id).sort();

/** What must be there after whatever happens. */
interface Before {
  ids: readonly string[];
  readonly names: readonly string[];
}

/** A logbook of eight entries on a phone of its own. */
async function work(): Promise<Before> {
  profile = newProfile();
  browser = await startKillable(profile.folder);
  const shop = await crashShop();
  const page = await openPage('#/more');
  const buffer = Buffer.from(shop.backup);
  await page
    .locator('main input[type="file"]')
    .setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer });
  await page.getByText('5 entries restored.').waitFor();
  const names = ['Box 0', 'Box 1', 'Box 2'];
  for (const name of names) await startPiece(page, name);
  return { ids: await idsIn(page), names };
}

async function workOn(page: Page, before: Before, name: string): Promise<Before> {
  await startPiece(page, name);
  const ids = await idsIn(page);
  return { ids: ids.length > 0 ? ids : before.ids, names: [...before.names, name] };
}

/** The browser dies; what is under it is harmed; it is started again. */
async function restartAfter(harm: () => void): Promise<Page> {
  await browser.kill();
  harm();
  browser = await startKillable(profile.folder);
  return openPage();
}

afterEach(async () => {
  await browser.kill();
  profile.remove();
});

const ALONE = 'The browser’s database cannot be used';

/**
 * Every row is in the database again, once; or, where the browser gives none any more, every piece is on the bench, and that is said. There
 * may be one that the database had not taken at the time: the second copy had.
 */
async function expectAllThere(page: Page, { ids, names }: Before, what: string): Promise<void> {
  const isAlone = async () => (await page.getByText(ALONE).count()) > 0;
  const isThere = async (): Promise<boolean> => {
    const kept = await idsIn(page);
    return new Set(kept).size === kept.length && ids.every((id) => kept.includes(id));
  };
  const shown = page.locator('body');
  await expect
    .poll(async () => (await isAlone()) || (await isThere()), { timeout: 20_000 })
    .toBe(true)
    .catch(async (error: unknown) => {
      console.log(
        `${what}: the database has ${await idsIn(page)}, and the page showed:\n${await shown.ariaSnapshot()}`,
      );
      throw error;
    });
  for (const name of names) await page.getByText(name, { exact: true }).first().waitFor();
  const notice = page.getByText(/The browser had lost .*back|database cannot be used/);
  const said = (await notice.count()) > 0 ? await notice.first().textContent() : 'nothing';
  table.push(`${what} | ${ids.length} | 0 | 0 | ${said}`);
}

describe('the database', () => {
  test.each(['MANIFEST', 'CURRENT', '.log', '.ldb'])(
    '%s harmed: everything is back, and it is said',
    async (name) => {
      let before = await work();
      for (const [how, harm] of Object.entries(HARMS))
        for (let place = 0; place < PLACES; place++) {
          const hit = (): string[] => database().filter((path) => path.includes(name));
          const page = await restartAfter(() => hit().forEach(harm));
          await expectAllThere(page, before, `database, ${name} ${how}`);
          before = await workOn(page, before, `Later ${how} ${place}`);
        }
    },
    300_000,
  );

  test('its folder gone: everything is back, and it is said', async () => {
    const before = await work();
    const page = await restartAfter(() =>
      rmSync(join(profile.folder, 'Default', 'IndexedDB'), { recursive: true }),
    );
    await page.getByText(`The browser had lost ${before.ids.length} entries; they are back`).waitFor();
    await expectAllThere(page, before, 'database, folder gone');
  });

  test('deleted while the app is open: what was logged and what follows is there after a reload', async () => {
    const before = await work();
    const [page] = browser.context.pages().slice(-1) as [Page];
    await page.evaluate(
      () =>
        new Promise((resolve) => {
          indexedDB.deleteDatabase('coatwait').onsuccess = resolve;
        }),
    );
    await page.getByText(/The browser had lost \d+ entries; they are back/).waitFor();
    const all = await workOn(page, before, 'Later box');
    expect(all.ids.length).toBe(9);
    await page.reload();
    await page.goto(`${base}#/bench`);
    await expectAllThere(page, all, 'database, deleted while open');
  });

  test('and the journal deleted while the app is open: what is in memory is kept once more', async () => {
    const before = await work();
    const [page] = browser.context.pages().slice(-1) as [Page];
    await page.evaluate(async () => {
      const root = await navigator.storage.getDirectory();
      await root.removeEntry('coatwait-journal', { recursive: true }).catch(() => undefined); // it is in use
      await new Promise((resolve) => {
        indexedDB.deleteDatabase('coatwait').onsuccess = resolve;
      });
    });
    await expect.poll(() => idsIn(page), { timeout: 20_000 }).toEqual(before.ids);
  });
});

describe('the journal', () => {
  const isKept = (page: Page) => page.getByText('A second copy of the logbook is kept');
  const isGone = (page: Page) =>
    page.getByText(
      /The second copy on this phone cannot be used any more|There is no second copy on this phone/,
    );
  const harmed = (how: string, isHit: (path: string) => boolean) =>
    restartAfter(() =>
      beside()
        .filter(isHit)
        .forEach(HARMS[how] as Harm),
    );

  // Cut, zeroed or deleted, the browser begins its index anew; flipped it may read half of it.
  test.each(Object.keys(HARMS))(
    '%s: the database has everything, and the journal is made up',
    async (how) => {
      let before = await work();
      for (let place = 0; place < PLACES; place++) {
        const page = await harmed(how, (path) => how !== 'flipped' || !isIndex(path));
        await expectAllThere(page, before, `journal, ${how}`);
        before = await workOn(page, before, `Later ${place}`);
        // And what was made up serves when the database goes next.
        await page.goto(`${base}#/more`);
        await isKept(page).waitFor();
      }
      await new Promise((resolve) => setTimeout(resolve, 1_000));
      const page = await restartAfter(() =>
        rmSync(join(profile.folder, 'Default', 'IndexedDB'), { recursive: true }),
      );
      await expectAllThere(page, before, `journal, ${how}, then the database gone`);
    },
    300_000,
  );

  // What the browser then makes of the copy is its own affair: it may keep it, or refuse the folder from now on or from the next start.
  test("the browser's index flipped: the logbook is whole, and it is said whether a second copy is kept", async () => {
    let before = await work();
    for (let place = 0; place < PLACES; place++) {
      const page = await harmed('flipped', isIndex);
      await expectAllThere(page, before, "journal, the browser's index flipped");
      before = await workOn(page, before, `Later ${place}`);
      await page.goto(`${base}#/more`);
      await isKept(page).or(isGone(page)).first().waitFor();
    }
  }, 300_000);
});

afterAll(() => {
  console.log(['fault | confirmed | lost | doubled | the person read', ...table].join('\n'));
});
