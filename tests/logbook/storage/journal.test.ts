import { afterEach, describe, expect, test, vi } from 'vitest';
import type { Row } from '../../../src/logbook/storage/database';
import { openJournal } from '../../../src/logbook/storage/journal/journal';
import { entry, id, startPiece } from '../entries';

const row = (n: number): Row => [id(n), entry(n, startPiece())];

describe('the journal, by its worker', () => {
  let posts: { number: number; name: string; question: unknown }[] = [];
  let worker: Worker | undefined;
  let isEnded = false;
  const post = vi.fn((message: (typeof posts)[number]) => void posts.push(message));
  const set = (hasPlace = true) => {
    [posts, worker, isEnded] = [[], undefined, false];
    vi.useFakeTimers();
    vi.stubGlobal('navigator', { storage: hasPlace ? { getDirectory: () => undefined } : undefined });
    vi.stubGlobal(
      'Worker',
      class {
        constructor() {
          worker = this as unknown as Worker;
        }
        postMessage = post;
        terminate = () => {
          isEnded = true;
        };
      },
    );
    return openJournal('coatwait');
  };
  const answer = (number: number, value: unknown) =>
    worker?.onmessage?.({ data: { number, value } } as MessageEvent);
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  test('gives each question its own answer', async () => {
    const journal = set();
    const [one, other, compared] = [journal.append([row(1)]), journal.append([row(2)]), journal.compare([])];
    expect(posts.map(({ number, name }) => [number, name])).toEqual([
      [0, 'coatwait'],
      [1, 'coatwait'],
      [2, 'coatwait'],
    ]);
    answer(2, { lost: [], size: 3 });
    answer(1, false);
    answer(0, true);
    answer(0, false); // said twice
    expect(await Promise.all([one, other, compared])).toEqual([true, false, { lost: [], size: 3 }]);
    journal.close();
    expect(isEnded).toBe(true);
  });

  test('has no copy to compare with where it only says that it is there', async () => {
    const compared = set().compare('all');
    answer(0, true);
    expect(await compared).toBeUndefined();
  });

  test('waits two seconds for what is to be kept, and a minute for a comparison', async () => {
    const journal = set();
    const said: string[] = [];
    void journal.append([row(1)]).then((isKept) => said.push(`kept ${isKept}`));
    void journal.compare([]).then((compared) => said.push(`compared ${compared}`));
    await vi.advanceTimersByTimeAsync(1_999);
    expect(said).toEqual([]);
    await vi.advanceTimersByTimeAsync(1);
    expect(said).toEqual(['kept false']);
    await vi.advanceTimersByTimeAsync(58_000);
    expect(said).toEqual(['kept false', 'compared undefined']);
  });

  test('answers with nothing where the worker fails, or what is said cannot be copied to it', async () => {
    const journal = set();
    const [one, compared] = [journal.append([row(1)]), journal.compare([])];
    worker?.onerror?.({} as ErrorEvent);
    expect(await Promise.all([one, compared])).toEqual([false, undefined]);
    post.mockImplementationOnce(() => {
      throw new DOMException('', 'DataCloneError');
    });
    expect(await journal.append([row(1)])).toBe(false);
  });

  test('is none where the browser has no place for it', async () => {
    const journal = set(false);
    expect([await journal.append([row(1)]), await journal.compare([]), worker]).toEqual([
      false,
      undefined,
      undefined,
    ]);
    journal.close();
  });
});
