import { USUAL_SHOP } from '../../estimator/usual-shop';
import type { Shop } from '../../logbook/fold/fold';
import { DAY_MS } from '../../units';
import { AIR_AHEAD_MS, airAsRead, airLog } from '../air/air-between';

/** Days in the shop's own air, counted as days at 21 °C. */
export interface CountedDays {
  readonly days: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** When {@link TRADE_DAYS} of them are over, by the likely count and the forecast; undefined beyond what is looked at. */
  readonly overMs: number | undefined;
}

/** So many kelvin colder take twice as long (common practice, no source). */
const DOUBLING_K = { low: 8, likely: 10, high: 12 } as const;
/** What the trade gives a thin lacquer before it is rubbed out: 14 to 28 days, 21 as a rule (common practice, no source). */
export const TRADE_DAYS = 21;

/** The rule of thumb for a cold shop: how many days at 21 °C the days since an instant have been worth. */
export function countedDays(
  { airReadings, forecast }: Pick<Shop, 'airReadings' | 'forecast'>,
  fromMs: number,
  nowMs: number,
): CountedDays {
  const spans = airLog(airAsRead(airReadings, fromMs), forecast, fromMs, nowMs + AIR_AHEAD_MS);
  const sum = { low: 0, likely: 0, high: 0 };
  let whole = 0;
  let overMs: number | undefined;
  for (const [index, { atMs, temperatureK }] of spans.entries()) {
    const endMs = spans[index + 1]?.atMs ?? nowMs + AIR_AHEAD_MS;
    const worth = (doublingK: number): number => 2 ** ((temperatureK - USUAL_SHOP.temperatureK) / doublingK);
    const gone = Math.max(0, Math.min(endMs, nowMs) - atMs) / DAY_MS;
    for (const end of ['low', 'likely', 'high'] as const) sum[end] += gone * worth(DOUBLING_K[end]);
    const rate = worth(DOUBLING_K.likely);
    const more = ((endMs - atMs) / DAY_MS) * rate;
    if (overMs === undefined && whole + more >= TRADE_DAYS)
      overMs = atMs + ((TRADE_DAYS - whole) / rate) * DAY_MS;
    whole += more;
  }
  return { days: (nowMs - fromMs) / DAY_MS, ...ordered(sum), overMs };
}

/** Warmer than 21 °C the ends change places. */
const ordered = ({ low, likely, high }: Pick<CountedDays, 'low' | 'likely' | 'high'>) => ({
  low: Math.min(low, high),
  likely,
  high: Math.max(low, high),
});
