import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { writeBackup } from '../../../src/logbook/backup/backup';
import type { EntryBody } from '../../../src/logbook/entry';
import { entry, JAR, startPiece as startBox } from '../../logbook/entries';
import { context, takePhone } from '../app';
import { rows } from '../logging';
import { photoWithPlace } from '../photo/tagged-photo';
import {
  another,
  begin,
  button,
  hub,
  joinWith,
  nats,
  restore,
  startEngine,
  startPiece,
  startServer,
  titleOf,
  untilOnHub,
} from './hub-shop';

// What one phone of a shop puts right, photographs or leaves behind, as the others see it.
const fill = (on: Page, name: string | RegExp, text: string) =>
  on.getByRole('main').getByRole('textbox', { name }).fill(text);
const open = (on: Page, hash: string) => on.goto(`${hub.address}${hash}`);
const equal = (one: Page, other: Page) =>
  expect
    .poll(async () => JSON.stringify(await rows(one)) === JSON.stringify(await rows(other)), {
      timeout: 30_000,
    })
    .toBe(true);

async function logAir(on: Page, degrees: string): Promise<void> {
  await open(on, '#/air/read');
  await fill(on, 'Air temperature', degrees);
  await fill(on, /^Humidity/, '55');
  await button(on, 'Log the reading').tap();
  await on.getByText('Reading logged.').waitFor();
}

test('a line is put right on one phone and reads so on the other; a photo comes when it is looked at', async () => {
  await takePhone();
  const phone = await another(context.browser()); // not watched: a socket that is refused is told of
  const code = await begin(phone, 'Booth phone');
  await startPiece(phone, 'Walnut box');
  const piece = new URL(phone.url()).hash;
  const other = await another(context.browser());
  await joinWith(other, code, 'Office');

  await logAir(phone, '12');
  await open(other, '#/air/readings');
  await other.getByText(/12\s°C, 55\s%/).waitFor();
  await other.getByRole('link', { name: /^Correct: .*12 °C/ }).tap();
  await fill(other, 'Temperature of the air', '21');
  await button(other, 'Save the correction').tap();
  await open(phone, '#/air/readings');
  await phone.getByText(/21\s°C, 55\s%/).waitFor();
  expect(await phone.getByText(/12\s°C, 55\s%/).count()).toBe(0);

  await open(phone, `${piece}/photos`);
  const file = { name: 'box.jpg', mimeType: 'image/jpeg', buffer: await photoWithPlace(1200, 900, phone) };
  await phone.locator('main input[type=file]').first().setInputFiles(file);
  await phone.getByText('Photo saved.').waitFor();
  await equal(phone, other);
  await untilOnHub(phone);
  expect(await photosIn(other)).toBe(0);
  await open(other, `${piece}/photos`);
  await expect.poll(() => other.locator('.photo-list img').evaluateAll(isDrawn)).toBe(true);
  await expect.poll(() => photosIn(other)).toBe(1);

  // Whoever leaves keeps everything, and nothing of it goes further.
  await nats.kill();
  await logAir(other, '19');
  await open(other, '#/more');
  await button(other, 'Leave the hub').tap();
  await button(other, 'Yes, leave').tap();
  await other.getByText('This phone works alone.').waitFor();
  await startEngine();
  await logAir(phone, '23');
  await untilOnHub(phone);
  await other.reload();
  const [here, there] = await Promise.all([rows(phone), rows(other)]);
  expect(there).toHaveLength(here.length);
  expect(JSON.stringify(there)).toContain('"text":"19"');
  expect(JSON.stringify(here)).not.toContain('"text":"19"');
  expect(JSON.stringify(there)).not.toContain('"text":"23"');
});

test('a phone that is opened while the hub is off goes on by itself once it is back', async () => {
  await takePhone();
  const phone = await another(context.browser()); // not watched: a socket that is refused is told of
  const code = await begin(phone, 'Booth phone');
  const other = await another(context.browser());
  await joinWith(other, code, 'Office');
  for (const each of [phone, other]) await each.evaluate(() => navigator.serviceWorker.ready);
  await nats.kill();
  // Logged in March, and not there yet: the bench says so.
  await restore(phone, await writeBackup({ entries: [entry(1, startBox())], setAside: [] }, Date.now()));
  await open(phone, '#/bench');
  await phone.getByRole('link', { name: '1 entry not on the hub for over an hour' }).tap();
  await titleOf(phone, 'Other screens');
  await phone.getByText(/The hub does not answer/).waitFor();
  await hub.close(); // its computer is off: app and engine
  await open(phone, '#/bench');
  await phone.reload();
  await phone.getByRole('link', { name: '1 entry not on the hub for over an hour' }).waitFor();
  // The browser writes a second late that it has joined, and it may have died before.
  await other.evaluate(() => localStorage.removeItem('coatwait-joined'));
  await other.reload();
  await logAir(other, '17');
  await startEngine();
  await startServer();
  await untilOnHub(phone);
  await equal(phone, other);
});

test('a reminder that is answered on one phone is gone on the other', async () => {
  await takePhone();
  const phone = await another(context.browser());
  const code = await begin(phone, 'Booth phone');
  const percent = (text: string) => ({ text, unit: '%' }) as const;
  const jar: EntryBody = {
    kind: 'jar-filled',
    jar: JAR,
    name: 'Mixed clear',
    product: { finish: 'precatalysed', volumeSolids: percent('25') },
    thinner: { name: 'Thinner', blend: [{ solvent: 'butyl-acetate', share: 1 }] },
    thinning: { of: 'lacquer', percent: percent('10') },
    life: { span: { text: '8', unit: 'h' }, as: 'pot' },
  };
  const mixedMs = Date.now() - 7.1 * 3_600_000; // told of an hour before its eight are over
  await restore(phone, await writeBackup({ entries: [entry(1, jar, mixedMs)], setAside: [] }, Date.now()));
  const other = await another(context.browser());
  await joinWith(other, code, 'Office');
  const told = (on: Page) => on.locator('main li.reminder', { hasText: 'Jar near its end' });
  for (const each of [phone, other]) {
    await open(each, '#/plan/reminders');
    await told(each).waitFor();
  }
  await other.locator('main').getByRole('button', { name: 'Done' }).first().tap();
  for (const each of [other, phone]) await told(each).waitFor({ state: 'detached' });
  await other.getByRole('button', { name: 'Undo', exact: true }).tap(); // in the toast
  for (const each of [other, phone]) await told(each).waitFor();
});

const isDrawn = (all: readonly Element[]): boolean =>
  all.length > 0 && all.every((one) => (one as HTMLImageElement).naturalWidth > 0);

const photosIn = (on: Page): Promise<number> =>
  on.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('coatwait-photos');
        opening.onupgradeneeded = () => opening.transaction?.abort();
        opening.onerror = () => resolve(0); // the app has not made it yet
        opening.onsuccess = () => {
          const asking = opening.result.transaction('photos').objectStore('photos').count();
          asking.onerror = () => reject(asking.error);
          asking.onsuccess = () => {
            opening.result.close();
            resolve(asking.result);
          };
        };
      }),
  );
