import { WEIGHED_AT } from '../belief';
import { type Cell, meanOf, type Posterior } from './posterior';

/** One more weighing, as it would be: what of each thing shared is in it, by diffusivity; the solvent; and its own noise, kg. */
export interface OneMore {
  readonly along: (lnD: number) => readonly number[];
  readonly held: (cell: Cell) => number;
  readonly noise: number;
}

/**
 * What one more weighing is expected to say: its mean beyond foil, dry film and water, its spread, and what it would tell of the
 * diffusivity, in nats.
 *
 * Source: mutual information of two normals, half the logarithm of its variance over what of that is left once the diffusivity is known.
 */
export function oneMore(
  { cells, normals }: Posterior,
  { along, held, noise }: OneMore,
): { readonly meanKg: number; readonly spreadKg: number; readonly gain: number } {
  const byD = normals.map((normal, d) => ({
    ...normal.oneMore(along(WEIGHED_AT[d] as number), noise),
    weight: 0,
    sum: 0,
    square: 0,
  }));
  const means = cells.map((cell) => {
    const row = byD[cell.d] as (typeof byD)[number];
    const value =
      held(cell) + row.weights.reduce((sum, weight, i) => sum + weight * (cell.rest[i] as number), 0);
    row.weight += cell.weight;
    row.sum += cell.weight * value;
    row.square += cell.weight * value ** 2;
    return { ...cell, value };
  });
  const inner = meanOf(cells, ({ d }) => byD[d]?.variance as number);
  const meanKg = means.reduce((sum, { value, weight }) => sum + value * weight, 0);
  const variance = means.reduce((sum, { value, weight }) => sum + weight * (value - meanKg) ** 2, inner);
  // Within one diffusivity, what the evaporation adds.
  const left = byD.reduce(
    (sum, row) => sum + (row.weight > 0 ? row.square - row.sum ** 2 / row.weight : 0),
    inner,
  );
  return { meanKg, spreadKg: Math.sqrt(variance), gain: Math.max(0, 0.5 * Math.log(variance / left)) };
}
