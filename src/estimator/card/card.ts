import type { Belief } from '../estimate';
import type { StackHistory } from '../history';

/** Thin coats lose their solvent within days, so their weight tells most of it (worked out with this solver). */
export const THIN_M = 12e-6;
/** What pocket scales go by at the finest (common practice, no source). */
export const FINE_KG = 1e-6;

/** One weighing of a test card: foil, film, what solvent and what water they hold. */
export interface Weighing {
  readonly atS: number;
  readonly massKg: number;
  /** Relative humidity of the air that it lay in, 0 to 1. */
  readonly humidity: number;
  /** How far that is known; as a pocket hygrometer tells it where absent. */
  readonly humiditySpread?: number;
  /** It was dried warm before, as the history's air says. */
  readonly isWarmDried: boolean;
  /** Smallest step of the scale where it is another one than weighed the bare foil, kg. */
  readonly divisionKg?: number;
}

/** A card of foil that was coated beside a piece and is weighed now and then, SI. */
export interface Card {
  /** The film on it, as on a piece; its `panelEffusivity` is that of foil. */
  readonly history: StackHistory;
  /** Of all faces that were coated. */
  readonly areaM2: number;
  readonly bareKg: number;
  /** Smallest step of the scale, kg. */
  readonly divisionKg: number;
  readonly weighings: readonly Weighing[];
  /** Moments, rising, for which the weight is to be told. */
  readonly lookAtS?: readonly number[];
}

/** A card that is to be weighed up, as the worker is asked. */
export interface CardRequest {
  readonly card: Card;
}

/** What it is to weigh at a moment, as is believed now. */
export interface Expected {
  readonly atS: number;
  /** In the humidity of {@link CardReading.humidity}: one in ten is lighter than `lowKg`, one in ten heavier than `highKg`. */
  readonly lowKg: number;
  readonly likelyKg: number;
  readonly highKg: number;
  /** What a weighing then would tell of the diffusivity, in nats. */
  readonly gain: number;
}

/** What the weighings of a card say. */
export interface CardReading {
  /** What was believed of the diffusivity before. */
  readonly before: Belief;
  /** Of the logarithm of the diffusivity, relative to the default. */
  readonly diffusivity: Belief;
  /** Of the logarithm of the evaporation. */
  readonly evaporation: Belief;
  /** What the film weighs without solvent and water, kg. */
  readonly dryKg: Belief;
  /** Solvent expected at each weighing as is believed now, kg, with the tenth and the ninth tenth. */
  readonly heldKg: readonly { readonly low: number; readonly likely: number; readonly high: number }[];
  /** Humidity for which the weights below are told. */
  readonly humidity: number;
  /** Each weighing as it would be in that humidity, kg. */
  readonly weighedKg: readonly number[];
  readonly expected: readonly Expected[];
  /** What drying it warm now and weighing it would tell, in nats. */
  readonly warmGain: number;
}
