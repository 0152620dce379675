import type { USUAL_NAMES } from '../../logbook/kinds/match';
import { type Result, succeed } from '../../result';
import { type ActionNeeds, type Logged, log, type Said } from '../log';
import { describeIngredient } from '../mix/ingredient';
import type { Refused } from '../refused';

type UsualName = (typeof USUAL_NAMES)[number];

/** Something on the bench: an ingredient of the shop, or the name of one that is not in it yet. */
export type OnBench = { readonly ingredient: string } | { readonly name: string };
export type TinterOnBench = OnBench & { readonly like?: UsualName };

type Described = Said<'match-described'>;
/** What a person says of a match; the bench may name what the shop does not know yet. */
export type MatchSaid = Omit<Described, 'match' | 'base' | 'tinters'> & {
  readonly base: OnBench;
  readonly tinters: readonly TinterOnBench[];
};

/** Describes a match, a new one unless its id is given; what is new on the bench becomes an ingredient of the shop first. */
export async function describeMatch(
  needs: ActionNeeds,
  { base, tinters, ...said }: MatchSaid,
  match = needs.newId(),
): Promise<
  Result<Awaited<Logged<'match-described'>> extends Result<infer Kept, Refused> ? Kept : never, Refused>
> {
  const white = await ingredientOf(needs, base, 'white-base');
  if (!white.ok) return white;
  const named: Described['tinters'][number][] = [];
  for (const tinter of tinters) {
    const ingredient = await ingredientOf(needs, tinter, 'tinter');
    if (!ingredient.ok) return ingredient;
    named.push({
      ingredient: ingredient.value,
      ...(tinter.like === undefined ? {} : { like: tinter.like }),
    });
  }
  return log(needs, 'match-described', { ...said, match, base: white.value, tinters: named });
}

async function ingredientOf(
  needs: ActionNeeds,
  on: OnBench,
  is: 'white-base' | 'tinter',
): Promise<Result<string, Refused>> {
  if ('ingredient' in on) return succeed(on.ingredient);
  const described = await describeIngredient(needs, { name: on.name, is });
  return described.ok ? succeed(described.value.ingredient) : described;
}

/** No longer lists a match; what was read for it stays. */
export const putMatchAway = (needs: ActionNeeds, match: string): Logged<'match-put-away'> =>
  log(needs, 'match-put-away', { match });
