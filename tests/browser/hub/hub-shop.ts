import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { newPassword, writeCode } from '../../../src/hub/shop-code';
import { freePort, hashed, type Nats, startNats } from '../../hub/nats-server.mjs';
import { serveHub } from '../../hub/serve.mjs';
import { MOBILE } from '../browser';

// The built app and the real engine on one address, and screens that join as a person joins them.
export const password = newPassword();
const dir = mkdtempSync(join(tmpdir(), 'coatwait-hub-'));
const passwordHash = hashed(password);
let natsPort: number;
export let nats: Nats;
export let hub: Awaited<ReturnType<typeof serveHub>>;
/** Starts the engine again on what it kept. */
export const startEngine = async (): Promise<void> => {
  nats = await startNats({ dir, port: natsPort, passwordHash });
};

/** Serves the app again at the same address. */
export const startServer = async (): Promise<void> => {
  const port = hub ? Number(new URL(hub.address).port) : await freePort();
  hub = await serveHub({ port, natsPort });
};

beforeAll(async () => {
  natsPort = await freePort();
  await startEngine();
  await startServer();
});
afterAll(async () => {
  await hub?.close();
  await nats?.kill();
  rmSync(dir, { recursive: true, force: true, maxRetries: 20 });
});

const others: BrowserContext[] = [];
afterEach(async () => {
  for (const other of others.splice(0)) await other.close();
});

/** Another phone or tablet of the shop. */
export async function another(browser: Browser | null): Promise<Page> {
  if (!browser) throw new Error('There is no browser.');
  const other = await browser.newContext(MOBILE);
  others.push(other);
  return other.newPage();
}

export const button = (on: Page, name: string | RegExp) => on.getByRole('button', { name });
export const titleOf = (on: Page, name: string) => on.getByRole('heading', { level: 1, name }).waitFor();
const allOnHub = /^([\d,]+) of \1 entr(y is|ies are) on the hub/;
/** Waits until everything on this screen is on the hub. */
export const untilOnHub = async (on: Page): Promise<void> => {
  await on.goto(`${hub.address}#/more/hub`);
  await on.getByRole('main').getByText(allOnHub).waitFor({ timeout: 60_000 });
};

/** The first phone starts the shop; gives the code that it shows. */
export async function begin(on: Page, name: string): Promise<string> {
  await on.goto(`${hub.address}#/more/hub/${writeCode({ password, secret: undefined })}`);
  await on.getByRole('heading', { name: 'Start your shop on this hub' }).waitFor();
  await on.getByRole('textbox', { name: 'Name of this screen' }).fill(name);
  await button(on, 'Start the shop').click();
  await titleOf(on, 'Add a screen');
  return (await on.locator('.shop-code-signs').textContent()) ?? '';
}

/** Another screen joins with that code. */
export async function joinWith(on: Page, code: string, name: string): Promise<void> {
  await on.goto(`${hub.address}#/more/hub`);
  await on.getByRole('textbox', { name: 'Code or link' }).fill(code);
  await button(on, 'Continue').click();
  await on.getByRole('textbox', { name: 'Name of this screen' }).fill(name);
  await button(on, /^(Join|Merge and join)$/).click();
  await on.getByRole('main').getByText(allOnHub).waitFor({ timeout: 60_000 });
}

/** Takes a backup in. */
export async function restore(on: Page, backup: string): Promise<void> {
  await on.goto(`${hub.address}#/more`);
  await on
    .locator('input[type=file]')
    .setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer: Buffer.from(backup) });
  await on.getByText(/entr(y|ies) restored/).waitFor();
}

/** Starts a piece by touch. */
export async function startPiece(on: Page, name: string): Promise<void> {
  await on.goto(`${hub.address}#/piece/new`);
  await on.getByRole('textbox', { name: 'Name', exact: true }).fill(name);
  await on.getByRole('radio', { name: /^Sealed wood/ }).click();
  await button(on, 'Start this piece').click();
  await titleOf(on, name);
}
