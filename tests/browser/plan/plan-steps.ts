import { base, goTo, here, newPage, page } from '../app';
import { MOBILE } from '../browser';
import { button } from '../on-screen';

/** A Wednesday, nine o'clock in the shop. Long past, so that the worker's own clock is later than any tap. */
export const NINE = new Date('2025-03-05T09:00:00+01:00').getTime();

export const PHONE = { ...MOBILE, timezoneId: 'Europe/Berlin' };

/** A cold start in the same browser profile, at an instant of the invented clock. */
export async function openAt(atMs: number, hash = ''): Promise<void> {
  await newPage();
  await page.clock.install({ time: atMs });
  await goTo(hash);
}

/** A piece, a jar and a plan; the scuff and the cleaning are passed over by the first coat. */
export async function planBox(): Promise<string> {
  await page.goto(`${base}#/piece/new`);
  await page.getByRole('textbox', { name: 'Name' }).fill('Walnut box');
  await page.getByRole('radio', { name: 'Sealed wood' }).check();
  await button('Start this piece').tap();
  await page.getByRole('heading', { name: 'Walnut box' }).first().waitFor();
  const id = here().split('/')[2] ?? '';
  await page.goto(`${base}#/mix/jar/new`);
  await page.getByRole('textbox', { name: 'Name of the jar' }).fill('Gloss');
  await button('Fill the jar').tap();
  await page.getByRole('heading', { name: 'Gloss' }).first().waitFor();
  await page.goto(`${base}#/plan/${id}`);
  await page.getByRole('radio', { name: 'Full clear' }).check();
  await button('Make the plan').tap();
  await page.getByRole('heading', { name: 'Steps' }).waitFor();
  return id;
}

export async function layCoat(id: string): Promise<void> {
  await page.goto(`${base}#/lay?piece=${id}`);
  const cautions = button('Read and done');
  await cautions.or(button('Log it').first()).first().waitFor();
  if ((await cautions.count()) > 0) await cautions.tap();
  await button('Log it').first().tap();
  await page.getByText(/^Coat \d+ logged on /).waitFor();
  // The drying model answers from its worker, on the real clock.
  await page.getByRole('heading', { name: 'When it may be touched' }).waitFor({ timeout: 20_000 });
  await page.locator('.times-to-come').waitFor({ state: 'detached', timeout: 20_000 });
}
