import { useSignal } from '@preact/signals';
import { describeIngredient } from '../../../actions/mix/ingredient';
import { sayOutcome } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import type { Batch } from '../../../science/mixing/ingredient';
import type { LetDown } from '../../../science/mixing/weigh/weighing';
import { INGREDIENT_WORDS } from '../../../words/mix/ingredient';
import { PLAN_WORDS } from '../../../words/mix/weigh';
import { percentWords } from '../../../words/quantities';
import { keptLetDown, lineToThin } from './plan-lines';

interface Taken {
  readonly of: string;
  readonly strength: number;
  readonly letDown: string;
  readonly clear: string;
}

/** The let-downs taken in place of tinters too small to weigh; a let-down the shop has not yet is added to its ingredients. */
export function useLetDowns() {
  const { shop, needs } = useShop();
  const taken = useSignal<readonly Taken[]>([]);

  async function make(of: string, strength: number, clear: string): Promise<string | undefined> {
    const name = shop.value.ingredients.get(of)?.name ?? '';
    const made = await describeIngredient(needs, {
      name: INGREDIENT_WORDS.letDownName(name, percentWords(strength)),
      is: 'let-down',
      madeOf: [
        { ingredient: of, massFraction: strength },
        { ingredient: clear, massFraction: 1 - strength },
      ],
    });
    sayOutcome(made, ({ name }) => ({ text: PLAN_WORDS.makeLetDown(name) }));
    return made.ok ? made.value.ingredient : undefined;
  }

  return {
    /** The let-down a line is weighed as; undefined for every other line. */
    of: (ingredient: string) => taken.value.find(({ letDown }) => letDown === ingredient),
    async take(batch: Batch, of: string, { strength }: LetDown): Promise<void> {
      const thinned = lineToThin(batch, shop.value);
      if (!thinned) return;
      const kept = keptLetDown(of, strength, shop.value);
      const clear = kept?.madeOf?.[1]?.ingredient ?? thinned.ingredient;
      const letDown = kept?.id ?? (await make(of, strength, clear));
      if (letDown) taken.value = [...taken.value, { of, strength, letDown, clear: thinned.ingredient }];
    },
    leave(of: string): void {
      taken.value = taken.value.filter((one) => one.of !== of);
    },
    /** The batch with every let-down that was taken. */
    applied: (batch: Batch): Batch => taken.value.reduce(withTaken, batch),
  };
}

function withTaken(batch: Batch, { of, strength, letDown, clear }: Taken): Batch {
  const massKg = batch.find(({ ingredient }) => ingredient === of)?.massKg;
  if (massKg === undefined) return batch;
  const broughtKg = massKg / strength - massKg;
  return batch.flatMap((part) => {
    if (part.ingredient === of) return [{ ingredient: letDown, massKg: massKg / strength }];
    if (part.ingredient !== clear) return [part];
    return part.massKg - broughtKg > 1e-9 ? [{ ...part, massKg: part.massKg - broughtKg }] : [];
  });
}
