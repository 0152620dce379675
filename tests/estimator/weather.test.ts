import { describe, expect, test } from 'vitest';
import { createFilm } from '../../src/estimator/film';
import type { AirSpan, StackHistory } from '../../src/estimator/history';
import type { MobilityLaw } from '../../src/estimator/laws/law';
import { lastWetS, secondsTo } from '../../src/estimator/read-off';
import { simulate } from '../../src/estimator/simulate';
import { createWeather, overSpells } from '../../src/estimator/weather';
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

test('a moment that is asked for is reached in its own air, however long the steps are by then', () => {
  // Warm for fourteen hours, cool for ten.
  const air = nights.map((span, k) => ({ ...span, fromS: span.fromS + (k % 2) * 2 * HOUR_S }));
  const noon = 150 * DAY_S + 6 * HOUR_S;
  const midnight = 200 * DAY_S + 18 * HOUR_S;
  const { trace } = simulate({ ...history, air }, { untilS: 250 * DAY_S, profileAtS: [noon, midnight] });
  expect([noon, midnight].map((atS) => trace.airK[trace.timeS.indexOf(atS)])).toEqual([294.15, 289.15]);
  expect(trace.airK.some((airK) => airK > 290 && airK < 294)).toBe(true); // days and nights together
});

test('nights make it later than days alone, and sooner than nights alone', () => {
  const [level] = daysTo(nights) as [number];
  const [warm] = daysTo([{ fromS: 0, temperatureK: 294.15, transferMS: 1.2e-3 }]) as [number];
  const [cool] = daysTo([{ fromS: 0, temperatureK: 289.15, transferMS: 1.2e-3 }]) as [number];
  expect(level).toBeGreaterThan(warm);
  expect(level).toBeLessThan(cool);
});

test('before the first air that is known it is that of the usual shop, and that of the first span until the second', () => {
  // 21 °C in a gentle draught (common practice, no source).
  expect(createWeather([])(0, HOUR_S)).toMatchObject({
    temperatureK: 294.15,
    transferMS: 1.2e-3,
    endS: Number.POSITIVE_INFINITY,
    spells: [],
  });
  const weather = createWeather(nights);
  expect(weather(11 * HOUR_S, HOUR_S)).toMatchObject({ temperatureK: 294.15, endS: 12 * HOUR_S });
  expect(weather(12 * HOUR_S, HOUR_S)).toMatchObject({ temperatureK: 289.15, endS: 24 * HOUR_S });
  // A day looked ahead that nothing changes in is no mean of anything.
  const steady = [{ fromS: 0, temperatureK: 290, transferMS: 1e-3 }];
  expect(createWeather(steady)(0, 3 * DAY_S).spells).toEqual([]);
  // From the middle of a day on, two of them.
  const stretch = createWeather(nights)(6 * HOUR_S, 2.9 * DAY_S);
  expect(stretch.endS).toBe(54 * HOUR_S);
  expect(stretch.temperatureK).toBeCloseTo(291.65, 9);
  expect(stretch.transferMS).toBeCloseTo(0.95e-3, 12);
  expect(stretch.spells.map(({ share }) => share)).toEqual([0.5, 0.5]);
});

describe('a law over days and nights', () => {
  const film = createFilm(1);
  film.nodes = 2;
  // What it gives is the temperature, and as much more as the node is high.
  const law: MobilityLaw = {
    ratio: [1],
    at: (_, node, temperatureK) => temperatureK + node,
    fill(_, temperatureK, mobility) {
      mobility[0] = temperatureK;
      mobility[1] = temperatureK + 1;
    },
  };
  const filled = (spelled: MobilityLaw) => {
    const mobility = new Float64Array(3).fill(7);
    spelled.fill?.(film, 280, mobility);
    return [...mobility];
  };

  test('is the mean of what it is in each, and where it is told of none the law itself', () => {
    const spelled = overSpells(law);
    expect(spelled.ratio).toEqual([1]);
    expect(spelled.at(film, 1, 280, 0)).toBe(281);
    expect(filled(spelled)).toEqual([280, 281, 7]);
    spelled.spells = [
      { temperatureK: 300, share: 0.25 },
      { temperatureK: 280, share: 0.75 },
    ];
    expect(spelled.at(film, 1, 290, 0)).toBeCloseTo(286, 9);
    expect(filled(spelled)).toEqual([285, 286, 7].map((k) => expect.closeTo(k, 9)));
  });

  test('has no ratios where the law has none, and is not filled where that cannot be', () => {
    const spelled = overSpells({ at: law.at });
    expect('ratio' in spelled).toBe(false);
    expect(() => filled(spelled)).toThrow(TypeError);
  });
});
