import { afterEach, expect, test } from 'vitest';
import type { Entry } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { markIds, newId } from '../../../src/logbook/ids/new-id';
import { markOf, newMark } from '../../../src/logbook/ids/phone-mark';
import { byWhom } from '../../../src/shop/record/by-whom';

afterEach(() => markIds(''));
const named = (phone: string, name: string): Entry => ({
  id: newId(),
  v: 1,
  kind: 'phone-named',
  at: '2026-03-01T08:00:00.000Z',
  zone: 'Europe/Berlin',
  phone,
  name,
});

test('an entry says which phone logged it, once more than one has a name', () => {
  const [booth, wall] = [newMark(), newMark()];
  markIds(booth);
  const first = named(booth, 'Booth phone');
  const second = named(wall, 'Wall tablet');
  expect(byWhom(first.id, fold([first]))).toBeUndefined();
  expect(byWhom(first.id, fold([first, second]))).toBe('Booth phone');
  expect(byWhom(second.id, fold([first, second]))).toBe('Booth phone');
  const renamed = { ...named(booth, 'Spray room'), at: '2026-03-02T08:00:00.000Z' };
  expect(byWhom(first.id, fold([first, second, renamed]))).toBe('Spray room');
  markIds('');
  expect(byWhom(newId(), fold([first, second]))).toBeUndefined();
});

test('ids with a mark are unique, sort by the time they were made, and are ids to every app', () => {
  const mark = newMark();
  markIds(mark);
  const ids = Array.from({ length: 5_000 }, newId);
  expect(new Set(ids).size).toBe(ids.length);
  expect([...ids].sort()).toEqual(ids);
  for (const id of ids) expect(markOf(id)).toBe(mark);
  expect(ids[0]).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
});
