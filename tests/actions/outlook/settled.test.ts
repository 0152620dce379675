import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { settle } from '../../../src/actions/outlook/settled';
import { createFold } from '../../../src/logbook/fold/fold';
import { entry, layCoat, startPiece } from '../../logbook/entries';

function aSettling() {
  const grow = createFold();
  const shop = signal(grow([]));
  const outlooks = signal(new Map());
  const jobs: (() => void)[] = [];
  const { settled, stopSettling } = settle({ shop, outlooks, afterPaint: (job) => jobs.push(job) });
  const log = (...entries: Parameters<typeof grow>[0][]) => {
    for (const some of entries) shop.value = grow(some);
  };
  const paint = () => {
    for (const job of jobs.splice(0)) job();
  };
  return { shop, outlooks, settled, stopSettling, jobs, log, paint };
}

test('what follows from an entry comes after the screen, and then sees all that was logged until then', () => {
  const { shop, settled, jobs, log, paint } = aSettling();
  const before = settled.value;
  log([entry(1, startPiece())], [entry(2, layCoat())]);
  expect(settled.value).toBe(before);
  expect(jobs).toHaveLength(1); // once for both
  paint();
  expect(settled.value.shop).toBe(shop.value);
  log([entry(3, layCoat())]);
  paint();
  expect(settled.value.shop).toBe(shop.value);
});

test('what has not changed is not followed again', () => {
  const { outlooks, settled, jobs, paint } = aSettling();
  outlooks.value = new Map();
  paint();
  const after = settled.value;
  expect(after.outlooks).toBe(outlooks.value);
  expect(jobs).toHaveLength(0);
});

test('nothing follows once it has ended', () => {
  const { jobs, stopSettling, log } = aSettling();
  stopSettling();
  log([entry(1, startPiece())]);
  expect(jobs).toHaveLength(0);
});
