import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';
import { CHROMIUM } from '../browser';
import { openWebKit } from './webkit';

/** A browser of one engine with one page, as far as the main job needs it. */
export interface Engine {
  goTo(address: string): Promise<void>;
  /** Runs the body of an async function in the page, with `args`, and gives what it returns. */
  run<T>(body: string, ...args: readonly unknown[]): Promise<T>;
  picture(): Promise<Buffer>;
  close(): Promise<void>;
}

const WIDTH = 390;
const HEIGHT = 844;
const START_MS = 90_000;
const LONGEST_MS = 40_000;

type Launch = NonNullable<Parameters<typeof puppeteer.launch>[0]>;

async function openBy(launch: Launch): Promise<Engine> {
  const userDataDir = mkdtempSync(join(tmpdir(), 'coatwait-engine-'));
  const browser = await puppeteer.launch({ headless: true, timeout: START_MS, userDataDir, ...launch });
  const page = await browser.newPage();
  await page.setViewport({ width: WIDTH, height: HEIGHT });
  page.setDefaultTimeout(LONGEST_MS);
  return {
    async goTo(address) {
      await page.goto(address);
    },
    run: (body, ...args) =>
      page.evaluate(`(async (...args) => {${body}})(...${JSON.stringify(args)})`) as Promise<never>,
    picture: async () => Buffer.from(await page.screenshot()),
    async close() {
      await browser.close();
      rmSync(userDataDir, { recursive: true, force: true, maxRetries: 20, retryDelay: 200 });
    },
  };
}

/** Debian's Firefox by WebDriver BiDi. */
export const openFirefox = (): Promise<Engine> =>
  openBy({
    browser: 'firefox',
    executablePath: process.env['FIREFOX_PATH'] ?? '/usr/bin/firefox-esr',
    args: [`--width=${WIDTH}`, `--height=${HEIGHT}`],
  });

export const openChromium = (): Promise<Engine> =>
  openBy({ executablePath: CHROMIUM.executablePath, args: [...CHROMIUM.args] });

export { openWebKit };
