import { useSignal } from '@preact/signals';
import { readHiding } from '../../actions/match/read-hiding';
import { LIMITS } from '../../logbook/limits';
import { Button } from '../../parts/button';
import { Choice } from '../../parts/choice';
import { Refusal } from '../../parts/refusal';
import { useShop, useUnits } from '../../parts/shop-context';
import { showToast } from '../../parts/toast';
import { type Draft, draftProblem, TypedField } from '../../parts/typed-field';
import { useForm } from '../../parts/use-form';
import { HIDING_WORDS as WORDS } from '../../words/match';
import type { OfMatch } from './use-match';

type FieldName = 'blackCard' | 'blackCoated' | 'whiteCard' | 'whiteCoated';
const BLANK: Draft<'ratio'> = { text: '', unit: 'ratio' };

/** A draw-down over a black and white card. */
export function HidingForm({ match }: OfMatch) {
  const { needs, actions } = useShop();
  const form = useForm();
  const isUs = useUnits() === 'us';
  const dryFilm = useSignal<Draft<'um' | 'mil'>>({ text: '', unit: isUs ? 'mil' : 'um' });
  const as = useSignal<'Y' | 'L'>('Y');
  const fields = useSignal<Readonly<Record<FieldName, Draft<'ratio'>>>>({
    blackCard: BLANK,
    blackCoated: BLANK,
    whiteCard: BLANK,
    whiteCoated: BLANK,
  });

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const { blackCard, blackCoated, whiteCard, whiteCoated } = fields.value;
    const isWhole =
      draftProblem(dryFilm.value, LIMITS.dryFilm) === undefined &&
      Object.values(fields.value).every((draft) => draftProblem(draft, LIMITS.luminance) === undefined);
    const newest = match.trials.at(-1)?.id;
    const kept = await form.send(isWhole, () =>
      readHiding(needs, {
        match: match.id,
        ...(newest === undefined ? {} : { trial: newest }),
        dryFilm: dryFilm.value,
        in: as.value,
        black: { card: blackCard, coated: blackCoated },
        white: { card: whiteCard, coated: whiteCoated },
      }),
    );
    if (kept) showToast({ text: WORDS.saved, onUndo: () => void actions.undo(kept.id) });
  }

  const field = (name: FieldName, label: string) => (
    <TypedField
      label={label}
      limit={LIMITS.luminance}
      draft={fields.value[name]}
      onDraft={(draft) => {
        fields.value = { ...fields.value, [name]: draft };
      }}
      isTried={form.isTried.value}
    />
  );

  return (
    <form class="stack" onSubmit={send} noValidate>
      <TypedField
        label={WORDS.dryFilm}
        hint={WORDS.dryFilmHint}
        limit={LIMITS.dryFilm}
        draft={dryFilm.value}
        onDraft={(draft) => {
          dryFilm.value = draft;
        }}
        isTried={form.isTried.value}
      />
      <Choice
        label={WORDS.in}
        options={[
          { value: 'Y', label: 'Y' },
          { value: 'L', label: 'L*' },
        ]}
        value={as.value}
        onChange={(value) => {
          as.value = value;
        }}
      />
      <fieldset class="pair reading">
        <legend>{WORDS.black}</legend>
        {field('blackCard', WORDS.card)}
        {field('blackCoated', WORDS.coated)}
      </fieldset>
      <fieldset class="pair reading">
        <legend>{WORDS.white}</legend>
        {field('whiteCard', WORDS.card)}
        {field('whiteCoated', WORDS.coated)}
      </fieldset>
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button kind="main" isSubmit isWide disabled={form.isBusy.value}>
          {WORDS.save}
        </Button>
      </div>
    </form>
  );
}
