import { mkdirSync } from 'node:fs';
import { expect, inject, test } from 'vitest';
import { launch } from './browser';

const base = inject('baseUrl');
const SIZES = [
  { width: 390, height: 844 },
  { width: 360, height: 640 },
] as const;
const PLACES = ['bench', 'lay', 'mix', 'match', 'air', 'more', 'plan', 'board'];
/** Links to follow from a place, by the pattern of their address. */
const DEEPER: readonly { readonly from: string; readonly to: RegExp; readonly name: string }[] = [
  { from: 'bench', to: /#\/piece\/[^/]+$/, name: 'piece' },
  { from: 'piece', to: /\/why$/, name: 'why' },
  { from: 'mix', to: /#\/mix\/jar\/[^/]+$/, name: 'jar' },
  { from: 'mix', to: /#\/mix\/recipe\/[^/]+$/, name: 'recipe' },
  { from: 'match', to: /#\/match\/[^/]+$/, name: 'match-one' },
  { from: 'plan', to: /#\/plan\/[^/]+$/, name: 'plan-one' },
];

test('pictures of every place in the demo shop', async () => {
  mkdirSync('shots', { recursive: true });
  const browser = await launch();
  for (const { width, height } of SIZES) {
    for (const colorScheme of ['light', 'dark'] as const) {
      const context = await browser.newContext({
        viewport: { width, height },
        deviceScaleFactor: 1,
        isMobile: true,
        hasTouch: true,
        colorScheme,
      });
      const page = await context.newPage();
      const shoot = (name: string) =>
        page.screenshot({ path: `shots/${name}-${width}-${colorScheme}.png`, fullPage: true });
      const addresses = new Map<string, string>();
      await page.goto(base);
      await page.getByRole('button', { name: /demo/i }).first().tap();
      await page.waitForTimeout(4000);
      for (const place of PLACES) {
        await page.goto(`${base}#/${place}`);
        await page.waitForTimeout(900);
        addresses.set(place, page.url());
        await shoot(place);
      }
      for (const { from, to, name } of DEEPER) {
        const start = addresses.get(from);
        if (!start) continue;
        await page.goto(start);
        await page.waitForTimeout(600);
        const links = await page
          .locator('a')
          .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
        const link = links.find((href) => to.test(href) && !/\/new$/.test(href));
        if (!link) continue;
        addresses.set(name, link);
        await page.goto(link);
        await page.waitForTimeout(1500);
        await shoot(name);
      }
      await context.close();
    }
  }
  await browser.close();
  expect(SIZES.length).toBeGreaterThan(0);
});
