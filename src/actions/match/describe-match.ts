import type { USUAL_NAMES } from '../../logbook/kinds/piece/match';
import { type Result, succeed } from '../../result';
import { type ActionNeeds, type Logged, log, type Said } from '../log';
import { describeIngredient } from '../mix/ingredient';
import { finishOfIngredient, usualFacts } from '../mix/usual-facts';
import { startPiece } from '../piece';
import type { Refused } from '../refused';

type UsualName = (typeof USUAL_NAMES)[number];

/** Something on the bench: an ingredient of the shop, or the name of one that is not in it yet. */
export type OnBench = { readonly ingredient: string } | { readonly name: string };
export type TinterOnBench = OnBench & { readonly like?: UsualName };

type Described = Said<'match-described'>;
/** A piece of the log, or the name of one that is not in it yet. */
export type OfPiece =
  | { readonly piece: string }
  | { readonly name: string; readonly base: Said<'piece-started'>['base'] };
/** What a person says of a match; piece and bench may be named that the shop does not know yet. */
export type MatchSaid = Omit<Described, 'match' | 'piece' | 'base' | 'tinters' | 'clear'> & {
  readonly piece?: OfPiece;
  readonly clear?: OnBench;
  readonly base: OnBench;
  readonly tinters: readonly TinterOnBench[];
};

/** Describes a match, a new one unless its id is given; what is new on the bench becomes an ingredient of the shop first. */
export async function describeMatch(
  needs: ActionNeeds,
  { piece: of, base, tinters, clear: inClear, ...said }: MatchSaid,
  match = needs.newId(),
): Promise<
  Result<Awaited<Logged<'match-described'>> extends Result<infer Kept, Refused> ? Kept : never, Refused>
> {
  const piece = await pieceOf(needs, of);
  if (!piece.ok) return piece;
  const white = await ingredientOf(needs, base, 'white-base');
  if (!white.ok) return white;
  const clear = inClear ? await ingredientOf(needs, inClear, 'clear') : succeed(undefined);
  if (!clear.ok) return clear;
  const named: Described['tinters'][number][] = [];
  for (const tinter of tinters) {
    const ingredient = await ingredientOf(needs, tinter, 'tinter');
    if (!ingredient.ok) return ingredient;
    named.push({
      ingredient: ingredient.value,
      ...(tinter.like === undefined ? {} : { like: tinter.like }),
    });
  }
  return log(needs, 'match-described', {
    ...said,
    match,
    ...(piece.value === undefined ? {} : { piece: piece.value }),
    base: white.value,
    tinters: named,
    ...(clear.value === undefined ? {} : { clear: clear.value }),
  });
}

async function ingredientOf(
  needs: ActionNeeds,
  on: OnBench,
  is: 'white-base' | 'tinter' | 'clear',
): Promise<Result<string, Refused>> {
  if ('ingredient' in on) return succeed(on.ingredient);
  const facts = usualFacts(is, finishOfIngredient({}));
  const described = await describeIngredient(needs, { ...facts, name: on.name, is });
  return described.ok ? succeed(described.value.ingredient) : described;
}

async function pieceOf(
  needs: ActionNeeds,
  of: OfPiece | undefined,
): Promise<Result<string | undefined, Refused>> {
  if (of === undefined || 'piece' in of) return succeed(of?.piece);
  const started = await startPiece(needs, of);
  return started.ok ? succeed(started.value.piece) : started;
}

/** No longer lists a match; what was read for it stays. */
export const putMatchAway = (needs: ActionNeeds, match: string): Logged<'match-put-away'> =>
  log(needs, 'match-put-away', { match });
