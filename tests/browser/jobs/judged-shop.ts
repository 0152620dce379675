import { expect } from 'vitest';
import { goTo, here, newPage, page, takePhone } from '../app';
import { MOBILE } from '../browser';
import { button, choose, field, title } from '../on-screen';

// Work on a shop whose clock the test turns on.
export const DAY_MS = 86_400_000;
export const closeToast = () => button('Close this message').tap();

/** The app on a phone whose clock stands there, in Berlin. */
export async function openAt(time: string): Promise<void> {
  await takePhone({ ...MOBILE, timezoneId: 'Europe/Berlin' });
  await newPage();
  await page.clock.install({ time: new Date(time) });
  await goTo('');
}

export async function startPiece(name: string, base: RegExp): Promise<string> {
  await goTo('#/piece/new', 'Start a piece');
  await field('Name').fill(name);
  await choose(base);
  await button('Start this piece').tap();
  await title(name);
  await closeToast();
  return here().split('/')[2] ?? '';
}

/** On the page of the old finish: lead was tested for, and found. */
export async function leadFound(): Promise<void> {
  await choose('Tested: lead found');
  await field('How it was tested').fill('Swab on each layer');
  await button('Log it').tap();
  await closeToast();
}

export async function plan(piece: string, job: RegExp | string): Promise<void> {
  await goTo(`#/plan/${piece}`);
  await choose(job);
  await button('Make the plan').tap();
  await page.getByRole('heading', { name: 'Steps' }).waitFor();
  await closeToast();
}

export async function fillJar(finish: RegExp, name: string): Promise<void> {
  await goTo('#/mix/jar/new');
  await choose(finish);
  await page.getByRole('textbox', { name: /^Name of the (jar|can)$/ }).fill(name);
  await button(/^(Fill the jar|Add the can)$/).tap();
  await title(name);
  await closeToast();
}

/** The form of a coat, its cautions read. */
export async function toCoat(piece: string): Promise<void> {
  await goTo(`#/lay?piece=${piece}`);
  const cautions = button('Read and done');
  await cautions.or(button('Log it').first()).first().waitFor();
  if ((await cautions.count()) > 0) await cautions.tap();
  await button('Log it').first().waitFor();
}

export async function logCoat(piece: string): Promise<void> {
  await toCoat(piece);
  await logIt();
}

/** Logs the coat on screen, and waits for the times of its piece. */
export async function logIt(): Promise<void> {
  await button('Log it').first().tap();
  await page.getByRole('heading', { name: 'When it may be touched' }).waitFor({ timeout: 30_000 });
}

export async function readAir(degrees: string, humidity: string): Promise<void> {
  await goTo('#/air/read');
  await field('Air temperature').fill(degrees);
  await field('Humidity').fill(humidity);
  await button('Log the reading').tap();
  await closeToast();
}

export async function logCheck(piece: string, test: RegExp | string, found: string): Promise<void> {
  await goTo(`#/piece/${piece}/check`, 'Log a check');
  await choose(test);
  await choose(found);
  await button('Log it').tap();
  await closeToast();
}

export const tellsNoneOf = async (words: RegExp): Promise<void> =>
  expect(await page.getByRole('main').getByText(words).allTextContents()).toEqual([]);

export const pass = async (days: number): Promise<void> => page.clock.fastForward(days * DAY_MS);
