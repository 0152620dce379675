import { expect, test } from 'vitest';
import type { AirSpan, StackHistory } from '../../src/estimator/history';
import { lastWetS, secondsTo } from '../../src/estimator/read-off';
import { simulate } from '../../src/estimator/simulate';
import { createWeather } from '../../src/estimator/weather';
import { DAY_S, HOUR_S, stack } from './stacks';

const DAYS = 300;
/** Warm from eight to eight, cool by night. */
const nights: AirSpan[] = Array.from({ length: 2 * DAYS }, (_, k) => ({
  fromS: k * 12 * HOUR_S,
  temperatureK: k % 2 === 0 ? 294.15 : 289.15,
  transferMS: k % 2 === 0 ? 1.2e-3 : 0.7e-3,
}));
const history: StackHistory = { ...stack({ coats: 12 }), air: nights };

function daysTo(air: readonly AirSpan[], profileAtS: readonly number[] = []): number[] {
  const of = { ...history, air };
  const { trace } = simulate(of, { untilS: lastWetS(of) + 250 * DAY_S, profileAtS });
  return (['level', 'rubOut', 'settled'] as const).map(
    (milestone) => secondsTo(trace, of, milestone) / DAY_S,
  );
}

test('a stretch of whole days is made of its days and nights', () => {
  const stretch = createWeather(nights)(0, 2.4 * DAY_S);
  expect(stretch.endS).toBe(2 * DAY_S);
  expect(stretch.spells).toEqual([
    { temperatureK: 294, share: 0.5 },
    { temperatureK: 289, share: 0.5 },
  ]);
});

test('a stretch is as warm and as airy as its spans are on average, the last of them without end', () => {
  const air = [
    { fromS: 0, temperatureK: 294.15, transferMS: 2e-3 },
    { fromS: 12 * HOUR_S, temperatureK: 289.15, transferMS: 1e-3 },
  ];
  const stretch = createWeather(air)(0, 2.4 * DAY_S);
  expect(stretch.temperatureK).toBeCloseTo(290.4, 9); // a quarter and three quarters of two days, by hand
  expect(stretch.transferMS).toBeCloseTo(1.25e-3, 12);
  expect(stretch.spells.map(({ share }) => share)).toEqual([0.25, 0.75]);
});

test('a short step ends where the air changes', () => {
  const stretch = createWeather(nights)(HOUR_S, HOUR_S);
  expect(stretch).toMatchObject({ temperatureK: 294.15, endS: 12 * HOUR_S, spells: [] });
});

test('taking nights together moves no date by more than 1 %', () => {
  const together = daysTo(nights);
  // Looked at every six hours, no step can span a night.
  const looks = Array.from({ length: 4 * 250 }, (_, k) => k * 6 * HOUR_S);
  const apart = daysTo(nights, looks);
  for (const [k, days] of together.entries())
    expect(Math.abs(days / (apart[k] as number) - 1)).toBeLessThan(0.01);
});

test('nights make it later than days alone, and sooner than nights alone', () => {
  const [level] = daysTo(nights) as [number];
  const [warm] = daysTo([{ fromS: 0, temperatureK: 294.15, transferMS: 1.2e-3 }]) as [number];
  const [cool] = daysTo([{ fromS: 0, temperatureK: 289.15, transferMS: 1.2e-3 }]) as [number];
  expect(level).toBeGreaterThan(warm);
  expect(level).toBeLessThan(cool);
});
