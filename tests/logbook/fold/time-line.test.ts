import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createTimeLine } from '../../../src/logbook/fold/time-line';
import { inOrder } from '../../../src/logbook/ids/order';
import { entry, layCoat } from '../entries';

const DAY_1_MS = Date.parse('2026-03-01T08:00:00.000Z');
const anEntry = (n: number, minutes: number) => entry(n, layCoat(), DAY_1_MS + minutes * 60_000);
const minutes = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 40 });

test('entries that come a few at a time, in whatever order, are a map in time order', () => {
  fc.assert(
    fc.property(
      minutes,
      fc.integer({ min: 1, max: 6 }),
      fc.integer({ min: 1, max: 5 }),
      (some, most, size) => {
        const line = createTimeLine(most);
        const all = some.map((at, n) => anEntry(n + 1, at));
        for (let taken = 0; taken < all.length; taken += size) {
          const held = line.entries;
          const before = [...held];
          line.add(all.slice(taken, taken + size).sort(inOrder));
          const known = all.slice(0, taken + size).sort(inOrder);
          expect([...held]).toEqual(before); // whoever holds it sees no change
          expect([...line.entries]).toEqual(known.map((one) => [one.id, one]));
          expect([...line.entries.values()]).toEqual(known);
          expect([...line.entries.keys()]).toEqual(known.map(({ id }) => id));
          expect(line.entries.size).toBe(known.length);
          for (const one of known) expect(line.entries.get(one.id)).toBe(one);
          for (const one of all) expect(line.entries.has(one.id)).toBe(known.includes(one));
          const visited: unknown[] = [];
          line.entries.forEach((value, key, map) => {
            visited.push([key, value, map === line.entries]);
          });
          expect(visited).toEqual(known.map((one) => [one.id, one, true]));
        }
      },
    ),
  );
});
