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
import { afterAll, afterEach, expect, inject } from 'vitest';
import { bringCrashShop } from '../crash-shop';
import { type Killable, newProfile, type Profile, startKillable } from '../killable';
import { rows, startPiece } from '../logging';

// What a browser keeps is damaged on the disk, in every way that was seen to be passed over in silence; one store at a time, for the two
// do not share a fate. `DAMAGES=20` for more places in each file.
export const PLACES = Number(process.env['DAMAGES'] ?? 1);
const base = inject('baseUrl');
export let profile: Profile;
export let browser: Killable;
const table: string[] = [];

export type Harm = (path: string) => void;
const at = (path: string): number => Math.floor(Math.random() * statSync(path).size);
export const HARMS: Record<string, Harm> = {
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
export const databaseFiles = (): string[] => filesUnder(join(profile.folder, 'Default', 'IndexedDB'));
export const filesBeside = (): string[] => filesUnder(join(profile.folder, 'Default', 'File System'));
/** The browser's own list of what lies there. */
export const isIndex = (path: string): boolean => /[/\\](Paths|Origins)[/\\]/.test(path);

async function openPage(): Promise<Page> {
  const page = await browser.context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(base, { waitUntil: 'domcontentloaded' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  return page;
}

export const idsIn = async (page: Page): Promise<string[]> =>
  ((await rows(page).catch(() => [])) as { id: string }[]).map(({ id }) => id).sort();

/** What must be there after whatever happens. */
export interface Before {
  ids: readonly string[];
  readonly names: readonly string[];
}

/** A logbook of eight entries on a phone of its own. */
export async function work(): Promise<Before> {
  profile = newProfile();
  browser = await startKillable(profile.folder);
  const page = await openPage();
  await bringCrashShop(page);
  const names = ['Box 0', 'Box 1', 'Box 2'];
  for (const name of names) await startPiece(page, name);
  return { ids: await idsIn(page), names };
}

export async function workOn(page: Page, before: Before, name: string): Promise<Before> {
  await startPiece(page, name);
  const ids = await idsIn(page);
  return { ids: ids.length > 0 ? ids : before.ids, names: [...before.names, name] };
}

/** The browser dies; what is under it is harmed; it is started again. */
export async function restartAfter(harm: () => void): Promise<Page> {
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
export async function expectAllThere(page: Page, { ids, names }: Before, what: string): Promise<void> {
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

afterAll(() => {
  console.log(['fault | confirmed | lost | doubled | the person read', ...table].join('\n'));
});
