import { expect, test } from 'vitest';
import { context, goTo, openPage, page, takePhone } from '../app';
import { MOBILE } from '../browser';
import { button, field, said, title, unfold, unfoldAll } from '../on-screen';

// A browser that lacks what others have, or has the name and refuses: nothing waits for ever, and what is so is said.
async function startPiece(name: string): Promise<void> {
  await goTo('#/piece/new');
  await field('Name').fill(name);
  await button('Start this piece').tap();
  await title(name);
}

test('without word between tabs and without a promise of storage the app opens, logs and says so', async () => {
  await takePhone();
  await context.addInitScript(() => {
    Reflect.deleteProperty(globalThis, 'BroadcastChannel');
    for (const name of ['persist', 'persisted']) Reflect.deleteProperty(StorageManager.prototype, name);
  });
  await openPage();
  expect(
    await page.evaluate(() => ['BroadcastChannel' in globalThis, 'persist' in navigator.storage]),
  ).toEqual([false, false]);
  await goTo('#/more');
  await said('The browser is asked to keep the logbook once there is work in it.').waitFor();
  for (const name of ['First box', 'Second box', 'Third box']) await startPiece(name);
  await goTo('#/more');
  await said(/^The browser has not promised to keep the logbook/).waitFor();
});

test('a phone that can neither ring nor stay awake says so, and an iPhone what it clears', async () => {
  const userAgent = 'Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15';
  await takePhone({ ...MOBILE, userAgent });
  await context.addInitScript(() => {
    Reflect.deleteProperty(globalThis, 'Notification');
    Reflect.deleteProperty(Navigator.prototype, 'vibrate');
    WakeLock.prototype.request = () => Promise.reject(new DOMException('', 'NotAllowedError'));
  });
  await openPage('#/plan/reminders');
  const can = await page.locator('.abilities').textContent();
  expect(can).toContain('On an iPhone they come only to an app opened from the home screen.');
  expect(can).toContain('No: a tap on the notification opens the app, and the answers are there.');
  expect(can).toContain('No: this browser does not vibrate.');
  expect(can).toContain('No: set the phone not to sleep.');
  await unfoldAll();
  await button('Test it now').tap();
  await page.getByText(/^This phone shows no notification for this app/).waitFor();
  expect(await page.getByText('Test sent').count()).toBe(0);

  await goTo('#/more');
  await unfold('This phone');
  await said(/^On an iPhone the browser may clear what a site keeps/).waitFor();
  await said(/Save a backup here first, then restore it there\.$/).waitFor();
});
