import type { Shop } from '../../logbook/fold/fold';
import { fail, type Result } from '../../result';
import type { MixFailure } from '../../science/mixing/failure';
import { MIX_FAILURES } from '../../words/mix/failure';
import type { Refused } from '../refused';

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

/** The failure of a mix as an action's. */
export function refuseMix(failure: MixFailure, shop: Pick<Shop, 'ingredients'>): Result<never, Refused> {
  return refuseWith(
    mixSentence(failure, shop),
    'line' in failure ? `lines.${failure.line}.amount` : undefined,
  );
}

/** A refusal in one sentence, beside a field where one is to blame. */
export const refuseWith = (sentence: string, field?: string): Result<never, Refused> =>
  fail({ sentence, fields: field === undefined ? {} : { [field]: sentence } });
