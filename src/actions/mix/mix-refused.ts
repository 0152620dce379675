import type { Shop } from '../../logbook/fold/fold';
import { fail, type Result } from '../../result';
import type { MixFailure } from '../../science/mixing/failure';
import { MIX_FAILURES } from '../../words/mix/failure';
import type { Refused, WayTo } from '../refused';

type Words = Record<
  MixFailure['kind'],
  (of: { name: string; path: readonly string[]; sum: number }) => string
>;
const WORDS: Words = MIX_FAILURES;

/** Why a mix cannot be worked out, as a sentence with the ingredients' names. */
export function mixSentence(failure: MixFailure, { ingredients }: Pick<Shop, 'ingredients'>): string {
  const name = (id: string): string => ingredients.get(id)?.name ?? id;
  return WORDS[failure.kind]({
    name: 'ingredient' in failure ? name(failure.ingredient) : '',
    path: 'path' in failure ? failure.path.map(name) : [],
    sum: 'sum' in failure ? failure.sum : 0,
  });
}

/** The failure of a mix as an action's: beside its line, or with the way to the ingredient that lacks something. */
export function refuseMix(failure: MixFailure, shop: Pick<Shop, 'ingredients'>): Result<never, Refused> {
  const sentence = mixSentence(failure, shop);
  if ('line' in failure) return refuseWith(sentence, `lines.${failure.line}.amount`);
  if (failure.kind === 'unknown-ingredient') return refuseWith(sentence, ['mix', 'ingredient', 'new']);
  const ingredient =
    'path' in failure ? failure.path[0] : 'ingredient' in failure ? failure.ingredient : undefined;
  return refuseWith(
    sentence,
    ingredient === undefined ? 'lines' : ['mix', 'ingredient', ingredient, 'change'],
  );
}

/** A refusal in one sentence, beside the field that is to blame, or with the way to the page where it is put right. */
export const refuseWith = (sentence: string, way: string | WayTo): Result<never, Refused> =>
  typeof way === 'string'
    ? fail({ sentence, fields: { [way]: sentence } })
    : fail({ sentence, fields: {}, way });
