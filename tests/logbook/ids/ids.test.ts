import { afterEach, describe, expect, test } from 'vitest';
import { isId } from '../../../src/logbook/entry';
import { isOwnId, markIds, newId } from '../../../src/logbook/ids/new-id';
import { inOrder } from '../../../src/logbook/ids/order';
import { markOf, newMark } from '../../../src/logbook/ids/phone-mark';
import { clockSaidMs, loggedMs } from '../../../src/logbook/time/clock';
import { entry, layCoat } from '../entries';

afterEach(() => markIds(''));

describe('the mark of a phone', () => {
  test('is ten signs, another for every phone', () => {
    const marks = Array.from({ length: 200 }, newMark);
    for (const mark of marks) expect(mark).toMatch(/^[0-9a-f]{10}$/);
    expect(new Set(marks).size).toBe(200);
  });

  test('stands at the end of what is logged on it, in an id like any other', () => {
    const before = newId();
    markIds('17c0ffee01');
    const ids = Array.from({ length: 100 }, newId);
    for (const one of ids) expect([markOf(one), isId(one), isOwnId(one)]).toEqual(['17c0ffee01', true, true]);
    expect(ids.toSorted()).toEqual(ids);
    expect(isOwnId(before)).toBe(false);
  });

  test('of a phone that works alone is none: everything is its own', () => {
    expect([isOwnId(newId()), isId(newId())]).toEqual([true, true]);
  });
});

test('entries stand in the order in which they happened, then in which they were logged', () => {
  const [one, other, later] = [entry(2, layCoat(), 5), entry(1, layCoat(), 5), entry(0, layCoat(), 6)];
  expect([one, later, other].toSorted(inOrder)).toEqual([other, one, later]);
  expect(inOrder(one, { ...one })).toBe(0);
});

// RFC 9562, appendix A.6: 017F22E2-79B0-7CC3-98C4-DC0C0C07398F was made on 22 February 2022, 19:22:22 UTC (14:22:22 -05:00).
test('an id says when it was made', () => {
  expect(loggedMs('017f22e2-79b0-7cc3-98c4-dc0c0c07398f')).toBe(Date.UTC(2022, 1, 22, 19, 22, 22));
  expect(loggedMs('')).toBe(0);
  const beforeMs = Date.now();
  const saidMs = loggedMs(newId());
  expect(saidMs).toBeGreaterThanOrEqual(beforeMs);
  expect(saidMs).toBeLessThanOrEqual(Date.now());
});

test('the clock said the latest of when something happened and when it was logged', () => {
  const last = entry(1, layCoat(), Date.UTC(2022, 1, 22, 20));
  const newest = '017f22e2-79b0-7cc3-98c4-dc0c0c07398f';
  expect(clockSaidMs({ newest, last })).toBe(Date.UTC(2022, 1, 22, 20));
  expect(clockSaidMs({ newest, last: { ...last, at: '2022-02-22T19:00:00.000Z' } })).toBe(
    Date.UTC(2022, 1, 22, 19, 22, 22),
  );
  expect(clockSaidMs({ newest, last: undefined })).toBe(Date.UTC(2022, 1, 22, 19, 22, 22));
  expect(clockSaidMs({ newest: '', last: undefined })).toBe(0);
});

test('ids sort by the time they were made', () => {
  const ids = Array.from({ length: 1000 }, newId);
  expect(ids.toSorted()).toEqual(ids);
  expect(new Set(ids).size).toBe(1000);
});
