import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { goTo, here, openApp, page } from '../app';
import { button, choose, field, title } from '../on-screen';
import { type AForm, FORMS } from './forms';
import { NO_FIELDS, OTHERS } from './forms-elsewhere';
import { enterDemo, fieldsOf, openFolds, openForm, SMALL_PHONE, set, walked } from './walk-forms';

/** What the form said no to, and where the reader is put: on a field in sight, or elsewhere. */
const led = () =>
  page.evaluate(() => {
    const field = document.activeElement as HTMLInputElement | null;
    if (!field?.matches('main :is(input, select, textarea)')) return 'no field';
    const { left, top, height } = field.getBoundingClientRect();
    const hit = document.elementFromPoint(left + 4, top + height / 2);
    const isSeen = hit && (field.contains(hit) || field.closest('label')?.contains(hit));
    const name =
      field.type === 'radio'
        ? field.closest('fieldset')?.querySelector('legend')?.textContent
        : (field.getAttribute('aria-label') ?? field.labels?.[0]?.textContent);
    return isSeen ? `${name}` : `${name}, covered`;
  });

/** Everything that one form refuses, with the field it leads to. */
async function walk(form: AForm): Promise<string[]> {
  const { file, send, filled = [], answered = [] } = form;
  if (!(await openForm(form))) return [`${file}: NOT FOUND`];
  const lines: string[] = [];
  const isLed = async (name: string, why: string): Promise<void> => {
    await page.evaluate(() => (document.activeElement as HTMLElement).blur()); // led there by the form, not left there
    await walked('send').tap();
    // It leads there once it is drawn, and a busy machine draws late.
    await expect
      .poll(led, { timeout: 20_000 })
      .toBe(name)
      .catch(() => undefined);
    const to = await led();
    lines.push(`${file}: ${name} ${why} -> ${to === name ? 'it' : `NOT IT BUT ${to}`}`);
  };
  for (const name of filled) {
    const field = walked((await fieldsOf(send)).find((one) => one.name === name)?.i);
    const was = await field.inputValue();
    await field.fill('');
    await isLed(name, 'empty');
    await field.fill(was === '' && (await field.getAttribute('type')) === 'text' ? 'Box' : was);
  }
  await fieldsOf(send);
  for (const name of answered) {
    await isLed(name, 'unanswered');
    await page.getByRole('group', { name }).getByRole('radio').first().check({ force: true });
  }
  for (const { i, name } of (await fieldsOf(send)).filter(({ isNumber }) => isNumber)) {
    await fieldsOf(send);
    if (!(await walked(i).isVisible())) continue; // it stands only with another answer
    const was = await walked(i).inputValue();
    await set('x', i, send);
    await isLed(name, 'no number');
    await set('1,000', i, send);
    const asks = page.locator('main fieldset.either');
    const isAsked = await asks.waitFor({ timeout: 20_000 }).then(
      () => true,
      () => false,
    );
    lines.push(`${file}: ${name} of 1,000 -> ${isAsked ? 'asks' : 'DOES NOT ASK'}`);
    await set(was, i, send);
  }
  return lines.length > 0 ? lines : [`${file}: NOT ONE FIELD`];
}

test('every form of the app stands in the list', () => {
  const files = ['screens', 'parts'].flatMap((folder) =>
    readdirSync(`src/${folder}`, { recursive: true, encoding: 'utf8' })
      .filter(
        (file) =>
          /\.tsx?$/.test(file) && /<form\b|= useForm\(\)/.test(readFileSync(`src/${folder}/${file}`, 'utf8')),
      )
      .map((file) => (folder === 'parts' ? `parts/${file}` : file)),
  );
  expect(files.toSorted()).toEqual(
    [...new Set(FORMS.map(({ file }) => file)), ...Object.keys(OTHERS), ...NO_FIELDS].toSorted(),
  );
});

test('whatever a form refuses it leads to the field, in sight on a small phone', {
  timeout: 300_000,
}, async () => {
  await openApp(SMALL_PHONE);
  const lines: string[] = [];
  const walkAll = async (forms: readonly AForm[]): Promise<void> => {
    for (const form of forms)
      lines.push(...(await walk(form).catch((error) => [`${form.file}: NOT WALKED, ${error}`])));
  };
  await walkAll(FORMS.filter(({ isOwn }) => isOwn));
  await enterDemo();
  page.setDefaultTimeout(12_000);
  await walkAll(FORMS.filter(({ isOwn }) => !isOwn));
  console.log(lines.join('\n'));
  expect(lines.filter((line) => line.includes('NOT'))).toEqual([]);
});

test('what a tap outside a form is refused for leads there in one tap, and back', async () => {
  await openApp();
  await goTo('#/piece/new');
  await field('Name').fill('Box');
  await button('Start this piece').tap();
  await title('Box');
  const piece = here();
  await goTo(`${piece}/check`);
  await choose('Leaves a print');
  await button('Log it').tap();
  await title('Box');
  await goTo('#/bench'); // what the toast covers is free again
  await goTo(piece, 'Box');
  await openFolds();
  await page.locator('.history li').last().locator('button.undo').tap();
  await page.locator('.toast').getByText('Later work depends on this entry.').waitFor();
  await page.locator('.toast').getByRole('link', { name: 'To the bench' }).tap();
  await title('Bench');
  await page.locator('.page-back').tap();
  await expect.poll(here).toBe(piece);
});
