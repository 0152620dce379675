import { expect, test } from 'vitest';
import { openApp, page } from '../app';
import { type AForm, FORMS } from './forms';
import { drawn, enterDemo, openFolds, openForm, SMALL_PHONE } from './walk-forms';

// A slow phone draws late: two fields may be filled, or a unit chosen and its number typed, before either is drawn.

type Field = HTMLInputElement | HTMLSelectElement;

/** Gives every field of the page another value in one task; how many there are. */
const fillAtOnce = (): Promise<number> =>
  page.evaluate(() => {
    const tell = (field: Element, what: string) => field.dispatchEvent(new Event(what, { bubbles: true }));
    const another = (field: Field): string => {
      if (field instanceof HTMLSelectElement)
        return (
          [...field.options].findLast((one) => !one.disabled && one.value !== field.value)?.value ??
          field.value
        );
      if (field.type === 'time') return field.value === '09:30' ? '10:30' : '09:30';
      if (field.type !== 'text' && field.type !== 'textarea') return field.value;
      if (field.enterKeyHint !== 'next') return field.value === 'Box' ? 'Lid' : 'Box';
      return field.value === ''
        ? '2'
        : field.value.replace(/[1-8](?=\D*$)/, (digit) => String(Number(digit) + 1));
    };
    const units = [...document.querySelectorAll<HTMLInputElement>('main .units input')];
    const lastUnits = units.filter((one) => units.findLast(({ name }) => name === one.name) === one);
    const fields = [
      ...document.querySelectorAll<Field>(
        'main :is(input:not([type=file], [type=radio], [type=checkbox]), textarea, select)',
      ),
    ].filter((one) => one.checkVisibility() && !one.disabled);
    for (const field of fields) {
      field.value = another(field);
      field.dataset['put'] = field.value;
      tell(field, 'input');
      tell(field, 'change');
    }
    for (const unit of lastUnits) {
      unit.click();
      unit.dataset['put'] = 'on';
    }
    return fields.length + lastUnits.length;
  });

/** Types a number with the first of its units behind it into every field that has units, each left again; how many there are. */
async function typeUnits(): Promise<number> {
  const fields = page.locator('main .field:has(.units) input[type=text]:visible');
  for (const field of await fields.all()) {
    const first = field.locator('xpath=..').locator('.units label').first(); // the last one is chosen
    await field.fill(`2 ${await first.textContent()}`);
    await field.blur();
    await first.locator('input').evaluate((one) => one.setAttribute('data-put', 'on'));
    await field.evaluate((one) => one.setAttribute('data-put', '2'));
  }
  return fields.count();
}

/** The fields that are still there and show something else than was put in. */
const forgotten = (): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLInputElement>('[data-put]')].flatMap((field) => {
      const shows = field.type === 'radio' ? (field.checked ? 'on' : 'off') : field.value;
      const name = field.getAttribute('aria-label') ?? field.labels?.[0]?.textContent;
      return shows === field.dataset['put'] ? [] : [`${name}: ${field.dataset['put']} became ${shows}`];
    }),
  );

async function fillOne(form: AForm): Promise<string> {
  if (!(await openForm(form))) return `${form.file}: NOT FOUND`;
  await openFolds();
  await drawn();
  const fields = await fillAtOnce();
  await drawn();
  const lost = await forgotten();
  await page.evaluate(() => {
    for (const one of document.querySelectorAll<HTMLElement>('[data-put]')) delete one.dataset['put'];
  });
  const withUnits = await typeUnits();
  await drawn();
  lost.push(...(await forgotten()));
  return `${form.file}: ${fields} fields, ${withUnits} with units${lost.map((one) => `\n  LOST ${one}`).join('')}`;
}

test('fields that are filled before any of them is drawn keep what was put in, and a unit typed behind a number is chosen', {
  timeout: 300_000,
}, async () => {
  await openApp(SMALL_PHONE);
  await enterDemo();
  page.setDefaultTimeout(8_000);
  const lines: string[] = [];
  for (const form of FORMS.filter(({ isOwn }) => !isOwn))
    lines.push(
      await fillOne(form).catch((error) => `${form.file}: NOT FILLED, ${String(error).slice(0, 400)}`),
    );
  console.log(lines.join('\n'));
  expect(lines.filter((line) => /NOT|LOST/.test(line))).toEqual([]);
});
