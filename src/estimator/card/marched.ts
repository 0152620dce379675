import type { StackHistory } from '../history';
import type { Card } from './card';
import { heldBetween, heldTable, laidDryKg } from './held';
import { waterOf } from './weighing-noise';

/** No film is laid thicker or thinner than said by more than this factor: then it was the weighing (judgement). */
const MOST_THICK = 3;
/** Half the step over which a slope is taken, in the logarithm of the diffusivity. */
const STEP = 0.3;

/** The film of a card, marched; moments are numbered as they were given. */
export interface Marched {
  /** Dry film as laid, kg. */
  readonly dryKg: number;
  /** Solvent at a moment, kg, for logarithms of diffusivity and evaporation. */
  held(moment: number, lnD: number, lnE: number): number;
  /** Solvent more, kg, for a film thicker by its whole self: a film s times as thick holds s f(D t / s^2) (Fick's second law). */
  ifThicker(moment: number, lnD: number): number;
}

/** Marches a card to these moments, in any order; as thick as its warm-dried weighing tells. */
export function marched(card: Card, atS: readonly number[]): Marched {
  const { areaM2 } = card;
  const history = asHeavyAs(card, laidDryKg(card));
  const order = atS.map((_, i) => i).sort((i, j) => (atS[i] as number) - (atS[j] as number));
  const table = heldTable(
    history,
    areaM2,
    order.map((i) => atS[i] as number),
  );
  const place = atS.map((_, i) => order.indexOf(i));
  const held = (i: number, lnD: number, lnE: number) => heldBetween(table, place[i] as number, lnD, lnE);
  return {
    dryKg: laidDryKg({ history, areaM2 }),
    held,
    ifThicker(i, lnD) {
      const slope = (held(i, lnD + STEP, 0) - held(i, lnD - STEP, 0)) / (2 * STEP);
      return held(i, lnD, 0) - 2 * slope;
    },
  };
}

/** The history with its coats as thick as a warm-dried weighing tells; the history itself where there is none. */
function asHeavyAs({ history, bareKg, weighings }: Card, laidKg: number): StackHistory {
  const dried = weighings.findLast(({ isWarmDried }) => isWarmDried);
  if (!dried) return history;
  const told = (dried.massKg - bareKg) / waterOf(dried.humidity) / laidKg;
  const by = Math.min(MOST_THICK, Math.max(1 / MOST_THICK, told));
  const events = history.events.map((event) =>
    event.kind === 'coat' ? { ...event, dryM: event.dryM * by } : event,
  );
  return { ...history, events };
}
