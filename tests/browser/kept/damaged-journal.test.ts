import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, inject, test } from 'vitest';
import {
  expectAllThere,
  filesBeside,
  HARMS,
  type Harm,
  isIndex,
  PLACES,
  profile,
  restartAfter,
  work,
  workOn,
} from './damage';

const base = inject('baseUrl');

describe('the journal', () => {
  const isKept = (page: Page) => page.getByText('A second copy of the logbook is kept');
  const isGone = (page: Page) =>
    page.getByText(
      /The second copy on this phone cannot be used any more|There is no second copy on this phone/,
    );
  const harmed = (how: string, isHit: (path: string) => boolean) =>
    restartAfter(() =>
      filesBeside()
        .filter(isHit)
        .forEach(HARMS[how] as Harm),
    );

  // Cut, zeroed or deleted, the browser begins its index anew; flipped it may read half of it.
  test.each(Object.keys(HARMS))(
    '%s: the database has everything, and the journal is made up',
    async (how) => {
      let before = await work();
      for (let place = 0; place < PLACES; place++) {
        const page = await harmed(how, (path) => how !== 'flipped' || !isIndex(path));
        await expectAllThere(page, before, `journal, ${how}`);
        before = await workOn(page, before, `Later ${place}`);
        // And what was made up serves when the database goes next.
        await page.goto(`${base}#/more`);
        await isKept(page).waitFor();
      }
      await new Promise((resolve) => setTimeout(resolve, 1_000));
      const page = await restartAfter(() =>
        rmSync(join(profile.folder, 'Default', 'IndexedDB'), { recursive: true }),
      );
      await expectAllThere(page, before, `journal, ${how}, then the database gone`);
    },
    300_000,
  );

  // What the browser then makes of the copy is its own affair: it may keep it, or refuse the folder from now on or from the next start.
  test("the browser's index flipped: the logbook is whole, and it is said whether a second copy is kept", async () => {
    let before = await work();
    for (let place = 0; place < PLACES; place++) {
      const page = await harmed('flipped', isIndex);
      await expectAllThere(page, before, "journal, the browser's index flipped");
      before = await workOn(page, before, `Later ${place}`);
      await page.goto(`${base}#/more`);
      await isKept(page).or(isGone(page)).first().waitFor();
    }
  }, 300_000);
});
