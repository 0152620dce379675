import { describe, expect, test } from 'vitest';
import { FINISHES } from '../../../src/logbook/kinds/mix/jar';
import { goTo, openApp, page } from '../app';
import { bringIn } from '../fake-dialogs';
import { inUsUnits } from '../on-screen';
import { type Finish, shopOf } from './each-finish-shop';

// No advice of another finish, on any page. Common practice: what melts in, blushes, cures or re-dissolves is of its kind.
const NITRO = /nitro|lacquer thinner/i;
const OF_SOLVENT_LACQUER =
  /retarder|slow(er)? thinner|turns? white|whitens?|blush|melts? in|melt-in|flash coat/i;
const OF_CURING = /catalys|pot life|recoat window|hardener|acid\b/i;
const ISOCYANATE = /isocyan/i;
const SHELLAC = /shellac|pound cut|spirit off|glass-plate/i;
const WATER = /waterborne|coalesc/i;
const SPRAYING = /overspray|spray gun|the gun\b/i;

const FORBIDDEN: Record<Finish, readonly RegExp[]> = {
  nitrocellulose: [OF_CURING, ISOCYANATE, SHELLAC, WATER],
  acrylic: [NITRO, OF_CURING, ISOCYANATE, SHELLAC, WATER],
  cab: [NITRO, OF_CURING, ISOCYANATE, SHELLAC, WATER],
  shellac: [NITRO, OF_CURING, ISOCYANATE, WATER, SPRAYING, /\blacquer/i],
  waterborne: [NITRO, OF_SOLVENT_LACQUER, OF_CURING, ISOCYANATE, SHELLAC],
  precatalysed: [NITRO, /melts? in|melt-in|flash coat/i, ISOCYANATE, SHELLAC, WATER],
  conversion: [NITRO, /melts? in|melt-in|flash coat/i, ISOCYANATE, SHELLAC, WATER],
  urethane: [NITRO, /melts? in|melt-in|flash coat/i, SHELLAC, WATER],
};
/** What may be said: what is not so. */
const DENIED = /(does not|do not|doesn’t|don’t|nothing|never|no) (blush|melt|turn|re-dissolve)[\w-]*( in)?/gi;

/** What re-dissolves in it though it is no nitrocellulose (common practice, no source). */
const OPENED = /opened by lacquer thinner or acetone/gi;
const IS_OPENED: readonly Finish[] = ['acrylic', 'cab'];

/** What a person reads, element by element: what is folded away too. */
const shownLines = (): Promise<readonly string[]> =>
  page
    .locator('main :not(option)') // a list to pick from gives no advice
    .evaluateAll((all) =>
      all.flatMap(({ childNodes, textContent }) =>
        [...childNodes].some((child) => child.nodeType === 3 && child.nodeValue?.trim())
          ? [textContent ?? '']
          : [],
      ),
    );

const leftOf = (line: string, finish: Finish): string =>
  (IS_OPENED.includes(finish) ? line.replace(OPENED, '') : line).replace(DENIED, '');

describe.each(FINISHES)('%s', (finish) => {
  test('gets no advice of another finish on Lay, Sand, Air, Plan, Why, Jar, How much, the sheet, the record, filler and for the owner, in metric and US units', async () => {
    await openApp();
    const { jar, piece, backup } = await shopOf(finish);
    await bringIn(Buffer.from(backup), 'backup.json');
    const pages = {
      lay: `#/lay?piece=${piece}&jar=${jar}`,
      sand: `#/piece/${piece}/sand`,
      piece: `#/piece/${piece}`,
      air: '#/air',
      finish: `#/air/finish/${finish}`,
      plan: `#/plan/${piece}`,
      why: `#/piece/${piece}/why`,
      jar: `#/mix/jar/${jar}`,
      amount: `#/mix/amount?jar=${jar}`,
      sheet: `#/air/sheet/${jar}`,
      record: `#/piece/${piece}/record`,
      owner: `#/plan/${piece}/owner`,
      ground: `#/piece/${piece}/ground`,
    };
    const found: string[] = [];
    let units = '';
    const addLines = async (name: string): Promise<void> => {
      for (const line of await shownLines())
        for (const forbidden of FORBIDDEN[finish])
          if (forbidden.test(leftOf(line, finish))) found.push(`${name}${units}: ${line}`);
    };
    for (const [name, hash] of Object.entries(pages)) {
      await goTo(hash);
      await page.waitForTimeout(500); // the estimate comes behind the page
      await addLines(name);
      const confirm = page.getByRole('button', { name: /^(Read and done|I have the training.*)$/ });
      if (name === 'lay' && (await confirm.count()) > 0) {
        await confirm.first().tap();
        await page.getByRole('button', { name: /^Log / }).first().waitFor();
        await addLines('lay, after the cautions');
      }
    }
    await inUsUnits();
    units = ', US';
    for (const [name, hash] of Object.entries(pages)) {
      await goTo(hash);
      await page.waitForTimeout(150); // worked out already
      await addLines(name);
    }
    expect(found).toEqual([]);
  });
});
