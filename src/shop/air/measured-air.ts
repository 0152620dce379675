import type { Shop } from '../../logbook/fold/fold';
import type { AirReading } from '../../logbook/fold/shop/air';
import { dewPointMarginK } from '../../science/air/blush';
import { dewPointC } from '../../science/air/dew-point';
import { correctedRelativeHumidity } from '../../science/air/hygrometer';
import { equilibriumMoistureContent } from '../../science/wood';
import { toCelsius } from '../../units';
import { shopPressurePa } from './pressure';

/** A reading of the air with everything that follows from it. */
export interface MeasuredAir {
  readonly reading: AirReading;
  readonly airC: number;
  /** Of the air, hygrometer corrected, a fraction. */
  readonly humidity: number;
  readonly dewPointC: number;
  /** Of the piece where it was measured, else of the air. */
  readonly pieceC: number;
  readonly isPieceMeasured: boolean;
  /** How far the piece is above the dew point, K. */
  readonly marginK: number;
  readonly pressurePa: number;
}

/** What a reading says of the air; the piece counts as warm as the air where nobody measured it. */
export function measuredAir(reading: AirReading, { settings }: Pick<Shop, 'settings'>): MeasuredAir {
  const airC = toCelsius(reading.temperature.si);
  const humidity = correctedRelativeHumidity(reading.humidity.si, reading.correction?.si ?? 0);
  const pieceC = reading.pieceTemperature ? toCelsius(reading.pieceTemperature.si) : airC;
  return {
    reading,
    airC,
    humidity,
    dewPointC: dewPointC(airC, humidity),
    pieceC,
    isPieceMeasured: reading.pieceTemperature !== undefined,
    marginK: dewPointMarginK(pieceC, airC, humidity),
    pressurePa: shopPressurePa(settings),
  };
}

/** The equation of equilibrium moisture goes no lower. */
const COLDEST_WOOD_C = -1;

/** Moisture that wood comes to in this air, kg of water a kg of dry wood; undefined where it is too cold for the equation. */
export const woodMoisture = ({ airC, humidity }: MeasuredAir): number | undefined =>
  airC >= COLDEST_WOOD_C ? equilibriumMoistureContent(airC, humidity) : undefined;

/** The reading taken last, and what follows from it. */
export function latestAir(shop: Shop): MeasuredAir | undefined {
  const reading = shop.airReadings.at(-1);
  return reading && measuredAir(reading, shop);
}
