import { expect, test } from 'vitest';
import { here, openApp, page } from '../app';
import { type AForm, FORMS } from './forms';
import { drawn, enterDemo, fieldsOf, openForm, SMALL_PHONE, set, walked } from './walk-forms';

/** It finds a jar, or says that its one field is wrong: it sends nobody elsewhere. */
const REFUSES_ITS_FIELD = 'mix/find/find-jar.tsx';

/** Rows that are typed into as well. */
const LONGER: Readonly<Record<string, string>> = {
  'match/reading/read-page.tsx': 'Another reading',
  'mix/recipe/edit-recipe.tsx': 'Another ingredient',
};

/** The link that a refusal shows: to another page, which leads back here. */
const refuse = (): Promise<void> =>
  page.evaluate(() => {
    const way = document.createElement('a');
    way.href = `#/air?back=${encodeURIComponent(location.hash)}`;
    way.textContent = 'Put it right';
    way.style.display = 'block';
    document.querySelector('main .page-body')?.prepend(way);
  });

/** What stands in every field of the page, in its order. */
const standing = (): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLInputElement>('main :is(input, textarea, select)')].map((one) =>
      /radio|checkbox/.test(one.type) ? `${one.type} ${one.checked}` : `${one.type} ${one.value}`,
    ),
  );

/** Another value than the form begins with, of the same kind. */
const other = (value: string, isNumber: boolean): string =>
  isNumber
    ? value.replace(/[1-8](?=\D*$)/, (digit) => String(Number(digit) + 1))
    : value === ''
      ? 'Box'
      : `${value} too`;

/** Types into a form, is sent away by its refusal, comes back: what differs then. */
async function leave(form: AForm): Promise<string> {
  const { file, send, filled = [], answered = [] } = form;
  const longer = LONGER[file];
  if (!(await openForm(longer ? { ...form, taps: [longer] } : form))) return `${file}: NOT FOUND`;
  for (const name of answered)
    await page.getByRole('group', { name }).getByRole('radio').last().check({ force: true });
  for (const { i, name, isNumber } of await fieldsOf(send)) {
    const field = walked(i);
    const isText = await field.evaluate((one) => one.matches('textarea, input[type=text]'));
    if (!isText || !(await field.isVisible())) continue;
    const value = await field.inputValue();
    if (filled.includes(name) || value !== '') await set(other(value, isNumber), i, send);
  }
  await refuse();
  const from = here();
  await drawn();
  const typed = await standing();
  await page.getByText('Put it right').tap();
  await page.locator('.page-back[href^="#"]').waitFor();
  await expect.poll(here).not.toBe(from);
  await page.locator('.page-back').tap();
  await expect.poll(here).toBe(from);
  await expect.poll(standing, { timeout: 20_000 }).toEqual(typed);
  return `${file}: ${typed.length} fields`;
}

test('a form that is left by its refusal’s link, and come back to, has all that was typed in it', {
  timeout: 300_000,
}, async () => {
  await openApp(SMALL_PHONE);
  await enterDemo();
  page.setDefaultTimeout(8_000);
  const lines: string[] = [];
  for (const form of FORMS.filter(({ file, isOwn }) => !isOwn && file !== REFUSES_ITS_FIELD))
    lines.push(
      await leave(form).catch((error) => `${form.file}: NOT AS IT WAS, ${String(error).slice(0, 400)}`),
    );
  console.log(lines.join('\n'));
  expect(lines.filter((line) => line.includes('NOT'))).toEqual([]);
});
