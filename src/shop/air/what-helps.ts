import type { Forecast } from '../../logbook/fold/shop/air';
import {
  type BlushLimits,
  type BlushOutlook,
  blushOutlook,
  relativeHumidityForMargin,
} from '../../science/air/blush';
import { dewPointC } from '../../science/air/dew-point';
import { toCelsius } from '../../units';
import type { MeasuredAir } from './measured-air';

/** One thing that could be done about damp, with the margin it would give. */
export type Help =
  | { readonly by: 'piece-to-room'; readonly marginK: number; readonly outlook: BlushOutlook }
  | { readonly by: 'piece-to'; readonly pieceC: number }
  | { readonly by: 'drier-air'; readonly humidity: number }
  | {
      readonly by: 'forecast-day' | 'forecast-night';
      readonly airC: number;
      readonly marginK: number;
      readonly outlook: BlushOutlook;
    };

/** No piece is warmed beyond this by hand warmth, a lamp at a distance or a warm room (common practice, no source). */
const WARMEST_PIECE_C = 40;

/** What would bring the piece to an easy margin, the cheapest first; empty where it is there already. */
export function whatHelps(
  air: MeasuredAir,
  forecast: Forecast | undefined,
  limits: BlushLimits,
): readonly Help[] {
  if (blushOutlook(air.marginK, limits) === 'easy') return [];
  return [
    ...toTheRoom(air, limits),
    ...warmed(air, limits),
    ...(forecast ? byForecast(forecast, air, limits) : []),
    ...drier(air, limits),
  ];
}

function toTheRoom({ airC, pieceC, dewPointC: dewC }: MeasuredAir, limits: BlushLimits): Help[] {
  if (pieceC >= airC) return [];
  const marginK = airC - dewC;
  return [{ by: 'piece-to-room', marginK, outlook: blushOutlook(marginK, limits) }];
}

function warmed({ dewPointC: dewC }: MeasuredAir, { easyK }: BlushLimits): Help[] {
  const pieceC = dewC + easyK;
  return pieceC <= WARMEST_PIECE_C ? [{ by: 'piece-to', pieceC }] : [];
}

function drier({ airC, pieceC }: MeasuredAir, { easyK }: BlushLimits): Help[] {
  const humidity = relativeHumidityForMargin(airC, pieceC, easyK);
  return humidity > 0.05 ? [{ by: 'drier-air', humidity }] : [];
}

/** With the humidity that the forecast has for the day; the same water in the air at night. */
function byForecast(forecast: Forecast, air: MeasuredAir, limits: BlushLimits): Help[] {
  if (!forecast.humidity) return [];
  const dayC = toCelsius(forecast.dayTemperature.si);
  const nightC = toCelsius(forecast.nightTemperature.si);
  const dewC = dewPointC(dayC, forecast.humidity.si);
  const hours = [
    { by: 'forecast-day', airC: dayC, marginK: dayC - dewC },
    { by: 'forecast-night', airC: nightC, marginK: Math.max(0, nightC - dewC) },
  ] as const;
  return hours
    .filter(({ marginK }) => marginK > air.marginK)
    .map((hour) => ({ ...hour, outlook: blushOutlook(hour.marginK, limits) }));
}
