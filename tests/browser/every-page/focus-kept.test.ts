import { expect, test } from 'vitest';
import { goTo, page } from '../app';
import { button, firstLink } from '../on-screen';
import { openDemo } from './each-screen';

const focused = (): Promise<string> =>
  page.evaluate(() => `${document.activeElement?.tagName} ${document.activeElement?.textContent?.trim()}`);

/** The phone's storage takes so long over everything that is put into it, ms. */
const slowStorage = (ms: number): Promise<void> =>
  page.evaluate((takesMs) => {
    IDBTransaction.prototype.commit = () => undefined; // it ends by itself, when all is done
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function slowly(...said) {
      const untilMs = performance.now() + takesMs;
      const wait = (): void => {
        if (performance.now() < untilMs) this.get('nothing').onsuccess = wait;
      };
      wait();
      return put.apply(this, said);
    };
  }, ms);

test('the button that sends a form keeps the focus, however long the phone stores', async () => {
  await openDemo();
  await slowStorage(500);
  for (const [hash, words, done] of [
    ['#/plan/hours', 'Save the week', 'Working hours saved.'],
    ['#/plan/reminders', 'Save', 'Saved.'],
  ] as const) {
    await goTo(hash);
    await page.locator('main details').evaluateAll((all) => {
      for (const one of all as HTMLDetailsElement[]) one.open = true;
    });
    const quiet = page.getByRole('checkbox', { name: 'Quiet hours on' });
    if (hash.endsWith('reminders') && !(await quiet.isChecked())) await quiet.tap();
    await button(words).last().focus();
    await page.keyboard.press('Enter');
    await page.locator('.toast').getByText(done).waitFor();
    await page.waitForTimeout(100);
    expect(await focused()).toBe(`BUTTON ${words}`);
  }
});

test('a form that is drawn anew once it is sent keeps the focus on its button', async () => {
  await openDemo();
  await goTo('#/bench');
  await goTo(`${await firstLink(/^#\/piece\/[^/?]+$/)}/old`);
  await page.getByRole('group', { name: 'What happened' }).getByRole('radio').first().check();
  await button('Log the drop').focus();
  await page.keyboard.press('Enter');
  await page.locator('.toast').getByText('Drop logged.').waitFor();
  await expect.poll(focused).toBe('BUTTON Log the drop');
  await goTo('#/plan');
  await goTo(await firstLink(/^#\/plan\/[0-9a-f-]{36}$/));
  await page.locator('.step-open > summary').first().tap();
  await button('Save').first().focus();
  await page.keyboard.press('Enter');
  await page
    .locator('.toast')
    .getByText(/changed\.$/)
    .waitFor();
  await page.waitForTimeout(300);
  expect(await focused()).toBe('BUTTON Save');
});
