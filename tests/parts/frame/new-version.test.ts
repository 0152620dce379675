import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepForOffline, newVersion } from '../../../src/parts/frame/new-version';

/** A worker that waits, as the page sees it, and what the page asked of it. */
function phoneWithNewer() {
  const asked: unknown[] = [];
  const waiting = { state: 'installed', postMessage: (message: unknown) => asked.push(message) };
  const workers = Object.assign(new EventTarget(), {
    controller: {},
    register: async () =>
      Object.assign(new EventTarget(), { waiting, installing: null, active: { postMessage() {} } }),
  });
  const reload = vi.fn();
  vi.stubGlobal('navigator', { serviceWorker: workers });
  vi.stubGlobal('location', { reload });
  return { asked, waiting, workers, reload };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const CALL = { type: 'SKIP_WAITING' };

test('a newer version whose call went unheard while the one in use was busy is called again', async () => {
  const { asked, waiting, workers, reload } = phoneWithNewer();
  await keepForOffline(() => {});
  expect(asked).toEqual([]); // only when the person says so
  newVersion.value?.();
  expect(asked).toEqual([CALL]);
  vi.advanceTimersByTime(2500);
  expect(asked).toEqual([CALL, CALL, CALL]);
  waiting.state = 'activated';
  vi.advanceTimersByTime(2500);
  expect(asked).toHaveLength(3);
  expect(reload).not.toHaveBeenCalled();
  workers.dispatchEvent(new Event('controllerchange'));
  expect(reload).toHaveBeenCalledOnce();
});

test('one that has taken over meanwhile is shown at once', async () => {
  const { asked, waiting, reload } = phoneWithNewer();
  await keepForOffline(() => {});
  waiting.state = 'activated';
  newVersion.value?.();
  expect(asked).toEqual([]);
  expect(reload).toHaveBeenCalledOnce();
});
