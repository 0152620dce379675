import { type Browser, chromium } from 'playwright-core';

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

/** Starts the Chromium that the tests drive, with so many arguments more. */
export async function launch(...args: readonly string[]): Promise<Browser> {
  const browser = await chromium.launch({ ...CHROMIUM, args: [...CHROMIUM.args, ...args] });
  const { newContext } = browser;
  browser.newContext = async (options) => {
    const context = await newContext.call(browser, options);
    await context.addInitScript(tapFasterThanHands);
    return context;
  };
  return browser;
}

/** A test taps sooner than any hand: by a key between its taps the app knows them apart (`src/parts/frame/one-tap.ts`). */
function tapFasterThanHands(): void {
  const key = new KeyboardEvent('keydown', { key: 'Shift' });
  const hands = globalThis as { isTappedByHand?: boolean };
  addEventListener('pointerdown', () => hands.isTappedByHand || dispatchEvent(key), true);
}
