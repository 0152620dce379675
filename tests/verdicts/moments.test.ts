import { describe, expect, test } from 'vitest';
import type { Milestone } from '../../src/estimator/estimate';
import { bandMs, isSanded, momentsOf } from '../../src/verdicts/moments';
import { DAY, momentsAt, T0 } from './some-facts';

const sanded = (stage: 'scuff' | 'level' | 'rub-out', day: number) =>
  ({ stage, atMs: T0 + day * DAY, removed: {} as never }) as const;
const stateOf = (name: Milestone, days: number, ...sandings: ReturnType<typeof sanded>[]) =>
  momentsAt(T0 + days * DAY, { sandings }).find((moment) => moment.name === name)?.state;

// Level-sand 10-14-20 days after the last coat, rub out 14-21-28.
describe('how far a moment has come', () => {
  test.each([
    { days: 9.99, state: 'waiting' },
    { days: 10, state: 'perhaps' },
    { days: 13.99, state: 'perhaps' },
    { days: 14, state: 'reached' },
  ])('after $days days it is $state', ({ days, state }) => {
    expect(stateOf('level', days)).toBe(state);
  });

  test('it is done with the act that it allows, and with those before it', () => {
    const states = (...done: ReturnType<typeof sanded>[]) =>
      (['touch', 'recoat', 'level', 'rubOut', 'settled'] as const).map((name) => stateOf(name, 15, ...done));
    expect(states()).toEqual(['reached', 'reached', 'reached', 'perhaps', 'waiting']);
    expect(states(sanded('scuff', 1))).toEqual(states());
    expect(states(sanded('level', 14))).toEqual(['reached', 'done', 'done', 'perhaps', 'waiting']);
    expect(states(sanded('rub-out', 14))).toEqual(['reached', 'done', 'done', 'done', 'waiting']);
    expect(states(sanded('level', -1))).toEqual(states()); // below the last coat
  });
});

test('a film is sanded by what came after its last coat', () => {
  const film = (...days: number[]) => ({
    coats: [{ atMs: T0 }],
    sandings: days.map((day) => sanded('level', day)),
  });
  expect([film(), film(-1), film(0), film(1)].map((one) => isSanded(one, 'level'))).toEqual([
    false,
    false,
    false,
    true,
  ]);
  expect(isSanded(film(1), 'scuff')).toBe(false);
  expect(isSanded({ coats: [], sandings: [sanded('level', 0)] }, 'level')).toBe(true);
});

test('only what hardens by a law of its own is settled by its cure', () => {
  const band = { earliestS: 1, likelyS: 2, lateS: 3 };
  const milestones = { touch: band, recoat: band, level: band, rubOut: band, settled: band };
  const isCure = (law?: object) =>
    momentsOf(
      { coats: [], sandings: [] },
      { startMs: T0, estimate: { milestones, ...(law && { law }) } as never },
      T0,
    ).map((moment) => moment.isCure);
  expect(isCure()).toEqual([undefined, undefined, undefined, undefined, undefined]);
  expect(isCure({})).toEqual([undefined, undefined, undefined, undefined, true]);
  expect(momentsOf({ coats: [], sandings: [] }, undefined, T0)).toEqual([]);
});

test('the times of a moment are whole minutes, up: plan and reminders count in them, and no page says it is so sooner', () => {
  const never = Number.POSITIVE_INFINITY;
  expect(bandMs(30_000, { earliestS: 30, likelyS: 90.5, lateS: never })).toEqual({
    earliestMs: 60_000,
    likelyMs: 180_000,
    lateMs: never,
  });
});
