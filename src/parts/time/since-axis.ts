import { DAY_S, HOUR_S, MINUTE_S } from '../../units';
import { SINCE_WORDS } from '../../words/piece/since';

const TICKS = [
  { atS: MINUTE_S, label: SINCE_WORDS.ticks.minute },
  { atS: 10 * MINUTE_S, label: SINCE_WORDS.ticks.tenMinutes },
  { atS: HOUR_S, label: SINCE_WORDS.ticks.hour },
  { atS: DAY_S, label: SINCE_WORDS.ticks.day },
  { atS: 7 * DAY_S, label: SINCE_WORDS.ticks.week },
  { atS: 30 * DAY_S, label: SINCE_WORDS.ticks.month },
  { atS: 365 * DAY_S, label: SINCE_WORDS.ticks.year },
];

/** Ticks of the time since the last coat, on its logarithm in seconds: minutes and months both have room. */
export const timeTicks = (min: number, max: number) =>
  TICKS.map(({ atS, label }) => ({ at: Math.log10(atS), label })).filter(({ at }) => at >= min && at <= max);

/** Four or so round steps from the lowest to the highest value. */
export function roundTicks(lowest: number, highest: number, label: (value: number) => string) {
  const rough = (highest - lowest) / 4 || 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 2.5, 5, 10].find((one) => one * power >= rough) ?? 10) * power;
  const first = Math.ceil(lowest / step);
  const count = Math.floor(highest / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, n) => ({
    at: (first + n) * step,
    label: label((first + n) * step),
  }));
}
