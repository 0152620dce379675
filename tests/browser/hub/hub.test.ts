import { expect, test } from 'vitest';
import { BROKEN_CLOSE, base, context, openApp, page, takePhone } from '../app';
import { crashShop } from '../crash-shop';
import { rows } from '../logging';
import { another, begin, button, hub, joinWith, nats, restore, startEngine, startPiece } from './hub-shop';

test('two screens become one shop, and a coat logged on one shows on the other', async () => {
  await takePhone();
  const phone = await another(context.browser());
  const sockets: string[] = [];
  const wrong: string[] = [];
  phone.on('websocket', (socket) => sockets.push(socket.url()));
  phone.on('pageerror', (error) => wrong.push(error.message));
  phone.on('console', (message) => {
    if (message.type() === 'error') wrong.push(message.text());
  });
  const code = await begin(phone, 'Booth phone');
  expect(sockets.every((url) => url === hub.address.replace('http', 'ws').concat('hub'))).toBe(true);
  await restore(phone, (await crashShop()).backup);
  await startPiece(phone, 'Walnut box');

  const tablet = await another(context.browser());
  await joinWith(tablet, code, 'Wall tablet');
  await expect
    .poll(async () => JSON.stringify(await rows(phone)) === JSON.stringify(await rows(tablet)))
    .toBe(true);
  await tablet.goto(`${hub.address}#/board`);
  await tablet.getByRole('heading', { name: 'Walnut box' }).waitFor();

  await phone.goto(`${hub.address}#/lay`);
  await phone
    .getByRole('button', { name: /^(Log it|Read and done)/ })
    .first()
    .waitFor();
  const cautions = button(phone, 'Read and done');
  if ((await cautions.count()) > 0) await cautions.first().tap();
  await phone.getByText('How', { exact: true }).first().tap();
  await phone.getByRole('textbox', { name: 'Wet film', exact: true }).fill('60');
  const before = (await rows(tablet)).length;
  await button(phone, 'Log it').tap();
  const loggedMs = Date.now();
  await expect.poll(async () => (await rows(tablet)).length, { interval: 20 }).toBeGreaterThan(before);
  await tablet
    .locator('.board-state')
    .getByText(/Wait|Wet|wet/)
    .first()
    .waitFor();
  const tookMs = Date.now() - loggedMs;
  expect(wrong.filter((text) => !text.includes(BROKEN_CLOSE))).toEqual([]);
  console.log(`a coat was on the tablet ${tookMs} ms after the tap`);
});

test('a board whose hub has died says so, and catches up once it is back', async () => {
  await takePhone();
  const phone = await another(context.browser());
  const code = await begin(phone, 'Booth phone');
  const tablet = await another(context.browser());
  await joinWith(tablet, code, 'Wall tablet');
  await tablet.goto(`${hub.address}#/board`);
  await nats.kill();
  await tablet.getByText(/^Not up to date: the hub was last reached/).waitFor();
  await startPiece(phone, 'Oak tray');
  await startEngine();
  await tablet.getByRole('heading', { name: 'Oak tray' }).waitFor({ timeout: 40_000 });
  await tablet.getByText(/^Not up to date/).waitFor({ state: 'detached' });
});

test('nothing leaves a phone that has not joined, and what speaks with a hub is not fetched', async () => {
  await openApp();
  const asked: string[] = [];
  page.on('websocket', (socket) => asked.push(socket.url()));
  page.on('request', (request) => asked.push(request.url()));
  for (const hash of ['#/bench', '#/more', '#/more/hub', '#/board']) {
    await page.goto(`${base}${hash}`);
    await page.getByRole('heading', { level: 1 }).waitFor();
  }
  await page.waitForLoadState('networkidle');
  expect(asked.filter((url) => /at-the-hub|\/hub$|^wss?:/.test(url))).toEqual([]);
  expect(asked.every((url) => url.startsWith(base))).toBe(true);
});
