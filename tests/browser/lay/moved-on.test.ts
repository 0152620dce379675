import { expect, test } from 'vitest';
import { context, here, openPage, page, takePhone } from '../app';
import { MOBILE } from '../browser';
import { button, choose, field, said, title } from '../on-screen';
import { clock } from '../piece/spine-steps';

// The code that checks an entry is held back, so that a log takes as long as the test wants.
async function openHeldUp(hash: string): Promise<() => void> {
  let release = (): void => undefined;
  const released = new Promise<void>((resolve) => {
    release = resolve;
  });
  await takePhone({ ...MOBILE, serviceWorkers: 'block' });
  await context.route(/\/assets\/later-[^/]*\.js$/, async (route) => {
    await released;
    await route.continue();
  });
  await openPage(hash);
  return release;
}
const IN_12_HOURS = clock(Date.now() + 12 * 3_600_000);
const tapPlace = (name: string) => page.getByRole('navigation').getByRole('link', { name }).tap();
const toast = (text: string) => page.getByRole('status').getByText(text).waitFor();

async function logAir(humidity: string): Promise<void> {
  await field('Air temperature').fill('21');
  await field('Humidity').fill(humidity);
  await button('Log the reading').tap();
}

test('who goes to the bench while a reading is being logged stays there, and is told that it is logged', async () => {
  const release = await openHeldUp('#/air/read');
  await logAir('47');
  await tapPlace('Bench');
  await title('Bench');
  release();
  await toast('Logged.');
  expect(here()).toBe('#/bench');
  await tapPlace('Air');
  await said('21 °C').waitFor();
});

test('who waits is taken on, to the piece that was started', async () => {
  const release = await openHeldUp('#/piece/new');
  await field('Name').fill('Small box');
  await choose(/^Sealed wood/);
  await button('Start this piece').tap();
  release();
  await title('Small box');
  expect(here()).toMatch(/^#\/piece\//);
});

test('who has left is told what was refused', async () => {
  const release = await openHeldUp('#/air/read');
  await choose('By the clock');
  await page.getByLabel('Day and time').fill(IN_12_HOURS);
  await logAir('47');
  await tapPlace('Bench');
  release();
  await toast('Not logged: ');
  expect(here()).toBe('#/bench');
});
