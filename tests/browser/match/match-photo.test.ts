import { describe, expect, test } from 'vitest';
import { labToXyz, type Xyz } from '../../../src/science/colour/lab';
import { chartXyz } from '../../../src/science/colour/photo/camera-fit';
import { encodeSrgb, xyzToLinearRgb } from '../../science/colour/shown-srgb';
import { base, context, openApp, page } from '../app';
import { MOBILE } from '../browser';
import { axeViolations } from '../looked-at';
import { button, choose, field, link, title } from '../on-screen';
import { logReadings, mix, says, startMatch, thrice } from './match-steps';

describe('a photo', () => {
  /** A twelve-megapixel shot of the chart over a cream sample, as a camera of sRGB would take it. */
  async function shot(exposure: number): Promise<Buffer> {
    const light = (xyz: Xyz<'D65/2'>) =>
      xyzToLinearRgb(xyz).map((channel) => Math.max(channel, 0) * exposure);
    const code = (channel: number): number => Math.round(255 * encodeSrgb(Math.min(channel, 1)));
    const css = (xyz: Xyz<'D65/2'>): string => `rgb(${light(xyz).map(code).join(' ')})`;
    const patches = chartXyz('since-2014').map(css);
    const cream = css(labToXyz({ white: 'D65/2', L: 86.5, a: -0.6, b: 14.8 }));
    const base64 = await page.evaluate(
      async ([colours, sample]) => {
        const canvas = new OffscreenCanvas(4000, 3000);
        const paint = canvas.getContext('2d');
        if (!paint) throw new Error('No canvas.');
        const fill = (colour: string, x: number, y: number, w: number, h: number): void => {
          paint.fillStyle = colour;
          paint.fillRect(x, y, w, h);
        };
        fill('rgb(90 90 90)', 0, 0, 4000, 3000);
        colours.forEach((colour, i) => {
          fill(colour, 400 + 400 * (i % 6), 200 + 400 * Math.floor(i / 6), 400, 400);
        });
        fill(sample, 1400, 2000, 1200, 800);
        const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 });
        const bytes = new Uint8Array(await blob.arrayBuffer());
        let text = '';
        for (const byte of bytes) text += String.fromCharCode(byte);
        return btoa(text);
      },
      [patches, cream] as const,
    );
    return Buffer.from(base64, 'base64');
  }

  async function markByTouch(): Promise<void> {
    const picture = page.locator('.photo');
    await picture.locator('img').waitFor();
    const box = await picture.boundingBox();
    if (!box) throw new Error('No picture.');
    for (const [x, y] of [
      [0.1, 1 / 15],
      [0.7, 1 / 15],
      [0.7, 0.6],
      [0.1, 0.6],
      [0.5, 0.8],
    ] as const)
      await picture.tap({ position: { x: x * box.width, y: y * box.height } });
  }

  async function choosePhoto(buffer: Buffer): Promise<void> {
    await page
      .getByLabel('Take or choose a photo')
      .setInputFiles({ name: 'card.jpg', mimeType: 'image/jpeg', buffer });
    await markByTouch();
  }

  test('of twelve megapixels is read off the main thread, ranks a trial and never passes it', async () => {
    await openApp(MOBILE, '#/match');
    const address = await startMatch({ tinters: ['Ochre'], light: 'D65/2' });
    await page.goto(`${base}${address}/read/target`);
    await logReadings(thrice(['86.5', '-0.6', '14.8']));
    await link('Weigh in the base').tap();
    await mix({ 'White lacquer': '100' });
    await link('Read the base').tap();
    await link('By photo instead').tap();
    await choosePhoto(await shot(0.8));
    expect(await axeViolations()).toEqual([]);

    const devtools = await context.newCDPSession(page);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await page.evaluate(() => {
      const seen = { longestMs: 0 };
      Object.assign(globalThis, { seen });
      new PerformanceObserver((list) => {
        for (const { duration } of list.getEntries()) seen.longestMs = Math.max(seen.longestMs, duration);
      }).observe({ type: 'longtask' });
    });
    await button('Read the colour').tap();
    await says(/^The sample reads/);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    const tookMs = await page.locator('[data-took-ms]').getAttribute('data-took-ms');
    const longestMs = await page.evaluate(
      () => (globalThis as unknown as { seen: { longestMs: number } }).seen.longestMs,
    );
    console.log(
      `12 megapixels: ${tookMs} ms in the worker; longest task of the page at 4x: ${Math.round(longestMs)} ms`,
    );

    // Read within a unit of what was painted; JPEG and eight bits take the rest.
    const said = (await page.getByText(/^The sample reads/).textContent()) ?? '';
    const [L = 0, a = 0, b = 0] =
      said
        .replaceAll('−', '-')
        .match(/-?\d+\.\d/g)
        ?.map(Number) ?? [];
    expect(Math.hypot(L - 86.5, a + 0.6, b - 14.8)).toBeLessThan(1);
    await choose(/^Under clear/); // the coats that it was seen through are asked of a photo too
    await field('Coats of clear').fill('4');
    await button('Log it, for ranking').tap();
    await title(/^Trial 1/);
    await says('Photo: ranks, never passes');
    await says(/under 4 clears/);
  });

  test('with burnt-out highlights is refused, with what to do', async () => {
    await openApp(MOBILE, '#/match');
    const address = await startMatch({ tinters: ['Ochre'] });
    await page.goto(`${base}${address}/photo/target`);
    await choosePhoto(await shot(1.6));
    await button('Read the colour').tap();
    await says(/burnt out.*Take the photo again, darker/);
  });
});
