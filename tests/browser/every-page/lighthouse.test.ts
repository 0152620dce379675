import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { OutsideJudge } from '../outside-judge';

const base = inject('baseUrl');
let outside: OutsideJudge;

beforeAll(async () => {
  outside = await OutsideJudge.call();
});
afterAll(() => outside?.leave());

async function enterDemo(): Promise<string> {
  const page = await outside.context.newPage();
  await page.goto(base);
  await page
    .getByRole('button', { name: /demo shop/ })
    .first()
    .click();
  await page.locator('.piece-row .wait-bar').first().waitFor();
  const piece = await page.locator('a[href^="#/piece/"]').first().getAttribute('href');
  await page.close();
  return piece ?? '';
}

test('the bench, a piece and Mix have no fault in access or good practice', async () => {
  for (const hash of ['#/bench', await enterDemo(), '#/mix']) {
    const { scores, faults } = await outside.judge(`${base}${hash}`, ['accessibility', 'best-practices']);
    expect(faults, hash).toEqual([]);
    expect(scores, hash).toEqual({ accessibility: 100, 'best-practices': 100 });
  }
}, 240_000);
