import { signal } from '@preact/signals';
import { expect, onTestFinished, test, vi } from 'vitest';
import { whileBusy } from '../../../../src/parts/fields/form/while-busy';
import * as drawing from '../../../../src/parts/frame/draw-once';
import { NOT_SENT } from '../../../../src/words/common';

test('a form is busy while it is sent, and not after', async () => {
  const isBusy = signal(false);
  const sending = whileBusy(isBusy, async () => isBusy.value);
  expect(isBusy.value).toBe(true);
  expect(await sending).toBe(true);
  expect(isBusy.value).toBe(false);
});

test('a form that is done at once is drawn again when it is done, however it ended', async () => {
  const drawAgain = vi.fn();
  const held = vi.spyOn(drawing, 'holdDrawing').mockReturnValue(drawAgain);
  onTestFinished(() => held.mockRestore());
  const told = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  onTestFinished(() => told.mockRestore());
  const isBusy = signal(false);
  await whileBusy(isBusy, async () => expect(drawAgain).not.toHaveBeenCalled());
  expect(drawAgain).toHaveBeenCalledOnce();
  await whileBusy(isBusy, () => Promise.reject(new Error('lost')));
  expect(drawAgain).toHaveBeenCalledTimes(2);
});

test('a form whose code cannot be had says so, and can be sent again', async () => {
  const isBusy = signal(false);
  const told = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  onTestFinished(() => told.mockRestore());
  const lost = new TypeError('Failed to fetch dynamically imported module');
  const done = await whileBusy(isBusy, () => Promise.reject(lost));
  expect(done).toEqual({ ok: false, failure: { sentence: NOT_SENT, fields: {} } });
  expect(isBusy.value).toBe(false);
  expect(told).toHaveBeenCalledWith(lost);
});
