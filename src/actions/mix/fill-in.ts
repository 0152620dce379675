import { type Result, succeed } from '../../result';
import type { Lacking, LackingFact } from '../../shop/recipe/lacking';
import type { ActionNeeds, Said } from '../log';
import type { Refused } from '../refused';
import { describeIngredient } from './ingredient';
import { finishOfIngredient, USUAL_DROP_G, usualFacts } from './usual-facts';

type Described = Said<'ingredient-described'>;
/** What was typed for each fact that was not known, by ingredient; what is left out stays at its usual value. */
export type FilledIn = Readonly<Record<string, Partial<Record<LackingFact, string>>>>;

/** The usual value of a fact, as a person would type it; undefined of one that is no number. */
export function usualText({ ingredient }: Lacking, fact: LackingFact): string | undefined {
  if (fact === 'dropMass') return USUAL_DROP_G;
  if (fact === 'solvents') return undefined;
  return usualOf(ingredient)[fact]?.value.text;
}

const usualOf = (ingredient: Lacking['ingredient']) =>
  usualFacts(ingredient.is, finishOfIngredient(ingredient));

const UNITS = { density: 'g/mL', volumeSolids: '%', pigmentOfSolids: '%', dropMass: 'g' } as const;

/** Describes each ingredient again with what was not known of it: usual where it was left so, measured where it was typed. */
export async function fillIn(
  needs: ActionNeeds,
  lacking: readonly Lacking[],
  typed: FilledIn,
): Promise<Result<void, Refused>> {
  for (const one of lacking) {
    const { id } = one.ingredient;
    const added = Object.fromEntries(one.facts.map((fact) => [fact, factOf(one, fact, typed[id]?.[fact])]));
    const said = { ...saidOf(one.ingredient), ...added } as Omit<Described, 'ingredient'>;
    const described = await describeIngredient(needs, said, id);
    if (!described.ok) return described;
  }
  return succeed(undefined);
}

function factOf(lacking: Lacking, fact: LackingFact, typed: string | undefined) {
  if (fact === 'solvents') return usualOf(lacking.ingredient).solvents;
  const usual = usualText(lacking, fact);
  const text = typed ?? usual ?? '';
  return { value: { text, unit: UNITS[fact] }, from: text === usual ? 'usual' : 'measured' };
}

/** An ingredient as it is described now, word for word. */
function saidOf(ingredient: Lacking['ingredient']): Omit<Described, 'ingredient'> {
  const { id: _id, describedMs: _at, lotChangesMs: _lots, putAwayMs: _away, ...description } = ingredient;
  return asTyped(description) as Omit<Described, 'ingredient'>;
}

/** The same with every quantity as it was typed. */
function asTyped(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(asTyped);
  if (typeof value !== 'object' || value === null) return value;
  if ('typed' in value) return value.typed;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, asTyped(inner)]));
}
