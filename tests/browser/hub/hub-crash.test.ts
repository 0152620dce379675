import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { crashShop } from '../crash-shop';
import { type Killable, newProfile, startKillable } from '../killable';
import { closeLine, logging, marksIn, rows, startPiece, typedAs, untilSaid } from '../logging';
import { begin, hub, joinWith, nats, restore, startEngine, untilOnHub } from './hub-shop';

// Phones are Chromiums of their own, joined to the real engine, that die while they log; so does the engine. `npm run kills:phones` for a
// long run: `PHONE_KILLS` of them and half as many of the engine.
const KILLS = Number(process.env['PHONE_KILLS'] ?? 2);
const LONGEST_LIFE_MS = 2_500;
const NAMES = ['Booth phone', 'Office'];

interface PhoneHere {
  readonly profile: ReturnType<typeof newProfile>;
  browser: Killable;
}
const phones: PhoneHere[] = [];
const confirmed = new Set<string>();
const asked = new Set<string>();
let marks = 0;

async function pageOf({ browser }: PhoneHere): Promise<Page> {
  const page = await browser.context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(hub.address, { waitUntil: 'domcontentloaded' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  return page;
}

beforeAll(async () => {
  for (const _ of NAMES) {
    const profile = newProfile();
    phones.push({ profile, browser: await startKillable(profile.folder) });
  }
}, 60_000);
afterAll(async () => {
  for (const { browser, profile } of phones) {
    await browser.kill();
    profile.remove();
  }
});

/** Logs readings of the air and coats until the phone is gone. */
async function work(page: Page): Promise<void> {
  for (;;) {
    const what = Math.random() < 0.5 ? 'air' : 'coat';
    const mark = (++marks / 1000).toFixed(3);
    asked.add(`${what} ${typedAs(what, mark)}`);
    await logging('', hub.address)[what](page, mark);
    await untilSaid(page, what);
    confirmed.add(`${what} ${typedAs(what, mark)}`);
    await closeLine(page);
  }
}

test(
  `${NAMES.length} phones that are killed ${KILLS} times and a hub that is killed meanwhile lose no confirmed entry, double none, and end equal`,
  async () => {
    const [first, second] = (await Promise.all(phones.map(pageOf))) as [Page, Page];
    const code = await begin(first, 'Booth phone');
    await restore(first, (await crashShop()).backup);
    await startPiece(first, 'Walnut box', hub.address);
    await joinWith(second, code, 'Office');
    await Promise.all([first.close(), second.close()]);
    for (let kill = 0; kill < KILLS; kill++) {
      const pages = await Promise.all(phones.map(pageOf));
      const working = pages.map((page) => work(page).catch((error: unknown) => String(error)));
      await new Promise((resolve) => setTimeout(resolve, 500 + Math.random() * LONGEST_LIFE_MS));
      if (kill % 2 === 0) {
        await nats.kill();
        await startEngine();
      }
      const which = phones[kill % phones.length] as PhoneHere;
      await which.browser.kill();
      await Promise.all(pages.map((page) => page.close().catch(() => undefined)));
      for (const end of await Promise.all(working))
        expect(end).toMatch(/closed|crashed|disconnected|detached/i);
      which.browser = await startKillable(which.profile.folder);
    }
    const pages = (await Promise.all(phones.map(pageOf))) as [Page, Page];
    for (const page of pages) await untilOnHub(page);
    await expect
      .poll(
        async () => new Set((await Promise.all(pages.map(rows))).map((kept) => JSON.stringify(kept))).size,
        {
          timeout: 60_000,
        },
      )
      .toBe(1);
    const kept = marksIn(await rows(pages[0]));
    expect(kept.length, 'an entry is there twice').toBe(new Set(kept).size);
    expect(kept.filter((mark) => !asked.has(mark))).toEqual([]);
    expect([...confirmed].filter((mark) => !kept.includes(mark))).toEqual([]);
    expect(confirmed.size).toBeGreaterThan(0);
    console.log(
      `phones at a hub: ${KILLS} kills, ${confirmed.size} entries confirmed, 0 lost, 0 doubled, equal`,
    );
  },
  120_000 + KILLS * 30_000,
);
