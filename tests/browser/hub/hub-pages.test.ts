import { expect, test } from 'vitest';
import { writeCode } from '../../../src/hub/shop-code';
import { newPage, openApp, page, takePhone } from '../app';
import { MOBILE } from '../browser';
import { axeViolations, overTheSide } from '../looked-at';
import { begin, button, hub, password, restore, titleOf } from './hub-shop';
import { twiceShop } from './twice-shop';

test('a code that cannot be used says what to do, and nothing is joined', async () => {
  await openApp(MOBILE, '#/more/hub');
  const said = async (code: string, words: RegExp): Promise<void> => {
    await page.getByRole('textbox', { name: 'Code or link' }).fill(code);
    await button(page, 'Continue').tap();
    await page.getByText(words).first().waitFor();
  };
  await said('', /Enter the code/);
  await said('ABCD', /not the whole code/);
  await said('what?', /A character is wrong/);
  await said(
    `https://other.example/#/more/hub/${writeCode({ password, secret: undefined })}`,
    /is for https:\/\/other\.example/,
  );
});

const LOOKS = [
  { width: 390, colorScheme: 'light', percent: 100 },
  { width: 360, colorScheme: 'dark', percent: 150 },
  { width: 320, colorScheme: 'light', percent: 100 },
] as const;

/** What is wrong with the screen that is shown, however it is seen, and what the tab key does not reach. */
async function faults(): Promise<string[]> {
  const found: string[] = [];
  for (const { width, colorScheme, percent } of LOOKS) {
    await page.setViewportSize({ width, height: width < 390 ? 640 : 844 });
    await page.emulateMedia({ colorScheme });
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = `${size}%`;
    }, percent);
    const over = await overTheSide();
    if (over > 0) found.push(`${width} wide: runs ${over} px off the side`);
    for (const violation of await axeViolations()) found.push(`${width} wide: ${violation}`);
  }
  const named = 'main :is(a[href], button, input, textarea, summary)';
  const wanted = await page
    .locator(named)
    .evaluateAll((all) => all.filter((one) => one.checkVisibility()).length);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  const reached = new Set<number>();
  for (let tabs = 0; tabs < wanted + 20; tabs++) {
    await page.keyboard.press('Tab');
    reached.add(
      await page.evaluate(
        (of) => [...document.querySelectorAll(of)].indexOf(document.activeElement as Element),
        named,
      ),
    );
  }
  reached.delete(-1);
  if (reached.size < wanted) found.push(`the tab key reaches ${reached.size} of ${wanted}`);
  return found;
}

test('the pages of a phone that has joined fit every screen, for eye, reader and keyboard; one coat of two phones is asked about', async () => {
  await takePhone();
  const phone = await newPage(hub.address);
  await begin(phone, 'Booth phone');
  const { backup, piece } = await twiceShop();
  await restore(phone, backup);
  const found: string[] = [];
  for (const hash of ['more/hub', 'more/hub/code', 'more/hub/lost', 'more/hub/join', `piece/${piece}`]) {
    await phone.goto(`${hub.address}#/${hash}`);
    await phone.reload(); // so that no title of the page before is waited for
    await phone.getByRole('heading', { level: 1 }).waitFor();
    if (hash.startsWith('piece')) await phone.getByText('Is this the same coat?').waitFor();
    for (const fault of await faults()) found.push(`${hash}: ${fault}`);
  }
  expect(found).toEqual([]);

  const asked = phone.getByText('Is this the same coat?');
  const coats = phone.locator('.history').getByText(/^Coat \d$/);
  await phone.getByText(/Spray room phone at .*, Bench phone at /).waitFor();
  expect(await coats.count()).toBe(2);
  await button(phone, 'It is one').tap();
  await asked.waitFor({ state: 'detached' });
  expect(await coats.count()).toBe(1);
  await phone.getByRole('button', { name: 'Undo', exact: true }).tap(); // in the toast
  await asked.waitFor();
  await button(phone, 'Keep both').tap();
  await asked.waitFor({ state: 'detached' });
  expect(await coats.count()).toBe(2);
  await phone.reload();
  await coats.first().waitFor({ state: 'attached' });
  expect(await asked.count()).toBe(0);
});

test('a tablet that shows only stays on its board, also when it is opened again, until it is told otherwise', async () => {
  await takePhone();
  const tablet = await newPage(hub.address);
  await begin(tablet, 'Wall tablet');
  await tablet.goto(`${hub.address}#/more/hub`);
  await tablet.getByRole('checkbox', { name: 'Show only' }).check();
  const board = tablet.getByText('Show only: nothing is logged here.');
  for (const hash of ['bench', 'piece/new', 'more']) {
    await tablet.goto(`${hub.address}#/${hash}`);
    await board.waitFor();
    expect(new URL(tablet.url()).hash).toBe('#/board');
  }
  await tablet.reload();
  await board.waitFor();
  expect(await faults()).toEqual([]);
  await tablet.getByRole('link', { name: 'Change' }).tap();
  await tablet.getByRole('checkbox', { name: 'Show only' }).uncheck();
  await tablet.goto(`${hub.address}#/bench`);
  await titleOf(tablet, 'Bench');
});
