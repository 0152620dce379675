import { describe, expect, test } from 'vitest';
import { checkMarginK } from '../../src/estimator/belief';
import { type RawEstimate, settledLast } from '../../src/estimator/estimate';
import type { StackEvent, StackHistory } from '../../src/estimator/history';
import { at, growing, lastWetS, secondsTo } from '../../src/estimator/read-off';
import type { Trace } from '../../src/estimator/trace';
import { stack } from './stacks';

const NEVER = Number.POSITIVE_INFINITY;

/** A trace looked at every hundred seconds, in a room of 300 K; hardness is told as kelvin above the room. */
function traced(biteK: readonly number[], baseK = biteK, surfaceK = biteK): Trace {
  const above = (column: readonly number[]) => column.map((k) => 300 + k);
  return {
    timeS: biteK.map((_, k) => 100 * k),
    surfaceTgK: above(surfaceK),
    biteTgK: above(biteK),
    baseTgK: above(baseK),
    heldM: biteK.map(() => 0),
    airK: biteK.map(() => 300),
    filmK: biteK.map(() => 300),
  };
}
/** One coat, or none but that which was there, in that room. */
const laidAt = (atS: number): StackHistory => {
  const one = stack({ coats: 1 });
  return { ...one, sandingK: 300, events: one.events.map((event) => ({ ...event, atS })) };
};

// Thresholds above or below the room, K: common practice, no source (read-off.ts). Between two steps a moment lies where the straight line has it.
test.each([
  { milestone: 'touch', biteK: [-74, -64, -44], is: 150 },
  { milestone: 'recoat', biteK: [-34, -24, -4], is: 150 },
  { milestone: 'level', biteK: [-12, -2, 18], is: 150 },
  { milestone: 'rubOut', biteK: [-8, 2, 22], is: 150 },
  { milestone: 'level', biteK: [8, 9, 10], is: 100 },
  { milestone: 'level', biteK: [0, 8, 10], is: 100 },
  { milestone: 'level', biteK: [0, 2, 7], is: NEVER },
  // The first time is told, though it softens again.
  { milestone: 'level', biteK: [-9, 0, 12, 0, 20], is: 100 + (100 * 8) / 12 },
] as const)('$milestone of a film that goes $biteK comes after $is s', ({ milestone, biteK, is }) => {
  expect(secondsTo(traced(biteK), laidAt(0), milestone)).toBeCloseTo(is, 9);
});

test('what was past it before the last coat does not count, nor does the time before that coat', () => {
  expect(secondsTo(traced([20, 20, 0, 4, 12]), laidAt(150), 'level')).toBeCloseTo(200, 9);
  // Laid between two steps, and past it at the next.
  expect(secondsTo(traced([0, 0, 20]), laidAt(150), 'level')).toBeCloseTo(50, 9);
});

// The base is settled at the last time on that it hardens, and never before the film may be rubbed out.
test.each([
  { what: 'softened and hard again', baseK: [5, -5, -5, 5, 5], biteK: [20, 20, 20, 20, 20], is: 250 },
  { what: 'hard all along', baseK: [5, 5, 5, 5, 5], biteK: [0, 0, 0, 6, 18], is: 350 },
  { what: 'soft at the end', baseK: [5, -5, 5, 5, -5], biteK: [20, 20, 20, 20, 20], is: NEVER },
  { what: 'just at its room', baseK: [-5, -5, -5, -5, 0], biteK: [20, 20, 20, 20, 20], is: 400 },
  { what: 'never rubbed out', baseK: [5, 5, 5, 5, 5], biteK: [0, 0, 0, 0, 0], is: NEVER },
])('a base that is $what settles after $is s', ({ baseK, biteK, is }) => {
  expect(secondsTo(traced(biteK, baseK), laidAt(0), 'settled')).toBeCloseTo(is, 9);
});

test('a flash coat wets a film as a coat does, sanding does not', () => {
  const one = stack({ coats: 2 });
  const flash: StackEvent = { kind: 'flash', atS: 90_000, solventM: [1e-6] };
  const sand: StackEvent = { kind: 'sand', atS: 95_000, removedM: 1e-6 };
  expect(lastWetS(one)).toBe(7200);
  expect(lastWetS({ ...one, events: [...one.events, sand] })).toBe(7200);
  expect(lastWetS({ ...one, events: [...one.events, flash, sand] })).toBe(90_000);
});

describe('a column at a moment', () => {
  const trace = traced([0, 10, 40, 40]);
  test.each([
    { atS: -50, is: 300 },
    { atS: 0, is: 300 },
    { atS: 50, is: 305 },
    { atS: 100, is: 310 },
    { atS: 150, is: 325 },
    { atS: 300, is: 340 },
    { atS: 900, is: 340 },
  ])('at $atS s is $is', ({ atS, is }) => {
    expect(at(trace, trace.biteTgK, atS)).toBeCloseTo(is, 9);
  });

  test('of one step is that step, of none nothing', () => {
    const one = traced([7]);
    expect(at(one, one.biteTgK, 50)).toBe(307);
    expect(at(traced([]), [], 50)).toBe(0);
  });
});

test('times grow by one ratio from the first to the last, and never fall', () => {
  expect(growing(1, 27, 4).map((time) => Math.round(time * 1e9) / 1e9)).toEqual([1, 3, 9, 27]);
  expect(growing(60, 30, 3)).toEqual([60, 60, 60]);
});

// A thumb asks for -21 K above the air; paper for 8 K and a nose for 12 K above the room of sanding, here 5 K colder than the air.
test.each([
  { check: 'print', is: 10 + 21 },
  { check: 'gum', is: 15 - 8 },
  { check: 'smell', is: 15 - 12 },
] as const)('a film 10 K above the air is $is K past what $check asks', ({ check, is }) => {
  const past = checkMarginK(traced([0, 20]), { atS: 50, test: check, passes: true }, 295);
  expect(past).toBeCloseTo(is, 9);
});

test('no end of the band of what is settled comes before that of rubbing out', () => {
  const band = (earliestS: number, likelyS: number, lateS: number) => ({ earliestS, likelyS, lateS });
  const any = band(1, 2, 3);
  const milestones: RawEstimate['milestones'] = {
    touch: any,
    recoat: any,
    level: any,
    rubOut: band(10, 20, 30),
    settled: band(5, 25, NEVER),
  };
  expect(settledLast(milestones)).toEqual({ ...milestones, settled: band(10, 25, NEVER) });
});
