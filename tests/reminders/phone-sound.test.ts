import { afterEach, beforeEach, expect, test, vi } from 'vitest';

let page: EventTarget;
let made: { state: string; resumed: number }[];
const BEHIND_MS = 2_000;
const tap = (): void => void page.dispatchEvent(new Event('pointerdown'));

beforeEach(async () => {
  vi.resetModules();
  vi.useFakeTimers();
  page = new EventTarget();
  made = [];
  vi.stubGlobal('addEventListener', page.addEventListener.bind(page));
  vi.stubGlobal(
    'AudioContext',
    class {
      state = 'suspended';
      resumed = 0;
      constructor() {
        made.push(this);
      }
      async resume(): Promise<void> {
        this.resumed++;
      }
    },
  );
  (await import('../../src/reminders/phone/ring')).armSound();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('a sound is made behind the first tap, never before one and never in it', () => {
  vi.advanceTimersByTime(60_000);
  expect(made).toEqual([]);
  tap();
  expect(made).toEqual([]);
  vi.advanceTimersByTime(BEHIND_MS);
  expect(made).toMatchObject([{ resumed: 1 }]);
});

test('two taps make one sound; where a browser wakes it only in a tap, the next one does, and once it runs no more', () => {
  tap();
  tap();
  vi.advanceTimersByTime(BEHIND_MS);
  const [sound] = made;
  expect(made).toHaveLength(1);
  const before = sound?.resumed ?? 0;
  tap();
  expect(sound?.resumed).toBe(before + 1);
  if (sound) sound.state = 'running';
  tap();
  tap();
  expect(sound?.resumed).toBe(before + 1);
  if (sound) sound.state = 'suspended';
  tap();
  expect(sound?.resumed).toBe(before + 1); // it is heard no more
});
