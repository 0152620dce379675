import type { Finish } from '../../shop/jar/own-solvents';
import type { Said } from '../log';
import { type IngredientSort, usualIngredient } from './usual-ingredient';

type Facts = Partial<Omit<Said<'ingredient-described'>, 'ingredient' | 'name' | 'is'>>;

const typed = <U extends string>(text: string | undefined, unit: U) =>
  text === undefined ? undefined : ({ value: { text, unit }, from: 'usual' } as const);

/** What an ingredient of a sort is at common practice, each fact marked as such. */
export function usualFacts(is: IngredientSort, finish: Finish): Facts {
  const usual = usualIngredient(is, finish);
  const all = {
    finish: is === 'clear' || is === 'white-base' ? finish : undefined,
    density: typed(usual.density, 'g/mL'),
    volumeSolids: typed(usual.volumeSolids, '%'),
    pigmentOfSolids: typed(usual.pigmentOfSolids, '%'),
    criticalPigment: typed(usual.criticalPigment, '%'),
    solvents: usual.solvents && ({ value: usual.solvents, from: 'usual' } as const),
    strength: usual.strength,
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as Facts;
}

/** How heavy a drop usually is, g: between the 0.02 and 0.08 g of the bottles on a bench (common practice, no source). */
export const USUAL_DROP_G = '0.04';

/** The finish that an ingredient belongs to where nobody has said so: lacquer, as most of what is matched. */
export const finishOfIngredient = ({ finish }: { readonly finish?: Finish | undefined }): Finish =>
  finish ?? 'nitrocellulose';
