import { expect, test } from 'vitest';
import { fetchOnce } from '../../src/logbook/fetch-once';

test('what is fetched is fetched once, however often it is asked for', async () => {
  let times = 0;
  const code = fetchOnce(async () => ++times);
  expect(await Promise.all([code(), code()])).toEqual([1, 1]);
  expect(await code()).toBe(1);
});

test('what could not be had is asked for again', async () => {
  let times = 0;
  const code = fetchOnce(async () => {
    if (++times === 1) throw new Error('no network yet');
    return times;
  });
  await expect(code()).rejects.toThrow('no network yet');
  expect(await code()).toBe(2);
});
