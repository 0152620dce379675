import { base, here, page } from '../app';
import { button, choose, coatLogged, field, heading, openLine, section } from '../on-screen';

export const HOUR_MS = 3_600_000;

/** Local time as a clock field writes it. */
export function clock(atMs: number): string {
  const local = new Date(atMs - new Date(atMs).getTimezoneOffset() * 60_000);
  return local.toISOString().slice(0, 16);
}

export async function sayWhen(atMs: number | undefined): Promise<void> {
  if (atMs === undefined) return;
  await choose('By the clock');
  await page.getByLabel('Day and time').fill(clock(atMs));
}

export async function startPiece(name: string, atMs?: number): Promise<string> {
  await page.goto(`${base}#/piece/new`);
  await field('Name').fill(name);
  await choose(/^Sealed wood/);
  await sayWhen(atMs);
  await button('Start this piece').tap();
  await heading(name).first().waitFor();
  return here();
}

export async function fillJar(name: string): Promise<void> {
  await page.goto(`${base}#/mix/jar/new`);
  await field('Name of the jar').fill(name);
  await button('Fill the jar').tap();
  await heading(name).first().waitFor();
}

/** Opens the coat that a tap would lay; confirms the cautions where a session begins. */
export async function openLay(): Promise<void> {
  await page.getByRole('navigation').getByRole('link', { name: 'Log a coat' }).tap();
  await button(/^(Log it|Read and done)/)
    .first()
    .waitFor();
  const cautions = button('Read and done');
  if ((await cautions.count()) > 0) await cautions.tap();
  await button('Log it').first().waitFor();
}

export async function layCoat(number: number, atMs?: number): Promise<void> {
  await openLay();
  if (atMs !== undefined) await openLine('When');
  await sayWhen(atMs);
  await button('Log it').first().tap();
  await coatLogged(new RegExp(`^Coat ${number} logged on `));
}

/** What the piece's page says of its times and of what was done, as a reader would hear it. */
export const told = async () => ({
  times: await section('When it may be touched').locator('.band-time').allInnerTexts(),
  done: await section('What was done').locator('li').allTextContents(),
});
