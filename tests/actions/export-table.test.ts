import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { exportTable } from '../../src/actions/keep/export-table';
import { TABLE_HEADS } from '../../src/words/frame/tables';
import { aShop } from './a-shop';
import { aBench, agedWhite, writes } from './mix/a-bench';

test('a table goes out as a CSV file of its heads and a row a line', async () => {
  const open = await aShop();
  const lines = agedWhite(await aBench(open));
  await writes(open, lines);
  const file = await exportTable(open.needs, 'recipes');
  expect([file.name, file.type]).toEqual([
    expect.stringMatching(/^coatwait-recipes-2026-03-1[01]\.csv$/), // by the calendar of wherever this runs
    'text/csv',
  ]);
  const rows = (await file.text()).trim().split(/\r?\n/);
  expect(rows[0]).toContain(TABLE_HEADS.recipes.at(-1));
  expect(rows.length).toBe(1 + lines.length);
});
