import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { writeBackupFile } from '../../../src/logbook/backup/backup-file';
import type { Entry } from '../../../src/logbook/entry';
import { newId } from '../../../src/logbook/ids/new-id';
import { NASTY_TEXTS } from '../../hostile/nasty';
import { launch, MOBILE } from '../browser';

const base = inject('baseUrl');
const LONGEST = 10_000;
let browser: Browser;
let context: BrowserContext;
let page: Page;
let problems: string[];

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser?.close());
afterEach(() => context?.close());

async function open(): Promise<void> {
  context = await browser.newContext({ ...MOBILE, viewport: { width: 360, height: 640 } });
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  problems = [];
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(message.text());
  });
  page.on('dialog', (dialog) => {
    problems.push(`a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  await page.goto(base);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

test('no markup is made of text, and no script or worker comes from elsewhere', async () => {
  await open();
  const refused = await page.evaluate(() => {
    const attempts: Record<string, () => unknown> = {
      markup: () => {
        document.body.innerHTML = '<b>x</b>';
      },
      worker: () => new Worker('https://example.invalid/x.js'),
      script: () => {
        document.createElement('script').src = 'https://example.invalid/x.js';
      },
      text: () => {
        document.createElement('script').text = 'globalThis.hacked = 1';
      },
      own: () => new Worker('/assets/none.js').terminate(),
    };
    return Object.entries(attempts).map(([name, attempt]) => {
      try {
        attempt();
        return `${name}: let in`;
      } catch (error) {
        return `${name}: ${(error as Error).name}`;
      }
    });
  });
  expect(refused).toEqual([
    'markup: TypeError',
    'worker: TypeError',
    'script: TypeError',
    'text: TypeError',
    'own: let in',
  ]);
});

test('the server says what the page cannot', async () => {
  context = await browser.newContext(MOBILE);
  const headers = (await context.request.get(base)).headers();
  expect(headers['permissions-policy']).toContain('geolocation=()');
  expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
  expect(headers['x-content-type-options']).toBe('nosniff');
});

test('names and notes with markup, directions, emoji and ten thousand letters are shown as text', async () => {
  const names = NASTY_TEXTS.filter(({ length }) => length <= LONGEST);
  const entries = names.map((name): Entry => {
    const at = new Date(Date.now() - 3_600_000).toISOString();
    return {
      id: newId(),
      v: 1,
      kind: 'piece-started',
      at,
      zone: 'Europe/Berlin',
      piece: newId(),
      name,
      base: 'sealed',
      note: name,
    };
  });
  const backup = await writeBackupFile({ entries, setAside: [] }, [], Date.now());
  await open();
  await page.goto(`${base}#/more`);
  const buffer = Buffer.from(await backup.arrayBuffer());
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name: 'backup.zip', mimeType: 'application/zip', buffer });
  await page.getByText(`${names.length} entries restored.`).waitFor();
  await page.goto(`${base}#/bench`);
  await page
    .locator('.piece-row')
    .nth(names.length - 1)
    .waitFor();
  const links = await page
    .locator('.piece-row > a:first-child')
    .evaluateAll((all) => all.map((a) => a.getAttribute('href')));
  expect(links).toHaveLength(names.length);
  for (const hash of ['#/bench', '#/lay', ...links, `${links[0]}/record`, `${links[0]}/change`]) {
    await page.goto(`${base}${hash}`);
    await page.locator('main h1').first().waitFor();
    const seen = await page.evaluate(() => ({
      isHacked: 'hacked' in globalThis,
      made: document.querySelectorAll('main script, main iframe, main img, main [onerror], main [onload]')
        .length,
      side: Math.max(0, document.documentElement.scrollWidth - document.documentElement.clientWidth),
      over: [...document.querySelectorAll('main *')]
        .filter(
          (one) =>
            one.getBoundingClientRect().right > document.documentElement.clientWidth + 1 &&
            !one.closest('svg, .heard'),
        )
        .map((one) => `${one.tagName}.${one.className}`)
        .slice(0, 3),
    }));
    expect(seen, `${hash}`).toEqual({ isHacked: false, made: 0, side: 0, over: [] });
  }
  await page.goto(`${base}#/bench`);
  const shown = (await page.locator('.piece-row').allInnerTexts()).join('\n');
  expect(shown).toContain('<script>globalThis.hacked=1</script>');
  expect(problems).toEqual([]);
});
