import { useSignal } from '@preact/signals';
import { mixTrial } from '../../../actions/match/mix-trial';
import { LIMITS } from '../../../logbook/limits';
import { Page } from '../../../parts/blocks/page';
import { Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { TimeField } from '../../../parts/fields/time/time-field';
import { useTime } from '../../../parts/fields/time/use-time';
import { draftProblem } from '../../../parts/fields/typed-field';
import { fromHere, linkTo, route } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { NEXT_WORDS } from '../../../words/match/next';
import { MIX_WORDS as WORDS } from '../../../words/match/trial';
import { type OfMatch, useNames } from '../use-match';
import { type AmountDraft, AmountField } from './amount-field';

/** The amounts of a suggestion, out of the address: `id*form*grams`, parted by `~`. */
function suggested(): ReadonlyMap<string, AmountDraft> {
  const lines = (route.value.query.get('as') ?? '').split('~').filter((line) => line !== '');
  return new Map(
    lines.map((line): [string, AmountDraft] => {
      const [ingredient = '', form = '', grams = ''] = line.split('*');
      return [
        ingredient,
        { form: form === 'let-down-10' || form === 'let-down-1' ? form : 'neat', text: grams },
      ];
    }),
  );
}

const BLANK: AmountDraft = { form: 'neat', text: '' };

/** What was stirred in: the next trial. */
export function MixPage({ match }: OfMatch) {
  const { needs, actions } = useShop();
  const name = useNames();
  const form = useForm();
  const time = useTime();
  const given = suggested();
  const amounts = useSignal<ReadonlyMap<string, AmountDraft>>(given);
  const number = match.trials.length + 1;
  const bench =
    number === 1 ? [match.base] : [...match.tinters.map(({ ingredient }) => ingredient), match.base];
  const lines = bench.map((ingredient) => ({ ingredient, ...(amounts.value.get(ingredient) ?? BLANK) }));
  const said = lines.filter(({ text }) => text.trim() !== '');
  const isWhole =
    said.length > 0 && said.every(({ text }) => draftProblem({ text, unit: 'g' }, LIMITS.mass) === undefined);

  async function send(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const added = said.map(({ ingredient, form: as, text }) => ({
      ingredient,
      form: as,
      mass: { text, unit: 'g' as const },
    }));
    const kept = await form.send(isWhole, () =>
      mixTrial(needs, { match: match.id, added }, time.instantMs()),
    );
    if (!kept) return;
    showToast({ text: WORDS.saved(number), onUndo: () => void actions.undo(kept.id) });
    goOn(linkTo('match', match.id));
  }

  return (
    <Page title={WORDS.title(number)} backTo={linkTo('match', match.id)} backLabel={match.name}>
      <form class="stack" onSubmit={send} noValidate>
        <p class="quiet">{number === 1 ? WORDS.baseHint : given.size > 0 ? WORDS.suggested : WORDS.empty}</p>
        {lines.map(({ ingredient, ...amount }) => (
          <AmountField
            key={ingredient}
            name={name(ingredient)}
            match={match}
            isTinter={ingredient !== match.base}
            amount={amount}
            onAmount={(next) => {
              amounts.value = new Map(amounts.value).set(ingredient, next);
            }}
          />
        ))}
        {form.isTried.value && said.length === 0 && <p class="problem">{WORDS.nothing}</p>}
        <details class="caution-more">
          <summary>{WORDS.when}</summary>
          <TimeField label={WORDS.when} {...time.field} problem={form.refused.value?.fields['at']} />
        </details>
        <p class="quiet small">{NEXT_WORDS.cautions}</p>
        <Send form={form}>{WORDS.save}</Send>
      </form>
    </Page>
  );
}
