import { expect, test } from 'vitest';
import { goTo, here, openApp, page } from './app';
import { button, choose, field, title } from './on-screen';

/** Each form as it is opened, and the button that sends it with nothing filled in. */
const FORMS: readonly (readonly [name: string, hash: (piece: string) => string, send: string])[] = [
  ['start a piece', () => '#/piece/new', 'Start this piece'],
  ['log a check', (piece) => `#/piece/${piece}/check`, 'Log it'],
  ['make a plan', (piece) => `#/plan/${piece}`, 'Make the plan'],
  ['start a match', () => '#/match/new', 'Start the match'],
  ['a new ingredient', () => '#/mix/ingredient/new', 'Save'],
  ['read the air', () => '#/air/read', 'Log the reading'],
];

/** Whether what has the focus, or the first problem, can be seen between the head and the bar at the foot. */
const seen = () =>
  page.evaluate(() => {
    const wrong = document.querySelector('main [aria-invalid="true"], main .problem:not(:empty)');
    if (!wrong) return 'nothing is marked';
    const { left, top, height } = wrong.getBoundingClientRect();
    const hit = document.elementFromPoint(left + 4, top + height / 2);
    return hit && (wrong.contains(hit) || hit.contains(wrong)) ? 'seen' : 'covered';
  });

test('a form sent empty leads to the field that is missing, in sight on a small phone', async () => {
  await openApp({ viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true });
  await goTo('#/piece/new');
  await field('Name').fill('Box');
  await choose(/^Bare wood/);
  await button('Start this piece').tap();
  await title('Box');
  const piece = here().split('/')[2] ?? '';
  const led: Record<string, string> = {};
  for (const [name, hash, send] of FORMS) {
    await goTo(hash(piece));
    await button(send).last().tap();
    await page.waitForTimeout(300);
    led[name] = await seen();
  }
  expect(led).toEqual(Object.fromEntries(FORMS.map(([name]) => [name, 'seen'])));
}, 60_000);

test('bare wood with open pores starts with filler and its days', async () => {
  await openApp();
  await goTo('#/piece/new');
  await field('Name').fill('Oak tray');
  await choose(/^Bare wood/);
  await button('Start this piece').tap();
  await title('Oak tray');
  await goTo(`#/plan/${here().split('/')[2]}`);
  await choose(/^Open/);
  await choose(/^Thin clear|^Full clear/);
  await button('Make the plan').tap();
  await page.getByText('Plan made.').waitFor();
  const dries = page.getByRole('listitem').filter({ hasText: 'Pore filler dries' });
  await dries.getByText('2 days (24 h–3 days), usual; the sheet governs').waitFor();
  await page.getByText('Grain sealer').first().waitFor();
});
