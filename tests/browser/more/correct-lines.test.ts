import { expect, test } from 'vitest';
import { goTo, openApp, page } from '../app';
import { crashShop } from '../crash-shop';
import { bringIn } from '../fake-dialogs';
import { button, link, said, title } from '../on-screen';

// What was typed wrong of a line that is on no piece is put right by a later line.
const fill = (name: string | RegExp, text: string) =>
  page.getByRole('main').getByRole('textbox', { name }).fill(text);

test('a reading of the air that was typed wrong is corrected', async () => {
  await openApp();
  await goTo('#/air/read');
  await fill('Air temperature', '12');
  await fill(/^Humidity/, '55');
  await button('Log the reading').tap();
  await goTo('#/air/readings');
  await said(/12\s°C, 55\s%/).waitFor();
  await link(/^Correct: .*12\s°C/).tap();
  await title('Correct a reading');
  await fill('Temperature of the air', '200');
  await button('Save the correction').tap();
  await said(/60 °C/).waitFor(); // the range that the field takes
  await fill('Temperature of the air', '21');
  await button('Save the correction').tap();
  await title('Readings');
  await said(/21\s°C, 55\s%/).waitFor();
  expect(await page.getByText(/12\s°C, 55\s%/).count()).toBe(0);
  await page.reload();
  await said(/21\s°C, 55\s%/).waitFor();
});

test('a weight of a jar that was typed wrong is corrected', async () => {
  await openApp();
  await goTo('#/mix/jar/new');
  await fill('Name of the jar', 'Clear gloss');
  await button('Fill the jar').tap();
  await title('Clear gloss');
  await page.getByText('Weigh it', { exact: true }).tap();
  await fill('It weighs, without the jar', '4200');
  await page.locator('details[open]').getByRole('button', { name: 'Log it' }).tap();
  await said(/4.?200 g/).waitFor();
  await link('Correct a weight').tap();
  await title('Correct a weight');
  await fill('It weighed, without the jar', '420');
  await button('Save the correction').tap();
  await title('Clear gloss');
  await said(/\b420 g/).waitFor();
  expect(await page.getByText(/4.?200 g/).count()).toBe(0);
});

test('a pour that was typed wrong is corrected, and what is still to pour follows', async () => {
  await openApp();
  const { backup, weighUp } = await crashShop();
  await bringIn(Buffer.from(backup), 'backup.json');
  await goTo(`#/mix/weigh/${weighUp}`);
  await fill('The scale shows now', '100');
  await button('Log what was poured').tap();
  await said(/^Tint logged|so far: 100(\.0+)? g/).waitFor();
  await link(/^Correct: .*100/).tap();
  await title('Correct a pour');
  await fill('The scale showed', '1000');
  await button('Save the correction').tap();
  await title('Mix');
  await said(/so far: 1.?000(\.0+)? g/).waitFor();
  expect(await page.getByText(/^Undo the last pour/).count()).toBe(1);
  await page.reload();
  await said(/so far: 1.?000(\.0+)? g/).waitFor();
});
