import { type Batch, type Ingredients, isLacquer } from './ingredient';

/** Most lacquer in a toner, of the mix by volume: above it a pass builds film before it builds colour (common practice, no source). */
export const MOST_LACQUER_IN_TONER = 0.25;
/** So near the limit counts as at it: what two pours are off (judgement, no source). */
const NEAR = 0.02;

/** Lacquer's share of a mix by volume; undefined where a density is not known. */
export function lacquerShare(batch: Batch, ingredients: Ingredients): number | undefined {
  let wholeM3 = 0;
  let lacquerM3 = 0;
  for (const { ingredient: id, massKg } of batch) {
    const found = ingredients.get(id);
    if (found?.densityKgM3 === undefined) return undefined;
    const volumeM3 = massKg / found.densityKgM3;
    wholeM3 += volumeM3;
    if (isLacquer(found)) lacquerM3 += volumeM3;
  }
  return wholeM3 > 0 ? lacquerM3 / wholeM3 : undefined;
}

/** How lacquer's share of a toner stands to its limit. */
export function tonerStrength(share: number): 'thin-enough' | 'at-limit' | 'over-limit' {
  if (share > MOST_LACQUER_IN_TONER + NEAR) return 'over-limit';
  return share >= MOST_LACQUER_IN_TONER - NEAR ? 'at-limit' : 'thin-enough';
}
