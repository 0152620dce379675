import type { Match } from '../../logbook/fold/piece/matches';
import { type Result, succeed } from '../../result';
import { hidingFilmUm } from '../../shop/colour/hides';
import { matchJar, partsOf } from '../../shop/colour/jar-content';
import { RECIPE_FROM_MATCH } from '../../words/match/trial';
import { type ActionNeeds, log, type Said } from '../log';
import { writeRecipe } from '../mix/recipe';
import { type Refused, refuse } from '../refused';

type Line = Said<'recipe-written'>['lines'][number];

/** What accepting made: the recipe, and the entries that undo it. */
export interface Accepted {
  readonly recipe: string;
  readonly entries: readonly [accepted: string, written: string];
}

/** Makes a trial a recipe, or a new version of the one this match made before. */
export async function acceptTrial(
  needs: ActionNeeds,
  match: Match,
  trialNumber: number,
): Promise<Result<Accepted, Refused>> {
  const trial = match.trials[trialNumber - 1];
  const mixed = needs.logbook.shop.value.matches.get(match.id)?.trials ?? [];
  if (!trial || !mixed.some(({ id }) => id === trial.id))
    return refuse({ kind: 'unknown-trial' }, needs.zone());
  const previous = newestVersion(needs, match.accepted?.recipe);
  const written = await writeRecipe(needs, {
    name: match.name,
    use: { as: 'opaque', over: 'white', ...coatsToHide(match) },
    lines: linesOf(match, trialNumber),
    note: noteOf(match, trialNumber),
    ...(previous === undefined ? {} : { previous }),
  });
  if (!written.ok) return written;
  const { recipe, id } = written.value;
  const accepted = await log(needs, 'trial-accepted', { match: match.id, trial: trial.id, recipe });
  return accepted.ok ? succeed({ recipe, entries: [accepted.value.id, id] }) : accepted;
}

function newestVersion({ logbook }: ActionNeeds, recipe: string | undefined): string | undefined {
  const { recipes } = logbook.shop.value;
  let newest = recipe;
  for (let next = newest; next !== undefined; next = recipes.get(next)?.next) newest = next;
  return newest !== undefined && recipes.has(newest) ? newest : undefined;
}

const linesOf = (match: Match, trialNumber: number): Line[] =>
  partsOf(match, trialNumber).map(([ingredient, grams]) => ({
    ingredient,
    amount: { text: gramsText(grams), unit: 'g' },
  }));

/** Five figures: more than any scale, and no more than the sums are good for. */
export const gramsText = (grams: number): string => String(Number(grams.toPrecision(5)));

function noteOf(match: Match, trialNumber: number): string {
  const { clearGrams } = matchJar(match, trialNumber);
  const carried = match.clear === undefined && clearGrams > 0 ? gramsText(clearGrams) : undefined;
  return RECIPE_FROM_MATCH.note(match.name, trialNumber, carried);
}

function coatsToHide(match: Match): { readonly coatsToHide?: number } {
  const coats = hidingFilmUm(match)?.coats;
  return coats === undefined ? {} : { coatsToHide: coats };
}
