import { type Batch, batchMassKg } from '../ingredient';

/** A pour exactly half a division over must not count as more for a rounding of the arithmetic. */
const ROUNDING_KG = 1e-12;

/** What is still to be done for one line of a weigh-up. */
export interface PourLeft {
  readonly ingredient: string;
  readonly pouredKg: number;
  readonly toPourKg: number;
  /** It had been poured in full, and needs more only because another was over-poured. */
  readonly isTopUp: boolean;
}

/** A weigh-up brought back to the recipe's ratios. */
export interface Rescaled {
  /** The batch grows to this many times its planned size; 1 where nothing was over-poured. */
  readonly factor: number;
  readonly lines: readonly PourLeft[];
  /** What it makes in the end, and how much more than planned, kg. */
  readonly totalKg: number;
  readonly moreKg: number;
}

/**
 * What is left to pour after some lines were poured, so that the batch ends on the recipe's ratios.
 *
 * An over-pour enlarges the batch: what is still to come grows with it, and what was poured is topped up if it must be. Differences
 * under half a division of the scale are not seen and not acted on.
 * @param poured in the batch's order; undefined for a line that is still to come
 */
export function rescaled(plan: Batch, poured: readonly (number | undefined)[], divisionKg: number): Rescaled {
  const unseenKg = divisionKg / 2;
  const factor = growthOf(plan, poured, unseenKg);
  const lines = plan.map(({ ingredient, massKg }, i): PourLeft => {
    const pouredKg = poured[i] ?? 0;
    const missingKg = massKg * factor - pouredKg;
    const isLeft = poured[i] === undefined || missingKg > unseenKg + ROUNDING_KG;
    return {
      ingredient,
      pouredKg,
      toPourKg: isLeft ? Math.max(0, missingKg) : 0,
      isTopUp: isLeft && poured[i] !== undefined && pouredKg >= massKg - unseenKg,
    };
  });
  const totalKg = lines.reduce((sum, { pouredKg, toPourKg }) => sum + pouredKg + toPourKg, 0);
  return { factor, lines, totalKg, moreKg: totalKg - batchMassKg(plan) };
}

/**
 * The least of the growths that the pours ask for at which none of them is seen to be over. A small line whose pour the scale
 * rounded up must not make the whole batch grow once more.
 */
function growthOf(plan: Batch, poured: readonly (number | undefined)[], unseenKg: number): number {
  const isOver = (factor: number): boolean =>
    plan.some(({ massKg }, i) => (poured[i] ?? 0) - massKg * factor > unseenKg + ROUNDING_KG);
  const growths = plan.map(({ massKg }, i) => (poured[i] ?? 0) / massKg);
  return [1, ...growths.sort((one, other) => one - other)].find((factor) => !isOver(factor)) ?? 1;
}
