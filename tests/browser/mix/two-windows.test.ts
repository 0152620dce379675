import type { Page } from 'playwright-core';
import { beforeEach, expect, test } from 'vitest';
import { goTo, here, newPage, openApp, page } from '../app';
import { button, choose, field, link } from '../on-screen';

// A weigh-up of white and thinner, open in two windows of one phone.
let first: Page;
let second: Page;

async function keepIngredient(sort: RegExp, name: string): Promise<void> {
  await goTo('#/mix/ingredient/new');
  await choose(sort);
  await field('Name').fill(name);
  await button('Save').tap();
  await page.getByText(`${name} is saved.`).waitFor();
}
async function writeLine(number: number, name: string): Promise<void> {
  const row = page.getByRole('group', { name: `Ingredient ${number}` });
  await row.getByRole('combobox', { name: `Ingredient ${number}` }).selectOption({ label: name });
  await row.getByRole('textbox', { name: 'Amount' }).fill('10');
  await row.getByRole('combobox', { name: 'Unit' }).selectOption({ label: 'g' });
}
const pours = (window: Page, name: string) => window.getByRole('heading', { name: `Pour ${name}` }).waitFor();
const shows = (window: Page) => window.getByRole('textbox', { name: 'The scale shows now' });
const pourExactly = (window: Page) => window.getByRole('button', { name: /^Exactly/ }).tap();

beforeEach(async () => {
  first = await openApp();
  await keepIngredient(/^White base/, 'White');
  await keepIngredient(/^Thinner/, 'Thinner');
  await goTo('#/mix/recipe/new');
  await field('Name of the recipe').fill('Thinned white');
  await writeLine(1, 'White');
  await button('Another ingredient').tap();
  await writeLine(2, 'Thinner');
  await button('Save the recipe').tap();
  await link('Weigh it up').tap();
  await button('Begin to pour').tap();
  await pours(first, 'White');
  const weighUp = here();
  second = await newPage();
  await goTo(weighUp);
  await pours(second, 'White');
});

test('what is typed for a line that is poured in the other window is not noted, and that is said', async () => {
  await shows(first).fill('9.87');
  await pourExactly(second);
  await pours(first, 'Thinner');
  const lost = first.getByRole('alert').filter({ hasText: 'White was poured in another window' });
  await lost.getByText('What you typed here for it, 9.87 g, was not logged.').waitFor();
  expect(await shows(first).inputValue()).toBe('');
  expect(await second.getByText('in another window').count()).toBe(0); // who pours is not told of it
  await shows(first).fill('19.5');
  await first.getByRole('button', { name: 'Log what was poured' }).tap();
  await first
    .getByText('Everything is poured')
    .or(first.getByRole('heading', { name: /^(Top up|Pour)/ }))
    .first()
    .waitFor();
  expect(await first.getByText('in another window').count()).toBe(0);
});

test('what is typed stays with its line while a pour before it is undone and poured again in the other window', async () => {
  await pourExactly(second);
  await pours(first, 'Thinner');
  await shows(first).fill('19.87');
  await second.getByRole('button', { name: 'Undo the last pour' }).tap();
  await pours(first, 'White');
  expect(await shows(first).inputValue()).toBe('');
  await pours(second, 'White');
  await pourExactly(second);
  await pours(first, 'Thinner');
  expect(await shows(first).inputValue()).toBe('19.87');
  expect(await first.getByText('in another window').count()).toBe(0);
});

test('who notes a pour is told of no other window', async () => {
  await shows(first).fill('10.01');
  await first.getByRole('button', { name: 'Log what was poured' }).tap();
  await pours(first, 'Thinner');
  await pours(second, 'Thinner');
  expect(await first.getByText('in another window').count()).toBe(0);
  expect(await shows(first).inputValue()).toBe('');
});
