import { type Browser, chromium, type Locator } from 'playwright-core';

export const MOBILE = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
} as const;

export const CHROMIUM = {
  executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
  headless: true,
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};

/** Starts the Chromium that the tests drive. */
export async function launch(): Promise<Browser> {
  const browser = await chromium.launch(CHROMIUM);
  await tapAsPeopleDo(browser);
  return browser;
}

/** A little more than the app takes for one tap that falls twice (`src/parts/frame/one-tap.ts`), ms. */
const NEXT_TAP_MS = 320;
let tappedAtMs = 0;
let isSlowed = false;

/** What is looked for and tapped by a test is tapped no sooner after the last than a person would. */
async function tapAsPeopleDo(browser: Browser): Promise<void> {
  if (isSlowed) return;
  isSlowed = true;
  const page = await browser.newPage();
  const locator: Locator = Object.getPrototypeOf(page.locator('body'));
  await page.close();
  for (const how of ['tap', 'click', 'check', 'uncheck'] as const) {
    const at = locator[how];
    locator[how] = async function later(this: Locator, options?: object) {
      const restMs = tappedAtMs + NEXT_TAP_MS - Date.now();
      if (restMs > 0) await new Promise((done) => setTimeout(done, restMs));
      await at.call(this, options);
      tappedAtMs = Date.now();
    };
  }
}
