import type { Belief } from '../estimate';
import type { StackHistory } from '../history';

/** One weighing of a test card: foil, film, what solvent and what water they hold. */
export interface Weighing {
  readonly atS: number;
  readonly massKg: number;
  /** Relative humidity of the air that it lay in, 0 to 1. */
  readonly humidity: number;
  /** Dried warm until it lost no more: it holds next to no solvent. */
  readonly isWarmDried: boolean;
}

/** A card of foil that was coated beside a piece and is weighed now and then, SI. */
export interface Card {
  /** The film on it, as on a piece; its `panelEffusivity` is that of foil. */
  readonly history: StackHistory;
  readonly areaM2: number;
  readonly bareKg: number;
  /** Smallest step of the scale, kg. */
  readonly divisionKg: number;
  readonly weighings: readonly Weighing[];
}

/** What the weighings of a card say. */
export interface CardReading {
  /** Of the logarithm of the diffusivity, relative to the default. */
  readonly diffusivity: Belief;
  /** Of the logarithm of the evaporation. */
  readonly evaporation: Belief;
  /** What the film weighs without solvent and water, kg. */
  readonly dryKg: Belief;
  /** Solvent expected at each weighing as is believed now, kg, with the tenth and the ninth tenth. */
  readonly heldKg: readonly { readonly low: number; readonly likely: number; readonly high: number }[];
}
