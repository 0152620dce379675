import type { Locator } from 'playwright-core';
import { expect } from 'vitest';
import { goTo, page } from './app';

// What a person looks for on the screen, by its role and its words.
type Words = string | RegExp;
export const button = (name: Words): Locator => page.getByRole('button', { name });
export const link = (name: Words): Locator => page.getByRole('main').getByRole('link', { name });
export const field = (name: string): Locator => page.getByRole('textbox', { name, exact: true });
export const list = (name: string): Locator => page.getByRole('combobox', { name, exact: true });
export const heading = (name: Words): Locator => page.getByRole('heading', { name });
export const title = (name: Words): Promise<void> => page.getByRole('heading', { level: 1, name }).waitFor();
export const section = (name: string): Locator => page.locator('section', { has: heading(name) });
/** Waits until a coat is said to be logged, and its form is left: that comes a frame later. */
export async function coatLogged(text: Words): Promise<void> {
  await page.getByText(text).first().waitFor();
  await page.getByRole('heading', { level: 1, name: 'Log a coat' }).waitFor({ state: 'detached' });
}
/** Waits until the page of a piece has its times, and not those from before what was just logged. */
export async function timesWorkedOut(): Promise<void> {
  await section('When it may be touched').locator('.band-time').first().waitFor();
  await page.waitForFunction(() => !/(Working out|Updating) the times/.test(document.body.textContent ?? ''));
}
/** Opens a section that stands as one line, where it is not open yet. */
export async function unfold(name: string): Promise<void> {
  const fold = page.locator('.fold > details', { has: heading(name) });
  if (!(await fold.evaluate((details) => (details as HTMLDetailsElement).open)))
    await fold.locator('summary').first().tap();
}
/** Opens fields that stand as one line, where they are not open yet. */
export async function openLine(label: string): Promise<void> {
  const line = page.locator('.line > details', { has: page.getByText(label, { exact: true }) }).first();
  if (!(await line.evaluate((details) => (details as HTMLDetailsElement).open)))
    await line.locator('summary').first().tap();
}
/** Opens every section and line of the page. */
export const unfoldAll = (): Promise<void> =>
  page.locator('.fold > details').evaluateAll((all) => {
    for (const details of all) (details as HTMLDetailsElement).open = true;
  });
/** On the page that marks a place: a chip of 14 x 6 mm, 0.18 mm deep. */
export async function saveChip(): Promise<void> {
  await field('Name').fill('Lower edge');
  await field('Length').fill('14');
  await field('Width').fill('6');
  await field('Depth').fill('0.18');
  await button('Save').tap();
  await title('Lower edge');
}
export const said = (text: Words): Locator => page.getByRole('main').getByText(text).first();
/** A text is taken whole, a pattern anywhere. */
export const choose = (name: Words): Promise<void> =>
  page.getByRole('radio', { name, exact: typeof name === 'string' }).tap();

/** The first link on the page that leads to such an address; empty where there is none. */
export const firstLink = (hash: RegExp): Promise<string> =>
  page
    .locator('main a[href^="#/"]')
    .evaluateAll(
      (all, source) =>
        all.map((one) => one.getAttribute('href') ?? '').find((href) => new RegExp(source).test(href)) ?? '',
      hash.source,
    );

/** Puts the phone into US units, as a person does under More, and waits until they are kept: a page opened then has them. */
export async function inUsUnits(): Promise<void> {
  await goTo('#/more');
  await choose(/^US/);
  const isKept = async (): Promise<boolean> => {
    await goTo('#/more');
    await goTo('#/piece/new', 'Start a piece');
    return page.getByRole('radio', { name: 'in²' }).isChecked();
  };
  await expect.poll(isKept).toBe(true);
}
