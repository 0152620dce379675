import { readFileSync } from 'node:fs';
import { beforeEach, expect, test } from 'vitest';
import { goTo, here, openApp, page } from '../app';
import { axeViolations, overTheSide } from '../looked-at';
import { button, choose, field, link, title } from '../on-screen';
import { photoWithPlace } from '../photo/tagged-photo';

const record = () => page.locator('article.record');
const closeToast = () => button('Close this message').tap();

beforeEach(() => openApp());

/** A guitar sprayed in a winter garage: one place of it, a tracer in the lacquer, a photo under UV. */
async function winterGuitar(): Promise<string> {
  await goTo('#/piece/new', 'Start a piece');
  await field('Name').fill('Winter guitar');
  await choose(/^Old finish that softens/);
  await button('Start this piece').tap();
  await title('Winter guitar');
  const piece = here();
  await goTo('#/mix/jar/new');
  await field('Name of the jar').fill('Spray can, clear');
  await page.getByText('How much, how long it keeps, tracer').tap();
  await field('Tracer, fluoresces under').fill('365');
  await button('Fill the jar').tap();
  await title('Spray can, clear');
  await goTo(`${piece}/zone/new`, 'Mark a place');
  await field('Name').fill('Lower bout');
  await choose(/^Overspray/);
  await field('New material over sound finish').fill('60');
  await button('Save').tap();
  await title('Lower bout');
  return piece;
}

async function logCoatHere(): Promise<void> {
  await link('Log a coat here').tap();
  const cautions = button('Read and done');
  await cautions
    .or(button(/^Log it/))
    .first()
    .waitFor();
  if ((await cautions.count()) > 0) await cautions.tap();
  await button(/^Log it/)
    .first()
    .tap();
  await title('Lower bout');
}

test('what the next owner is told: how far new material reaches, the tracer and its layer, what harms it', async () => {
  const piece = await winterGuitar();
  await logCoatHere();
  await link('Take a photo').tap();
  await choose(/^UV/);
  const buffer = await photoWithPlace(1200, 900);
  await page.locator('input[type=file]').setInputFiles({ name: 'uv.jpg', mimeType: 'image/jpeg', buffer });
  await page.getByText('Photo saved.').waitFor();
  await goTo(`${piece}/record`, 'Treatment record');
  await record().getByText('New material reaches 60 mm over sound finish.').first().waitFor();
  await record().getByText('Tracer in coat 1, seen at 365 nm.', { exact: true }).waitFor();
  await record()
    .getByText(/^Photo 1: Before, UV light/)
    .waitFor();
  await record()
    .getByText(
      'Lower bout: Overspray; 1 application of Spray can, clear. Clear only; colour untouched. New material reaches 60 mm over sound finish. Tracer in coat 1, seen at 365 nm.',
    )
    .waitFor();
  await record()
    .getByText(/No stand or strap of rubber or vinyl for 6 months/)
    .waitFor();
  await record()
    .getByText(/The finish is (fully hardened|hard) by about /)
    .waitFor({ timeout: 40_000 });
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
});

test('a private note stays out of the page and of the file that goes out, which holds its photo and runs nothing', async () => {
  const piece = await winterGuitar();
  await logCoatHere();
  await goTo(`${piece}/photos`, 'Photos');
  const buffer = await photoWithPlace();
  await page.locator('input[type=file]').setInputFiles({ name: 'top.jpg', mimeType: 'image/jpeg', buffer });
  await page.getByText('Photo saved.').waitFor();
  await goTo(`${piece}/words`, 'Write the record');
  for (const [text, isPrivate] of [
    ['The owner haggles.', true],
    ['The strap button was moved.', false],
  ] as const) {
    await field('Note').fill(text);
    if (isPrivate) await page.getByRole('checkbox', { name: /^Private/ }).tap();
    await button('Save the note').tap();
    await page.getByText('Note saved.').waitFor();
    await closeToast();
    if (isPrivate) await page.getByRole('checkbox', { name: /^Private/ }).tap();
  }
  await goTo(`${piece}/record`, 'Treatment record');
  await page.getByText('1 private note stays out.').waitFor();
  await record()
    .getByText(/: The strap button was moved\.$/)
    .waitFor();
  expect(await record().textContent()).not.toContain('haggles');
  await record().locator('image[href]').waitFor();
  const [file] = await Promise.all([page.waitForEvent('download'), button('Save as a file').tap()]);
  const html = readFileSync(await file.path(), 'utf8');
  expect(html).toContain('The strap button was moved.');
  expect(html).toContain('data:image/jpeg;base64,');
  expect(html).not.toMatch(/<script|blob:|haggles/);
});

test('what was not changed of the words goes on following the logbook, what was changed stays', async () => {
  const piece = await winterGuitar();
  await logCoatHere();
  await goTo(`${piece}/words`, 'Write the record');
  await field('What was asked').fill('Make the scuff invisible.');
  await button('Save').first().tap();
  await title('Treatment record');
  await closeToast();
  await goTo(here().replace('/record', ''), 'Winter guitar');
  await goTo(`${piece}/zone/new`, 'Mark a place');
  await field('Name').fill('Heel');
  await button('Save').tap();
  await title('Heel');
  await goTo(`${piece}/record`, 'Treatment record');
  await record().getByText('Make the scuff invisible.').waitFor();
  await record().getByText('Heel: Chip; nothing added.').waitFor();
  await button('Save as a file').and(page.locator(':enabled')).waitFor({ timeout: 40_000 });
  await record()
    .getByText(/hard(ened)? by about /)
    .waitFor();
  await link('Write the record').tap();
  await title('Write the record');
  await field('Disclosure for a sale').fill('Small touch-up at the lower bout.');
  await button('Save').first().tap();
  await title('Treatment record');
  await record().getByText('Small touch-up at the lower bout.', { exact: true }).waitFor();
  expect(await record().getByText('nothing added').count()).toBe(0);
});
