import type { Shop } from '../../../logbook/fold/fold';
import type { ShopIngredient } from '../../../logbook/fold/mix/ingredients';
import { wholeDrops } from '../../../science/mixing/amount';
import { type Batch, isLacquer, type Part } from '../../../science/mixing/ingredient';
import { weighOrder } from '../../../science/mixing/weigh/weigh-order';
import {
  type LetDown,
  usefulLetDown,
  type Weighing,
  weighing,
  weighingUncertainty,
} from '../../../science/mixing/weigh/weighing';
import { mixIngredients } from '../../../shop/recipe/ingredients';

/** A line of a plan, with how well the scale can weigh it and what would help. */
export interface PlanLine extends Part {
  readonly verdict: Weighing;
  /** Half a division over the mass, as a fraction. */
  readonly uncertainty: number;
  /** Drops that come nearest, and what the rounding does; where the drop is known and the line is small. */
  readonly drops: { readonly drops: number; readonly error: number } | undefined;
  /** The usual let-down that would weigh well, where one does and there is clear to leave out. */
  readonly offer: LetDown | undefined;
  /** Where no let-down helps, kg: the clear that the strongest one this scale weighs well would bring (none does where undefined), and what there is to leave out. */
  readonly clearShort: { readonly wantedKg: number | undefined; readonly thereKg: number } | undefined;
}

/** More are poured by weight. */
export const MOST_DROPS = 60;
const COLOURS: readonly ShopIngredient['is'][] = ['tinter', 'dye', 'flatting'];

/** A batch in the order of pouring, each line judged by the scale. */
export function planLines(batch: Batch, divisionKg: number, shop: Shop): readonly PlanLine[] {
  const ingredients = mixIngredients(shop.ingredients);
  const thereKg = clearOf(batch, shop);
  const wellWeighed = ({ massKg }: Part, clearKg = Number.POSITIVE_INFINITY): LetDown | undefined =>
    usefulLetDown(massKg, divisionKg, clearKg);
  return weighOrder(batch, ingredients).map((part) => {
    const found = ingredients.get(part.ingredient);
    const verdict = weighing(part.massKg, divisionKg);
    const isColour = found !== undefined && COLOURS.includes(found.kind);
    const isSmall = verdict !== 'fine' && isColour;
    const offer = isSmall ? wellWeighed(part, thereKg) : undefined;
    const drops = found?.dropMassKg === undefined ? undefined : part.massKg / found.dropMassKg;
    return {
      ...part,
      verdict,
      uncertainty: weighingUncertainty(part.massKg, divisionKg),
      drops: drops !== undefined && drops <= MOST_DROPS ? wholeDrops(drops) : undefined,
      offer,
      clearShort: isSmall && !offer ? { wantedKg: wellWeighed(part)?.clearToLeaveOutKg, thereKg } : undefined,
    };
  });
}

/** Lacquer in a batch that a let-down's clear can take the place of, kg: the clear, and where there is none the base. */
function clearOf(batch: Batch, shop: Shop): number {
  const line = lineToThin(batch, shop);
  return line?.massKg ?? 0;
}

/** The line that gives way to a let-down's clear: the largest clear, else the largest base. */
export function lineToThin(batch: Batch, { ingredients }: Shop): Part | undefined {
  const lacquers = batch.filter(({ ingredient }) => {
    const found = mixIngredients(ingredients).get(ingredient);
    return found !== undefined && isLacquer(found);
  });
  const clears = lacquers.filter(({ ingredient }) => ingredients.get(ingredient)?.is === 'clear');
  return [...(clears.length > 0 ? clears : lacquers)].sort((a, b) => b.massKg - a.massKg)[0];
}

/** A let-down of this strength that the shop has already. */
export function keptLetDown(of: string, strength: number, { ingredients }: Shop): ShopIngredient | undefined {
  return [...ingredients.values()].find(
    ({ madeOf, putAwayMs }) =>
      putAwayMs === undefined &&
      madeOf?.length === 2 &&
      madeOf[0]?.ingredient === of &&
      Math.abs(madeOf[0].massFraction - strength) < 1e-9,
  );
}
