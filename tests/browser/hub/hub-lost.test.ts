import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, expect, test } from 'vitest';
import { freePort } from '../../hub/nats-server.mjs';
import { context, takePhone } from '../app';
import { MOBILE } from '../browser';
import { rows } from '../logging';

// A lost phone, from the command on the hub's computer to the phones that join again: the very hub that `npm run hub` starts.
const folder = mkdtempSync(join(tmpdir(), 'coatwait-lost-'));
const running: ChildProcess[] = [];
const phones: BrowserContext[] = [];
afterAll(async () => {
  for (const one of running) {
    if (one.exitCode === null) await new Promise((done) => one.once('exit', done).kill('SIGTERM'));
  }
  for (const phone of phones) await phone.close();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

/** Runs the command of the hub; gives the link that it shows. */
function hubCommand(port: number, ...more: string[]): Promise<string> {
  const args = ['tests/hub/run.mjs', '--data', folder, '--port', String(port), ...more];
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  running.push(child);
  return new Promise((resolve, reject) => {
    let said = '';
    child.stdout.on('data', (text) => {
      said += text;
      const link = /first phone: (\S+)/.exec(said)?.[1];
      if (link && /is at http|takes the new sign-in/.test(said)) resolve(link);
    });
    child.once('exit', (code) => reject(new Error(`The hub ended with ${code}: ${said}`)));
  });
}

async function aPhone(): Promise<Page> {
  const phone = await context.browser()?.newContext(MOBILE);
  if (!phone) throw new Error('There is no browser.');
  phones.push(phone);
  return phone.newPage();
}

const main = (on: Page) => on.getByRole('main');
/** Says yes to what a code leads to; gives the title of the page after. */
async function takeCode(on: Page, code: string, act: RegExp): Promise<void> {
  await main(on).getByRole('textbox', { name: 'Code or link' }).fill(code);
  await main(on).getByRole('button', { name: 'Continue' }).tap();
  await main(on).getByRole('button', { name: act }).tap();
}
const codeOn = async (on: Page): Promise<string> => {
  await on.getByRole('heading', { level: 1, name: 'Add a screen' }).waitFor();
  return (await on.locator('.shop-code-signs').textContent()) ?? '';
};
const all = /^([\d,]+) of \1 entr(y is|ies are) on the hub/;
async function startPiece(on: Page, address: string, name: string): Promise<void> {
  await on.goto(`${address}#/piece/new`);
  await main(on).getByRole('textbox', { name: 'Name', exact: true }).fill(name);
  await main(on).getByRole('button', { name: 'Start this piece' }).tap();
  await on.getByRole('heading', { level: 1, name }).waitFor();
}
const knows = async (on: Page, name: string): Promise<boolean> =>
  JSON.stringify(await rows(on)).includes(name);

test('a phone that was lost is shut out, gets nothing that is logged later, and the others go on under a new key', async () => {
  await takePhone();
  const port = await freePort();
  const address = `http://localhost:${port}/`;
  const link = await hubCommand(port);
  const [kept, lost, other] = [await aPhone(), await aPhone(), await aPhone()];

  await kept.goto(link);
  await main(kept).getByRole('button', { name: 'Start the shop' }).tap();
  const oldCode = await codeOn(kept);
  await startPiece(kept, address, 'Walnut box');
  for (const phone of [lost, other]) {
    await phone.goto(`${address}#/more/hub`);
    await takeCode(phone, oldCode, /^Join$/);
    await main(phone).getByText(all).waitFor();
    await expect.poll(() => knows(phone, 'Walnut box')).toBe(true);
  }

  // Step one, on the hub's computer. Everyone is shut out.
  const newLink = await hubCommand(port, '--new-sign-in');
  expect(newLink).not.toBe(link);
  const shutOut =
    'The hub does not know this sign-in. If it was given a new one, join again with the new code.';
  for (const phone of [lost, other]) await main(phone).getByText(shutOut).waitFor({ timeout: 60_000 });

  // Step two, by the page that says so.
  await kept.goto(`${address}#/more/hub`);
  await main(kept).getByRole('link', { name: 'A phone was lost' }).tap();
  await main(kept).getByText('npm run hub -- --new-sign-in').waitFor();
  await takeCode(kept, newLink, /^Start the shop$/);
  const newCode = await codeOn(kept);
  expect(newCode).not.toBe(oldCode);
  await startPiece(kept, address, 'Oak tray');
  await kept.goto(`${address}#/more/hub`);
  await main(kept).getByText(all).waitFor({ timeout: 60_000 });

  // The other phone joins again, and has everything, once.
  await main(other).getByRole('link', { name: 'Enter another code' }).tap();
  await takeCode(other, newCode, /^Merge and join$/);
  await expect
    .poll(async () => JSON.stringify(await rows(other)) === JSON.stringify(await rows(kept)), {
      timeout: 60_000,
    })
    .toBe(true);
  expect(await knows(other, 'Oak tray')).toBe(true);

  // Whoever found the lost one sees what it held, and no more; nor does the old code let anyone in.
  await lost.reload();
  await main(lost).getByText(shutOut).waitFor({ timeout: 60_000 });
  expect([await knows(lost, 'Walnut box'), await knows(lost, 'Oak tray')]).toEqual([true, false]);
  await main(lost).getByRole('link', { name: 'Enter another code' }).tap();
  await main(lost).getByRole('textbox', { name: 'Code or link' }).fill(oldCode);
  await main(lost).getByRole('button', { name: 'Continue' }).tap();
  await main(lost).getByText(shutOut).waitFor();
});
