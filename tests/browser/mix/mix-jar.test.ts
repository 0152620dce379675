import { describe, expect, test } from 'vitest';
import { context, goTo, openApp, openPage, page } from '../app';
import { button, choose, field, link, list, said, section, unfold } from '../on-screen';
import { addIngredient, textOf } from './mix-steps';

describe('scenario B: a full clear', () => {
  test('12 coats on 0.205 m2: about 50 mL a coat, 600 in all, 400 to 470 mL lacquer, 200 to 240 mL thinner, 12.5 um dry', async () => {
    await openApp();
    await goTo('#/mix/amount', 'How much to mix');
    await field('Area').fill('0.205');
    await unfold('Coats');
    await field('Coats').fill('12');
    await field('Wet film of a coat').fill('85');
    await field('Keep back for repairs').fill('');
    await said(/^50 mL a coat, 597 mL in all/).waitFor();
    const parts = await textOf(said(/mL lacquer and/));
    const [lacquer, thinner] = [...parts.matchAll(/(\d+) mL/g)].map(([, ml]) => Number(ml));
    expect(lacquer).toBeGreaterThanOrEqual(400);
    expect(lacquer).toBeLessThanOrEqual(470);
    expect(thinner).toBeGreaterThanOrEqual(200);
    expect(thinner).toBeLessThanOrEqual(240);
    await said('12.5 µm dry a coat, 150 µm in all.').waitFor();
    await field('Of what is sprayed, this much lands on the piece').fill('120');
    await said('Enter a percentage from 1 to 100.').waitFor();
    expect(await section('It takes').count()).toBe(0);
  });
});

describe('scenario C: a catalysed lacquer', () => {
  test('a pot life of 8 h in a shop at 30 C is 4 h, and is on the jar, on the list and on the label', async () => {
    await openApp();
    await goTo('#/air/read', /./);
    await field('Air temperature').fill('30');
    await field('Humidity').fill('50');
    await button('Log the reading').tap();
    await said(/Read today/).waitFor(); // logged, and back on the air
    await goTo('#/mix/jar/new', 'What is in the jar');
    await choose(/^Conversion/);
    await button('Fill the jar').tap();
    await section('Pot life').getByText('4 h left').waitFor();
    await said(/At 20 °C it would have kept until/).waitFor();
    await link('Print a label').tap();
    await said('DANGER').waitFor();
    await said(/Acid: burns skin and eyes/).waitFor();
    await page.getByRole('img', { name: /QR code that leads to jar/ }).waitFor();
    await goTo('#/mix', 'Mix');
    await said('Pot life: 4 h left').waitFor();
  });
});

describe('a jar', () => {
  test('is filled in one tap at common practice, found by the code on its lid, offline', async () => {
    await openApp();
    await goTo('#/mix/jar/new', 'What is in the jar');
    await button('Fill the jar').tap();
    await link('Log a coat from it').waitFor();
    await unfold('What is in it');
    const code = await textOf(section('What is in it').locator('dd').last());
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await context.setOffline(true);
    await page.close();
    await openPage(`#/mix/jar/${code}`); // the link on the label
    await link('Log a coat from it').waitFor();
    await goTo('#/mix/find', 'Find a jar');
    await field('Code on the label').fill('ABC-12');
    await button('Find it').tap();
    await said('A code has six letters and digits, such as K7Q-2MD.').waitFor();
    await field('Code on the label').fill(code.toLowerCase().replace('-', ' '));
    await button('Find it').tap();
    await link('Log a coat from it').waitFor();
  });

  test('is set right by weighing, and boxed with another', async () => {
    await openApp();
    for (const amount of ['100', '200']) {
      await goTo('#/mix/jar/new', 'What is in the jar');
      await page.getByText('How much, how long it keeps, tracer').tap();
      await field('In the jar').fill(amount);
      await button('Fill the jar').tap();
      await link('Log a coat from it').waitFor();
    }
    await page.getByText('Weigh it').tap();
    await field('It weighs, without the jar').fill('95');
    await section('What is left').getByRole('button', { name: 'Log it' }).first().tap();
    await section('What is left').getByText('100 mL, about 95 g').waitFor();
    await page.getByText('Box it with another jar').tap();
    await list('With which').selectOption({ label: 'Nitrocellulose' });
    await button('Pour them together').tap();
    await page.getByRole('heading', { level: 1, name: 'Nitrocellulose 2 and Nitrocellulose' }).waitFor();
    await section('What is left').getByText('200 mL, about 190 g').waitFor();
  });
});

describe('bad input', () => {
  test('is caught where it is, in a sentence, and what was typed stays', async () => {
    await openApp();
    await goTo('#/mix/jar/new', 'What is in the jar');
    await field('Volume solids as sold').fill('120');
    await field('How much thinner').fill('-5');
    await button('Fill the jar').tap();
    await said('Enter a value from 0.1 to 100 %.').waitFor();
    await said('Enter a value from 0 to 1000 %.').waitFor();
    expect(await field('Volume solids as sold').inputValue()).toBe('120');

    await addIngredient(/^White base/, 'White', { density: '' });
    await addIngredient(/^Tinter/, 'Black');
    await goTo('#/mix/recipe/new', 'A new recipe');
    const row = page.getByRole('group', { name: 'Ingredient 1' });
    await field('Name of the recipe').fill('Grey');
    await row.getByRole('combobox', { name: 'Ingredient 1' }).selectOption({ label: 'White' });
    await row.getByRole('textbox', { name: 'Amount' }).fill('40');
    await row.getByRole('combobox', { name: 'Unit' }).selectOption({ label: 'mL' });
    await said('White has no density yet. Give it one, or give its amount in grams.').waitFor();
    await row.getByRole('combobox', { name: 'Ingredient 1' }).selectOption({ label: 'Black' });
    await row.getByRole('combobox', { name: 'Unit' }).selectOption({ label: 'drops' });
    await said(/Weigh 20 drops once/).waitFor();
    await row.getByRole('textbox', { name: 'Amount' }).fill('0');
    await button('Save the recipe').tap();
    await said('Enter an amount above 0.').waitFor();
    expect(await row.getByRole('textbox', { name: 'Amount' }).inputValue()).toBe('0');

    await goTo('#/mix/cup', 'Flow cup');
    await field('Time').fill('500');
    await said(/This cup does not measure that/).waitFor();
    await goTo('#/mix/jar/nowhere', 'Jar');
    await said('This is not in the logbook').waitFor();
  });
});
