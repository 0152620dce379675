import { MOST_LACQUER_IN_TONER, tonerStrength } from '../../science/mixing/toner';
import { RECIPE_WORDS as WORDS } from '../../words/mix/recipe';
import { percentWords } from '../../words/quantities';
import { Notice } from '../blocks/notice';

/** Lacquer's share of a toner, against what a toner takes. */
export function TonerShare({ share }: { readonly share: number | undefined }) {
  if (share === undefined) return null;
  const strength = tonerStrength(share);
  const words = WORDS.tonerShare(
    percentWords(share),
    WORDS.tonerIs[strength](percentWords(MOST_LACQUER_IN_TONER)),
  );
  if (strength === 'over-limit') return <Notice kind="caution">{words}</Notice>;
  return <p class="digits">{words}</p>;
}
