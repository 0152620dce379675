import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createBusy } from '../../../src/planner/search/busy';
import { createOpenings } from '../../../src/planner/search/openings';
import { joined, overlap, type Span, without } from '../../../src/planner/span';

// Held against going through every minute, which shares no reasoning with the binary searches.

const DAY = 40;
const DAYS = 6;
const stretch = fc
  .tuple(fc.integer({ min: 0, max: DAY - 1 }), fc.integer({ min: 1, max: 25 }))
  .map(([from, length]) => ({ from, to: from + length }));
/** Each day's stretches in order; late ones run on into the next day. */
const week = fc.array(fc.array(stretch, { maxLength: 2 }), { minLength: DAYS, maxLength: DAYS });

const inOrder = (spans: readonly Span[]) => [...spans].sort((a, b) => a.from - b.from || a.to - b.to);
const ofDay = (days: readonly (readonly Span[])[], day: number): Span[] =>
  joined(inOrder(days[day] ?? [])).map(({ from, to }) => ({ from: day * DAY + from, to: day * DAY + to }));
const minutesOf = (spans: readonly Span[]): Set<number> =>
  new Set(spans.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, i) => from + i)));
const all = (days: readonly (readonly Span[])[]) => minutesOf(days.flatMap((_, day) => ofDay(days, day)));
const covers = (open: Set<number>, from: number, length: number) =>
  Array.from({ length }, (_, i) => from + i).every((minute) => open.has(minute));

function firstFit(isFit: (at: number) => boolean, from: number): number {
  for (let at = from; at < (DAYS + 2) * DAY; at++) if (isFit(at)) return at;
  return Number.POSITIVE_INFINITY;
}

describe('the first time when something fits', () => {
  test('into the openings, asked in any order', () => {
    fc.assert(
      fc.property(
        week,
        fc.array(fc.tuple(fc.nat(DAYS * DAY), fc.integer({ min: 1, max: 30 })), {
          minLength: 1,
          maxLength: 8,
        }),
        (days, asked) => {
          const open = all(days);
          const openings = createOpenings((day) => ofDay(days, day), 0, DAYS - 1);
          for (const [from, minutes] of asked)
            expect(openings.fit(from, minutes)).toBe(firstFit((at) => covers(open, at, minutes), from));
        },
      ),
      { numRuns: 500 },
    );
  });

  test('between what the person has been given to do, with the move after it', () => {
    const job = fc.tuple(fc.nat(DAYS * DAY), fc.integer({ min: 1, max: 12 }), fc.nat(5));
    fc.assert(
      fc.property(week, fc.array(job, { minLength: 1, maxLength: 12 }), (days, jobs) => {
        const open = all(days);
        const openings = createOpenings((day) => ofDay(days, day), 0, DAYS - 1);
        const busy = createBusy();
        const taken = new Set<number>();
        const isFree = (from: number, length: number) =>
          Array.from({ length }, (_, i) => from + i).every((minute) => !taken.has(minute));
        for (const [from, minutes, move] of jobs) {
          const isFit = (at: number) => covers(open, at, minutes) && isFree(at, minutes + move);
          const at = firstFit(isFit, from);
          expect(busy.fit(openings, from, minutes, move)).toBe(at);
          if (at === Number.POSITIVE_INFINITY) continue;
          busy.take(at, at + minutes + move);
          for (let minute = at; minute < at + minutes + move; minute++) taken.add(minute);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('of spans', () => {
  const spans = fc.array(stretch, { maxLength: 4 });
  const sorted = (of: Set<number>) => [...of].sort((a, b) => a - b);

  test('what is in both, what is left, and the whole of those that touch hold the same minutes', () => {
    fc.assert(
      fc.property(spans, spans, (some, others) => {
        const ones = joined(inOrder(some));
        const two = joined(inOrder(others));
        const [a, b] = [minutesOf(some), minutesOf(others)];
        expect(sorted(minutesOf(ones))).toEqual(sorted(a));
        expect(sorted(minutesOf(overlap(ones, two)))).toEqual(
          sorted(new Set([...a].filter((it) => b.has(it)))),
        );
        expect(sorted(minutesOf(without(ones, others)))).toEqual(
          sorted(new Set([...a].filter((it) => !b.has(it)))),
        );
        for (const span of [...overlap(ones, two), ...without(ones, others)])
          expect(span.from).toBeLessThan(span.to);
        ones.slice(1).forEach(({ from }, i) => {
          expect(from).toBeGreaterThan(ones[i]?.to ?? 0);
        });
      }),
      { numRuns: 500 },
    );
  });
});
