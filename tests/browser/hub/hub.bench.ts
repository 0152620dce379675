import { loadavg } from 'node:os';
import type { Page } from 'playwright-core';
import { test } from 'vitest';
import { entrySubject } from '../../../src/hub/hub-link';
import { contentOf } from '../../../src/hub/message';
import { natsAt } from '../../../src/hub/nats';
import { seal, shopKey } from '../../../src/hub/seal';
import { newSecret, writeCode } from '../../../src/hub/shop-code';
import { say } from '../../bench/clock';
import { tenYears } from '../../bench/ten-years';
import '../../hub/a-hub'; // the web socket that Node lacks
import { launch } from '../browser';
import { crashShop } from '../crash-shop';
import { another, begin, button, hub, joinWith, password, restore, startPiece } from './hub-shop';

// Prints how long a coat takes from the tap on one phone to another's board, and what it costs a fresh phone to join ten years.
const COATS = Number(process.env['COATS'] ?? 10);
const ENTRIES = Number(process.env['ENTRIES'] ?? 50_000);
const LONGEST_MS = 1_800_000;
const SLOW_DOWN = 4;
const load = (): string => `load ${loadavg()[0]?.toFixed(1)} on this machine`;

/** Notes, in the page itself, when the words of a piece on the board change. */
const watchBoard = (on: Page, piece: string): Promise<void> =>
  on.evaluate((name) => {
    const seen = globalThis as unknown as { changedMs: number[] };
    seen.changedMs = [];
    const words = (): string =>
      [...document.querySelectorAll('.board > li')]
        .find(({ textContent }) => textContent?.includes(name))
        ?.textContent?.replace(/\d/g, '') ?? '';
    let before = words();
    new MutationObserver(() => {
      const after = words();
      if (after !== before) seen.changedMs.push(Date.now());
      before = after;
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  }, piece);

test('a coat on the wall', async () => {
  const browser = await launch();
  const phone = await another(browser);
  const code = await begin(phone, 'Booth phone');
  await restore(phone, (await crashShop()).backup);
  const tablet = await another(browser);
  await joinWith(tablet, code, 'Wall tablet');
  const took: number[] = [];
  for (let coat = 0; coat < COATS; coat++) {
    await startPiece(phone, `Box ${coat}`);
    const piece = new URL(phone.url()).hash;
    await tablet.goto(`${hub.address}#/board`);
    await tablet.getByRole('heading', { name: `Box ${coat}` }).waitFor();
    await phone.goto(`${hub.address}#/lay?piece=${piece.split('/').at(-1)}`);
    const caution = button(phone, 'Read and done');
    await button(phone, /^(Log it|Read and done)/)
      .first()
      .waitFor();
    if ((await caution.count()) > 0) await caution.first().click();
    await phone.getByText('How', { exact: true }).first().click();
    await phone.getByRole('textbox', { name: 'Wet film', exact: true }).fill('60');
    await watchBoard(tablet, `Box ${coat}`);
    const tappedMs = await phone.evaluate(() => {
      const log = [...document.querySelectorAll('button')].find((one) => one.textContent?.includes('Log it'));
      const now = Date.now();
      log?.click();
      return now;
    });
    await tablet.waitForFunction(
      (since) => (globalThis as unknown as { changedMs: number[] }).changedMs.some((ms) => ms > since),
      tappedMs,
    );
    const changed = await tablet.evaluate(() => (globalThis as unknown as { changedMs: number[] }).changedMs);
    took.push((changed.find((ms) => ms > tappedMs) ?? 0) - tappedMs);
    await phone.goto(`${hub.address}${piece}/change`);
    await phone.waitForTimeout(300);
  }
  const sorted = took.toSorted((one, other) => one - other);
  say(`a coat on the tablet after ms: ${took.join(', ')}; middle ${sorted[sorted.length >> 1]}, ${load()}`);
  await browser.close();
});

test(
  'ten years joined',
  async () => {
    const secret = newSecret();
    const shop = await shopKey(secret);
    const link = await natsAt(`${hub.address.replace('http', 'ws')}hub`)(
      { password, shop: shop.name },
      'hold',
    );
    const entries = tenYears(ENTRIES, Date.now() - 3_600_000);
    const all = entries.length;
    for (let first = 0; first < all; first += 256)
      await Promise.all(
        entries.slice(first, first + 256).map(async (entry) => {
          const subject = entrySubject(shop.name, entry.id);
          await link.put(subject, await seal(shop.key, subject, contentOf(entry)));
        }),
      );
    await link.close();
    say(`${all} entries are on the hub, ${load()}`);
    const browser = await launch();
    for (const [before, slowDown] of [SLOW_DOWN, 1].entries()) {
      const page = await another(browser);
      const devtools = await page.context().newCDPSession(page);
      await devtools.send('Performance.enable');
      await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowDown });
      await page.goto(`${hub.address}#/more/hub/${writeCode({ password, secret })}`);
      await page.getByRole('textbox', { name: 'Name of this screen' }).fill('Fresh phone');
      const startedMs = Date.now();
      await button(page, 'Join').click();
      let peak = 0;
      const count = (all + before + 1).toLocaleString('en'); // each phone that joins says its name
      const whole = page.getByText(`${count} of ${count} entries`);
      while ((await whole.count()) === 0) {
        const { metrics } = await devtools.send('Performance.getMetrics');
        peak = Math.max(peak, metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0);
        await page.waitForTimeout(250);
      }
      const tookMs = Date.now() - startedMs;
      await devtools.send('HeapProfiler.collectGarbage');
      const { metrics } = await devtools.send('Performance.getMetrics');
      const heap = metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0;
      say(
        `${all} entries joined, ${slowDown} times slower: ${(tookMs / 1000).toFixed(1)} s, memory at most ${(peak / 1e6).toFixed(0)} MB, afterwards ${(heap / 1e6).toFixed(0)} MB, ${load()}`,
      );
      await page.close();
    }
    await browser.close();
  },
  LONGEST_MS,
);
