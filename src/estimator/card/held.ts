import { between, EVAPORATION_STEP, RUN_AT } from '../belief';
import type { StackHistory } from '../history';
import { simulate } from '../simulate';
import type { Card } from './card';

/** Logarithms of the evaporation at which the card is marched. */
const EVAPORATION_AT = [-EVAPORATION_STEP, 0, EVAPORATION_STEP] as const;

/** Solvent on the card at each moment, kg, for every diffusivity and evaporation at which it is marched. */
export type HeldTable = readonly (readonly (readonly number[])[])[];

/** Marches a card at seven diffusivities and three evaporations. Times must rise. */
export function heldTable(history: StackHistory, areaM2: number, atS: readonly number[]): HeldTable {
  return EVAPORATION_AT.map((lnTransfer) =>
    RUN_AT.map((lnDiffusivity) => {
      const { binder, air } = history;
      const scaled = {
        ...history,
        binder: { ...binder, glassDiffusivityM2S: binder.glassDiffusivityM2S * Math.exp(lnDiffusivity) },
        air: air.map((span) => ({ ...span, transferMS: span.transferMS * Math.exp(lnTransfer) })),
      };
      return heldAt(scaled, areaM2, atS);
    }),
  );
}

/** Solvent on the card at each moment, kg. Times must rise. */
export function heldAt(history: StackHistory, areaM2: number, atS: readonly number[]): readonly number[] {
  const { heldThen } = simulate(history, { untilS: (atS.at(-1) ?? 0) + 1, profileAtS: atS });
  return heldThen.map((held) =>
    held.reduce((sum, volume, i) => sum + volume * (history.solvents[i]?.densityKgM3 ?? 0) * areaM2, 0),
  );
}

/** Solvent at a moment between the marches, kg. */
export function heldBetween(table: HeldTable, moment: number, lnD: number, lnE: number): number {
  const at = (e: number) =>
    between(
      (table[e] as HeldTable[number]).map((run) => run[moment] as number),
      lnD,
    );
  const share = Math.min(1, Math.abs(lnE) / EVAPORATION_STEP);
  return at(1) + share * (at(lnE < 0 ? 0 : 2) - at(1));
}

/** Dry film on the card as it was laid, kg. */
export const laidDryKg = ({ history, areaM2 }: Pick<Card, 'history' | 'areaM2'>): number =>
  history.events.reduce(
    (sum, event) => sum + (event.kind === 'coat' ? event.dryM * areaM2 * history.binder.densityKgM3 : 0),
    0,
  );
