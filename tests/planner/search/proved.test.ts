import { expect, test } from 'vitest';
import { planBench } from '../../../src/planner/plan-bench';
import type { Piece, Step } from '../../../src/planner/step';
import { bench, coat, piece, utc, wait, window, working } from '../a-bench';

const NINE = utc('2026-03-02 09:00');
const pieces = (
  count: number,
  steps: (name: string, k: number) => readonly Step[],
  more: (k: number) => Partial<Piece> = () => ({}),
): Piece[] => Array.from({ length: count }, (_, k) => piece(`p${k}`, steps(`p${k}`, k), more(k)));

const twice = (gap: (id: string) => Step) => (name: string) => [
  coat(`${name}a`),
  gap(`${name}g`),
  coat(`${name}b`),
];
const thrice = (name: string, k: number) => [
  coat(`${name}a`, { minutes: 10 + k }),
  wait(`${name}v`, 60 + 5 * k),
  coat(`${name}b`),
  wait(`${name}w`, 60 - 5 * k),
  coat(`${name}c`),
];

// Pieces that are the same but for their names need not be tried in every order, and an order that begins too late is given up: so these
// are searched through, though they have from thousands to billions of orders.
test.each([
  { what: 'fourteen works alike', of: pieces(14, (name) => [bench(name, 20)]) },
  {
    what: 'seven pieces of two coats alike',
    of: pieces(
      7,
      twice((id) => wait(id, 60)),
    ),
  },
  {
    what: 'five alike with windows',
    of: pieces(
      5,
      twice((id) => window(id, 45, 240)),
    ),
  },
  { what: 'four pieces of three coats, no two alike', of: pieces(4, thrice) },
  {
    what: 'the same with days to rest',
    of: pieces(4, (name, k) => [...thrice(name, k), wait(`${name}e`, 2880)]),
  },
  {
    what: 'six pieces promised for different hours',
    of: pieces(
      6,
      (name) => [coat(`${name}a`), wait(`${name}w`, 30), bench(`${name}b`, 20)],
      (k) => ({ promised: NINE + 60 + 40 * ((k * 5) % 6) }),
    ),
  },
  {
    what: 'five pieces of two steps, no two alike',
    of: pieces(5, (name, k) => [
      coat(`${name}a`, { minutes: 10 + k }),
      wait(`${name}w`, 30 + 7 * k),
      bench(`${name}b`, 20 + k),
    ]),
  },
])('the best order of $what is proved', ({ of }) => {
  const plan = planBench({ now: NINE, working: working(9, 17), pieces: of });
  expect(plan.ok && plan.value.isProved).toBe(true);
});

test('of eight works, no two alike, the best order is not proved and found all the same: the shortest first', () => {
  const plan = planBench({
    now: NINE,
    working: working(9, 17),
    pieces: pieces(8, (name, k) => [bench(name, 27 - k)]),
  });
  if (!plan.ok) throw new Error('There is a plan.');
  expect(plan.value.isProved).toBe(false);
  const starts = plan.value.steps.map(({ start }) => start);
  expect(starts).toEqual([...starts].sort((a, b) => b - a));
});
