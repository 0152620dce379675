import type { Match } from '../../../logbook/fold/piece/matches';
import { USUAL_NAMES } from '../../../logbook/kinds/piece/match';
import { SelectField } from '../../../parts/fields/select-field';
import { useShop } from '../../../parts/frame/shop-context';
import { FORM_WORDS as WORDS } from '../../../words/match/form';
import { Ticks } from '../ticks';
import { type Candidate, candidates, type FormPart, likeOf, type UsualName, usualOf } from './match-draft';

const LIKES: readonly { readonly value: UsualName | 'none'; readonly label: string }[] = [
  ...USUAL_NAMES.map((value) => ({ value, label: WORDS.usual[value] })),
  { value: 'none', label: WORDS.likeNone },
];

/** The tinters on the bench, and what each is taken for. */
export function TinterTicks({
  draft,
  patch,
  isTried,
  match,
}: FormPart & { readonly match: Match | undefined }) {
  const all = candidates(useShop().shop.value, match);
  const ticked = new Set(draft.ticked);
  // A tinter whose name is that of a usual one needs no question.
  const asked = all.filter(({ key, label, isInShop }) => isInShop && ticked.has(key) && !usualOf(label));
  return (
    <>
      <Ticks
        label={WORDS.tinters}
        hint={WORDS.tintersHint}
        options={all.map((one) => ({ value: one.key, label: one.label, hint: hintOf(one) }))}
        ticked={ticked}
        onTick={(key, isTicked) =>
          patch({ ticked: isTicked ? [...draft.ticked, key] : draft.ticked.filter((one) => one !== key) })
        }
        problem={isTried && draft.ticked.length === 0 ? WORDS.noTinter : undefined}
      />
      {asked.map((one) => (
        <SelectField
          key={one.key}
          label={WORDS.likeLabel(one.label)}
          options={LIKES}
          value={likeOf(draft, one)}
          onChange={(like) => patch({ likes: { ...draft.likes, [one.key]: like } })}
        />
      ))}
    </>
  );
}

const hintOf = ({ label }: Candidate): string | undefined => {
  const usual = usualOf(label);
  return usual && WORDS.usualHints[usual];
};
