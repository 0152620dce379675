import { FINISH_LAWS, isCuring } from '../../estimator/finishes/finish-law';
import type { Forecast } from '../../logbook/fold/shop/air';
import { toKelvin } from '../../units';
import type { MeasuredAir } from './measured-air';

/** What a finish asks of the shop, and how the air and the coming night stand to it. */
export interface ShopLimits {
  readonly lowestK: number;
  /** A fraction; undefined where a finish does not mind. */
  readonly highestHumidity: number | undefined;
  readonly isCold: boolean;
  readonly isDamp: boolean;
  /** K, where the forecast's night is below the limit. */
  readonly coldNightK: number | undefined;
}

/** The air against the limits of a finish that dries by water or cures; undefined for one that dries by losing solvent alone. */
export function shopLimits(
  finish: string,
  { airC, humidity }: Pick<MeasuredAir, 'airC' | 'humidity'>,
  forecast: Pick<Forecast, 'nightTemperature'> | undefined,
): ShopLimits | undefined {
  if (!isCuring(finish)) return undefined;
  const { lowestK, highestHumidity } = FINISH_LAWS[finish].shop;
  const nightK = forecast?.nightTemperature.si;
  return {
    lowestK,
    highestHumidity,
    isCold: toKelvin(airC) < lowestK,
    isDamp: highestHumidity !== undefined && humidity > highestHumidity,
    coldNightK: nightK !== undefined && nightK < lowestK ? nightK : undefined,
  };
}
