import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { afterPaint } from '../../src/actions/after-paint';

const frames = new Map<number, () => void>();
beforeEach(() => {
  vi.useFakeTimers();
  frames.clear();
  vi.stubGlobal('requestAnimationFrame', (job: () => void) => {
    frames.set(frames.size + 1, job);
    return frames.size;
  });
  vi.stubGlobal('cancelAnimationFrame', (frame: number) => void frames.delete(frame));
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});
const draw = (): void => {
  for (const [frame, job] of [...frames]) {
    frames.delete(frame);
    job();
  }
};

test('it is done once, in a task of its own after the frame', () => {
  const job = vi.fn();
  afterPaint(job);
  draw();
  expect(job).not.toHaveBeenCalled();
  vi.advanceTimersByTime(0);
  expect(job).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(5000);
  expect(job).toHaveBeenCalledTimes(1);
});

test('a hidden page is not drawn: then it is done after the limit, and not again when the page is seen', () => {
  const job = vi.fn();
  afterPaint(job, 1000);
  vi.advanceTimersByTime(999);
  expect(job).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  draw();
  vi.advanceTimersByTime(5000);
  expect(job).toHaveBeenCalledTimes(1);
});
