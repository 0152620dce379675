import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject, test } from 'vitest';
import { launch, MOBILE } from '../browser';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const base = inject('baseUrl');

let browser: Browser;
let context: BrowserContext;
let page: Page;
let problems: string[];

const link = (name: string | RegExp) => page.getByRole('link', { name });
const button = (name: string | RegExp) => page.getByRole('button', { name });
const field = (name: string) => page.getByRole('textbox', { name, exact: true });
const title = (name: string) => page.getByRole('heading', { level: 1, name }).waitFor();
const says = (text: string | RegExp) => page.getByText(text).first().waitFor();

async function axeViolations(): Promise<string[]> {
  await page.evaluate(axeSource); // evaluate, not a script element: the policy forbids those
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

async function startPiece(name: string): Promise<void> {
  await page.goto(`${base}#/piece/new`);
  await field('Name').fill(name);
  await button('Start this piece').tap();
  await title(name);
}

async function startMatch(name: string, tinters: readonly string[]): Promise<void> {
  await field('Name').fill(name);
  for (const tinter of tinters) {
    const box = page.getByRole('checkbox', { name: new RegExp(`^${tinter}`) });
    if (!(await box.isChecked())) await box.tap();
  }
  await button('Start the match').tap();
  await title(name);
}

async function read(match: string, act: string, lab: readonly string[]): Promise<void> {
  await link(act).tap();
  const row = page.getByRole('group', { name: 'Reading 1', exact: true });
  for (const [k, name] of ['L*', 'a*', 'b*'].entries())
    await row.getByRole('textbox', { name, exact: true }).fill(lab[k] ?? '');
  await button('Log the reading').tap();
  await title(match);
}

async function mix(match: string, act: string, name: string, grams: string): Promise<void> {
  await link(act).tap();
  await field(`${name}, g`).fill(grams);
  await button('Log this trial').tap();
  await title(match);
}

beforeAll(async () => {
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
});
beforeEach(async () => {
  context = await browser.newContext(MOBILE);
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
  problems = [];
  page.on('pageerror', (error) => problems.push(error.message));
  await page.goto(base);
  await page.getByRole('heading', { level: 1 }).waitFor();
});
afterEach(async () => {
  await context.close();
  expect(problems).toEqual([]);
});

test('a piece leads to its matches and back, and the second match starts from what the first taught', async () => {
  await startPiece('Small box');
  await page.getByRole('heading', { name: 'This piece' }).tap();
  await link('Match its colour').tap();
  await startMatch('Lid', ['Ochre']);
  await read('Lid', 'Read the target', ['86.5', '-0.6', '14.8']);
  await mix('Lid', 'Weigh in the base', 'White lacquer', '200');
  await read('Lid', 'Read the base', ['95.5', '-0.8', '2.2']);
  await mix('Lid', 'I added something else', 'Ochre', '2');
  await read('Lid', 'Read the trial', ['93', '-1', '16']);

  await link('On Small box').tap();
  await title('Small box');
  await page.getByRole('heading', { name: 'Its colour matches' }).tap();
  await says(/2 trials, begun/);
  await link('Match its colour').tap();
  await startMatch('Foot', ['Ochre']);
  await read('Foot', 'Read the target', ['88', '-0.6', '12']);
  await mix('Foot', 'Weigh in the base', 'White lacquer', '200');
  await read('Foot', 'Read the trial', ['95.5', '-0.8', '2.2']);
  await says('Strength learned from one earlier trial.');
  await page.getByText('Assumed strength of the tinters').tap();
  await says('Earlier matches:');
  expect(await axeViolations()).toEqual([]);
  await link('Lid').tap();
  await title('Lid');

  await link('On Small box').tap();
  await title('Small box');
  await link(/^Foot/).tap();
  await title('Foot');
  await link('On Small box').tap();
  await title('Small box');
  expect(await axeViolations()).toEqual([]);
});

test('what a coat moved in the plan is still said when the app is opened again, until it is seen', async () => {
  await startPiece('Walnut box');
  const id = new URL(page.url()).hash.split('/')[2] ?? '';
  await page.goto(`${base}#/mix/jar/new`);
  await field('Name of the jar').fill('Gloss');
  await button('Fill the jar').tap();
  await title('Gloss');
  await page.goto(`${base}#/plan/${id}`);
  await page.getByRole('radio', { name: 'Full clear' }).check();
  await button('Make the plan').tap();
  await page.getByRole('heading', { name: 'Steps' }).waitFor();
  await page.goto(`${base}#/lay?piece=${id}`);
  const cautions = button('Read and done');
  await cautions.or(button('Log it').first()).first().waitFor();
  if ((await cautions.count()) > 0) await cautions.tap();
  await button('Log it').first().tap();
  await says(/^Coat \d+ logged on /);
  await page.goto(`${base}#/plan`);
  await says('The plan has moved');
  await page.reload();
  await says('The plan has moved');
  await button('Seen').tap();
  await page.getByText('The plan has moved').waitFor({ state: 'detached' });
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.getByRole('heading', { level: 2 }).first().waitFor();
  expect(await page.getByText('The plan has moved').count()).toBe(0);
});
