import type { Page } from 'playwright-core';
import { expect, inject } from 'vitest';
import { parseEntry } from '../../src/logbook/entry';

// Work logged in several tabs at once, each thing with a mark typed into it, so that it is known again among the rows.
const base = inject('baseUrl');

export type Said = 'coat' | 'pour' | 'air';

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
// By event: a tab that is not in front draws no frames, and a real click would wait for one.
const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name }).first().dispatchEvent('click');
const SAID: Record<Said, string | RegExp> = {
  coat: /^Coat \d+ logged on /,
  pour: / logged\.$/,
  air: 'Reading logged.',
};
/** Waits until the screen says that it was done. */
export const untilSaid = (page: Page, what: Said): Promise<void> =>
  page.locator('.toast').getByText(SAID[what]).waitFor();
/** Takes that line away, so that the next is a new one; the form of a coat is left a frame after its line has come. */
export async function closeLine(page: Page): Promise<void> {
  await press(page, 'Close');
  await page.getByRole('heading', { level: 1, name: 'Log a coat' }).waitFor({ state: 'detached' });
}

/** Each way of logging something; the mark is typed into it, so that it is known again. */
export const logging = (
  weighUp: string,
  at = base,
): Record<Said, (page: Page, mark: string) => Promise<void>> => ({
  async coat(page, mark) {
    await page.goto(`${at}#/lay`);
    await page
      .getByRole('button', { name: /^(Log it|Read and done)/ })
      .first()
      .waitFor();
    const cautions = page.getByRole('button', { name: 'Read and done' });
    // Another tab may have seen to them by now.
    if ((await cautions.count()) > 0)
      await cautions.dispatchEvent('click', undefined, { timeout: 1_000 }).catch(() => undefined);
    await page.locator('.line summary', { hasText: 'How' }).dispatchEvent('click');
    await field(page, 'Wet film').fill(`6${mark}`);
    await press(page, 'Log it');
  },
  async pour(page, mark) {
    await page.goto(`${at}#/mix/weigh/${weighUp}`);
    await field(page, 'The scale shows now').fill(mark);
    await press(page, 'Log what was poured');
  },
  async air(page, mark) {
    await page.goto(`${at}#/air/read`);
    await field(page, 'Air temperature').fill(`2${mark}`);
    await field(page, 'Humidity').fill('50');
    await press(page, 'Log the reading');
  },
});

/** The mark as it stands in the field. */
export const typedAs = (what: Said, mark: string): string =>
  ({ coat: `6${mark}`, pour: mark, air: `2${mark}` })[what];

export const startPiece = async (page: Page, name: string, at = base): Promise<void> => {
  await page.goto(`${at}#/piece/new`);
  await field(page, 'Name').fill(name);
  await page.getByRole('radio', { name: /^Sealed wood/ }).click();
  await press(page, 'Start this piece');
  await page.getByRole('heading', { name }).first().waitFor();
};

/** Every row as the database holds it, with nothing of the app between. */
export const rows = (page: Page): Promise<unknown[]> =>
  page.evaluate(
    () =>
      new Promise<unknown[]>((resolve, reject) => {
        const opening = indexedDB.open('coatwait');
        opening.onerror = () => reject(opening.error);
        // There is none just now: it is the app's to make, and one without its table would stand in the app's way.
        opening.onupgradeneeded = () => opening.transaction?.abort();
        opening.onsuccess = () => {
          if (!opening.result.objectStoreNames.contains('entries')) {
            opening.result.close();
            return reject(new Error('The database has no table yet.'));
          }
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
export function marksIn(kept: readonly unknown[]): string[] {
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
