import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keep, keepText, kept, keptText } from '../../../src/actions/keep/kept-text';

const store = new Map<string, string>();
beforeEach(() => {
  store.clear();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, value: string) => void store.set(key, value),
    removeItem: (key: string) => void store.delete(key),
  });
});
afterEach(() => void vi.unstubAllGlobals());

test('what is kept is there again, and gone once it is dropped', () => {
  keep('a', { n: 1 });
  keepText('b', 'units');
  expect([kept('a'), keptText('b')]).toEqual([{ n: 1 }, 'units']);
  keep('a', undefined);
  expect([kept('a'), keptText('a'), store.has('a')]).toEqual([undefined, null, false]);
});

test('what lies there and is not ours is nothing', () => {
  store.set('a', 'no text of ours');
  store.set('b', 'null');
  expect([kept('a'), kept('b')]).toEqual([undefined, undefined]);
});

test('where the browser keeps nothing, nothing breaks', () => {
  const refuse = () => {
    throw new DOMException('', 'SecurityError');
  };
  vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse, removeItem: refuse });
  keep('a', { n: 1 });
  keep('a', undefined);
  keepText('b', 'units');
  expect([kept('a'), keptText('b')]).toEqual([undefined, null]);
});
