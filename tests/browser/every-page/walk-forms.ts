import { expect } from 'vitest';
import { goTo, page } from '../app';
import { button, unfold } from '../on-screen';
import type { AForm } from './forms';

// How a form of the list is reached, and its fields looked at.

/** The phone on which forms are walked. */
export const SMALL_PHONE = { viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true };

export async function enterDemo(): Promise<void> {
  await goTo('#/more');
  await unfold('Demo shop');
  await button('Open the demo shop').tap();
  await page.getByText('All invented.').waitFor();
}

/** What was put in last may bring a field with it. */
export const drawn = (): Promise<void> =>
  page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => setTimeout(done, 50))));

/** The first address that these links lead to, each from the page before it. */
async function follow(hash: string, [link, ...rest]: readonly RegExp[]): Promise<string | undefined> {
  if (!link) return hash;
  await goTo(hash);
  const links = page.locator('main a');
  const fitting = async () =>
    (await links.evaluateAll((all) => all.map((one) => one.getAttribute('href') ?? ''))).filter((one) =>
      link.test(one),
    );
  await expect
    .poll(async () => (await fitting()).length, { timeout: 20_000 })
    .toBeGreaterThan(0)
    .catch(() => undefined);
  for (const one of await fitting()) {
    const found = await follow(one, rest);
    if (found !== undefined) return found;
  }
  return undefined;
}

export const openFolds = (): Promise<void> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details')) fold.open = true;
  });

/** Marks the fields of the form that this button sends, and names them. */
export const fieldsOf = (send: string) =>
  page.evaluate((text) => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details')) fold.open = true;
    for (const old of document.querySelectorAll<HTMLElement>('[data-walk]')) delete old.dataset['walk'];
    const buttons = [...document.querySelectorAll<HTMLElement>('main button')];
    const words = (one: HTMLElement) => one.textContent?.trim() ?? '';
    const alike = buttons.filter((one) => words(one) === text);
    const sends =
      alike.find((one) => one.closest('form')?.querySelector('[enterkeyhint=next]')) ??
      alike[0] ??
      buttons.find((one) => words(one).startsWith(text));
    if (!sends) throw new Error(`no button ${text} at ${location.hash}: ${buttons.map(words).join(', ')}`);
    sends.dataset['walk'] = 'send';
    const within = sends.closest('form') ?? document.querySelector('main');
    const all = 'input:not([type=radio], [type=checkbox], [type=file]), textarea, select';
    return [...(within?.querySelectorAll<HTMLInputElement>(all) ?? [])].map((field, i) => {
      field.dataset['walk'] = `${i}`;
      const name = field.getAttribute('aria-label') ?? field.labels?.[0]?.textContent ?? '';
      return { i, name, isNumber: field.enterKeyHint === 'next' };
    });
  }, send);

export const walked = (which: number | string | undefined) => page.locator(`[data-walk="${which}"]`);

/** Fills a field; a fold may have closed over it meanwhile. */
export async function set(text: string, i: number, send: string): Promise<void> {
  await walked(i)
    .fill(text, { timeout: 2_000 })
    .catch(async () => {
      await fieldsOf(send);
      await walked(i).fill(text);
    });
}

async function fill(send: string, fills: Readonly<Record<string, string>>): Promise<void> {
  for (const { i, name } of await fieldsOf(send)) {
    const value = fills[name];
    if (value === undefined) continue;
    const isList = (await walked(i).evaluate(({ tagName }) => tagName)) === 'SELECT';
    await (isList ? walked(i).selectOption({ index: Number(value) }) : walked(i).fill(value));
  }
}

/** Goes to a form, taps what brings it, and fills what else must be there; whether it is to be found. */
export async function openForm({ at, fills = {}, taps = [], filled = [], send }: AForm): Promise<boolean> {
  const [from, ...links] = typeof at === 'string' ? [at] : at;
  const hash = await follow(from, links);
  if (hash === undefined) return false;
  await goTo(hash);
  if (taps.length > 0) await openFolds();
  for (const tap of taps)
    await button(tap)
      .or(page.getByRole('checkbox', { name: tap }))
      .first()
      .tap();
  await page.locator('main button', { hasText: send }).first().waitFor({ state: 'attached' });
  // A tap may have asked for a field that is only now being drawn.
  for (const name of filled)
    await expect.poll(async () => (await fieldsOf(send)).map((one) => one.name)).toContain(name);
  await fill(send, fills);
  return true;
}
