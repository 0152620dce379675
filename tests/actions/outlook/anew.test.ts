import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { anew } from '../../../src/actions/outlook/anew';

function following() {
  const shop = signal(0);
  const clock = signal(0);
  const waiting: (() => void)[] = [];
  const done: number[] = [];
  const stop = anew({
    goBy() {
      shop.value;
      clock.value;
    },
    job: () => void done.push(shop.value),
    beforeDrawing: (job) => waiting.push(job),
  });
  const draw = (): void => {
    for (const job of waiting.splice(0)) job();
  };
  return { shop, clock, waiting, done, draw, stop };
}

test('a coat moves the clock as well, and all is judged once', () => {
  const { shop, clock, waiting, done, draw } = following();
  draw();
  shop.value = 1;
  clock.value = 5;
  shop.value = 2;
  expect(done).toEqual([0]);
  expect(waiting).toHaveLength(1);
  draw();
  expect(done).toEqual([0, 2]);
  clock.value = 6;
  draw();
  expect(done).toEqual([0, 2, 2]);
});

test('what is over does nothing more, nor what it still had to do', () => {
  const { shop, done, draw, stop } = following();
  draw();
  shop.value = 1;
  stop();
  draw();
  shop.value = 2;
  draw();
  expect(done).toEqual([0]);
});
