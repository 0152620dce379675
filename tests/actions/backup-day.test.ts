import { expect, test } from 'vitest';
import { aShop } from './a-shop';

test('a backup carries the day of the shop’s own calendar, not that of Greenwich', async () => {
  const before = process.env['TZ'];
  try {
    process.env['TZ'] = 'Pacific/Kiritimati'; // 14 h ahead (IANA time zone database)
    const open = await aShop();
    expect((await open.actions.exportBackup()).name).toBe('coatwait-2026-03-11.zip');
  } finally {
    if (before === undefined) delete process.env['TZ'];
    else process.env['TZ'] = before;
  }
});
