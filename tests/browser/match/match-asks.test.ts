import { expect, test } from 'vitest';
import { goTo, here, openApp, page } from '../app';
import { isFree } from '../looked-at';
import { button, field, link, said, title, unfold } from '../on-screen';

const SMALL = { viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true } as const;

/** The match of the demo shop, with three trials read. */
async function openMatch(): Promise<string> {
  await openApp(SMALL, '#/more');
  await unfold('Demo shop');
  await button('Open the demo shop').tap();
  await page.getByText('All invented.').waitFor();
  await goTo('#/match');
  await link(/^Tea caddy/)
    .first()
    .tap();
  await title('Tea caddy, old white');
  return here();
}

test('a reading far from what the trial read before is asked about, clear of the bar, and logged only when it is said again', async () => {
  const match = await openMatch();
  await link('Read trial 3 again').tap();
  for (const [name, text] of [
    ['L*', '95.5'],
    ['a*', '-0.8'],
    ['b*', '2.2'],
  ] as const)
    await field(name).fill(text);
  await button('Log the reading').tap();
  await said(/apart: is it the same surface\?$/).waitFor();
  expect(await isFree(button('Log it all the same'))).toBe(true);
  expect(here()).not.toBe(match); // not logged yet
  await button('Log it all the same').tap();
  await title('Tea caddy, old white');
  await link(/^Trial 3/)
    .first()
    .tap();
  await said('L*a*b* 95.5 / -0.8 / 2.2').waitFor();
});

test('after a new trial the next reading is that trial’s; a photo refuses marks that were never moved', async () => {
  const match = await openMatch();
  await link(/^(I added|Log what|Mix)/)
    .first()
    .tap();
  await button('Log this trial').waitFor();
  await field('Ochre, g').fill('0.3');
  await button('Log this trial').tap();
  await title('Tea caddy, old white');
  await link('Read the trial').tap();
  await title('Read trial 4');
  await goTo(match, 'Tea caddy, old white');
  expect(await link('Read trial 3 again').count()).toBe(0);

  await goTo(`${match}/photo/target`, 'Read by photo');
  const drawn = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 480;
    canvas.height = 320;
    canvas.getContext('2d')?.fillRect(0, 0, 480, 320);
    return canvas.toDataURL('image/jpeg').replace(/.*,/, '');
  });
  const buffer = Buffer.from(drawn, 'base64');
  await page
    .getByLabel('Take or choose a photo')
    .setInputFiles({ name: 'card.jpg', mimeType: 'image/jpeg', buffer });
  await button('Read the colour').tap();
  await said(/^Touch the photo where these belong first: /).waitFor();
  expect(await page.getByText('The sample reads').count()).toBe(0);
});
