import { expect, test } from 'vitest';
import type { AirSpan, StackHistory } from '../../src/estimator/history';
import { createKeptStacks } from '../../src/estimator/kept-stacks';
import { runEstimate } from '../../src/estimator/run-estimate';
import { toKelvin } from '../../src/units';
import { DAY_S, HOUR_S, stack } from './stacks';

/** Days and nights, as a forecast lays them out. */
const nights: readonly AirSpan[] = Array.from({ length: 200 }, (_, k) => ({
  fromS: k * 12 * HOUR_S,
  temperatureK: toKelvin(k % 2 === 0 ? 21 : 15),
  transferMS: 1.2e-3,
}));
const nowS = 1.9 * DAY_S + 1234;
const base: StackHistory = { ...stack({ coats: 6 }), air: nights };
const reading: AirSpan = { fromS: nowS + 600, temperatureK: toKelvin(27), transferMS: 1.8e-3 };
const withReading: StackHistory = {
  ...base,
  air: [
    ...nights.filter(({ fromS }) => fromS < reading.fromS),
    reading,
    ...nights.filter(({ fromS }) => fromS > reading.fromS + 8 * HOUR_S),
  ],
};
const coat = { ...(base.events.at(-1) as Extract<StackHistory['events'][number], { kind: 'coat' }>) };
const withCoat: StackHistory = { ...base, events: [...base.events, { ...coat, atS: nowS + 1800 }] };
const withoutLast: StackHistory = { ...base, events: base.events.slice(0, -1) };
const backDated: StackHistory = {
  ...base,
  events: [...base.events.slice(0, 2), { ...coat, atS: 5 * HOUR_S }, ...base.events.slice(2)],
};
const warmerAllAlong: StackHistory = { ...base, air: nights.map((span) => ({ ...span, temperatureK: 300 })) };

const ask = (history: StackHistory, atS: number) => ({ history, nowS: atS, checks: [], stack: 'a' });

test.each([
  ['nothing new', base],
  ['a new reading', withReading],
  ['one coat more', withCoat],
  ['the last coat undone', withoutLast],
  ['a coat dated back', backDated],
  ['other air from the start', warmerAllAlong],
] as const)('what is gone on from gives to the bit what is marched from the start: %s', (_, history) => {
  const kept = createKeptStacks();
  runEstimate(ask(base, nowS), kept);
  const request = ask(history, nowS + HOUR_S);
  expect(runEstimate(request, kept)).toEqual(runEstimate(request, createKeptStacks()));
});

test('a mark is never gone on from where anything before it is different', () => {
  const kept = createKeptStacks();
  runEstimate(ask(base, nowS), kept);
  const run = '0 0 ';
  const [beforeLast, last] = base.events.slice(-2).map(({ atS }) => atS) as [number, number];
  expect(kept.markOf('a', run, base)).toMatchObject({ nowS: last, eventsDone: 5 });
  expect(kept.markOf('a', run, withReading)?.nowS).toBe(last);
  expect(kept.markOf('a', run, withCoat)?.eventsDone).toBe(5);
  expect(kept.markOf('a', run, withoutLast)).toMatchObject({ nowS: beforeLast, eventsDone: 4 });
  const otherLast = { ...base, events: [...withoutLast.events, { ...coat, atS: last + HOUR_S }] };
  expect(kept.markOf('a', run, otherLast)?.nowS).toBe(last);
  expect(kept.markOf('a', run, backDated)).toBeUndefined();
  expect(kept.markOf('a', run, warmerAllAlong)).toBeUndefined();
  expect(kept.markOf('a', run, { ...base, openBaseM: 1e-5 })).toBeUndefined();
  expect(kept.markOf('a', run, { ...base, binder: { ...base.binder, tgK: 320 } })).toBeUndefined();
  expect(kept.markOf('another', run, base)).toBeUndefined();
});

test('what was looked at longest ago goes when there is too much', () => {
  const kept = createKeptStacks(100_000);
  for (const name of ['a', 'b', 'c', 'd']) runEstimate({ ...ask(base, nowS), stack: name }, kept);
  expect(kept.markOf('a', '0 0 ', base)).toBeUndefined();
  expect(kept.markOf('d', '0 0 ', base)).toBeDefined();
});

test('solvent is conserved over a mark', async () => {
  const { simulate } = await import('../../src/estimator/simulate');
  const first = simulate(base, { untilS: 40 * DAY_S });
  for (const from of first.marks) {
    const { laid, evaporated, sanded, held } = simulate(withReading, { untilS: 40 * DAY_S, from }).balance;
    for (const [i, put] of laid.entries())
      expect(((evaporated[i] as number) + (sanded[i] as number) + (held[i] as number)) / put).toBeCloseTo(
        1,
        9,
      );
  }
});

test('a stack that is looked at again and again pushes no other out', () => {
  const kept = createKeptStacks(100_000);
  runEstimate({ ...ask(base, nowS), stack: 'a' }, kept);
  for (let k = 0; k < 6; k++) runEstimate({ ...ask(base, nowS + k), stack: 'b' }, kept);
  expect(kept.markOf('a', '0 0 ', base)).toBeDefined();
  expect(kept.markOf('b', '0 0 ', base)).toBeDefined();
});
