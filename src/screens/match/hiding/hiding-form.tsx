import { useSignal } from '@preact/signals';
import type { Said } from '../../../actions/log';
import { readHiding } from '../../../actions/match/read-hiding';
import { LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { type Draft, draftProblem, TypedField } from '../../../parts/fields/typed-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { HIDING_WORDS as WORDS } from '../../../words/match/tools';
import type { OfMatch } from '../use-match';

const FIELDS = ['blackCard', 'blackCoated', 'whiteCard', 'whiteCoated'] as const;
type FieldName = (typeof FIELDS)[number];

interface HidingDraft {
  readonly dryFilm: Draft<'um' | 'mil'>;
  readonly in: 'Y' | 'L';
  readonly fields: Readonly<Record<FieldName, Draft<'ratio'>>>;
}
interface PartProps {
  readonly draft: HidingDraft;
  readonly patch: (some: Partial<HidingDraft>) => void;
  readonly isTried: boolean;
}

const BLANK: Draft<'ratio'> = { text: '', unit: 'ratio' };
const blank = (unit: 'um' | 'mil'): HidingDraft => ({
  dryFilm: { text: '', unit },
  in: 'Y',
  fields: { blackCard: BLANK, blackCoated: BLANK, whiteCard: BLANK, whiteCoated: BLANK },
});

const isWhole = ({ dryFilm, fields }: HidingDraft): boolean =>
  draftProblem(dryFilm, LIMITS.dryFilm) === undefined &&
  FIELDS.every((name) => draftProblem(fields[name], LIMITS.luminance) === undefined);

function saidOf({ dryFilm, in: as, fields }: HidingDraft, { match }: OfMatch): Said<'hiding-read'> {
  const newest = match.trials.at(-1)?.id;
  return {
    match: match.id,
    ...(newest === undefined ? {} : { trial: newest }),
    dryFilm,
    in: as,
    black: { card: fields.blackCard, coated: fields.blackCoated },
    white: { card: fields.whiteCard, coated: fields.whiteCoated },
  };
}

/** A draw-down over a black and white card. */
export function HidingForm({ match }: OfMatch) {
  const { needs, actions } = useShop();
  const form = useForm();
  const draft = useSignal(blank(useUnits() === 'us' ? 'mil' : 'um'));
  const patch = (some: Partial<HidingDraft>): void => {
    draft.value = { ...draft.value, ...some };
  };
  const part = { draft: draft.value, patch, isTried: form.isTried.value };

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const said = saidOf(draft.value, { match });
    const kept = await form.send(isWhole(draft.value), () => readHiding(needs, said));
    if (kept) showToast({ text: WORDS.saved, onUndo: () => void actions.undo(kept.id) });
  }

  return (
    <form class="stack" onSubmit={send} noValidate>
      <FilmFields {...part} refused={form.refused.value?.fields['dryFilm']} />
      <fieldset class="pair reading">
        <legend>{WORDS.black}</legend>
        <LuminanceField {...part} name="blackCard" label={WORDS.card} />
        <LuminanceField {...part} name="blackCoated" label={WORDS.coated} />
      </fieldset>
      <fieldset class="pair reading">
        <legend>{WORDS.white}</legend>
        <LuminanceField {...part} name="whiteCard" label={WORDS.card} />
        <LuminanceField {...part} name="whiteCoated" label={WORDS.coated} />
      </fieldset>
      <Send form={form}>{WORDS.save}</Send>
    </form>
  );
}

function FilmFields({
  draft,
  patch,
  isTried,
  refused,
}: PartProps & { readonly refused: string | undefined }) {
  return (
    <>
      <TypedField
        label={WORDS.dryFilm}
        hint={WORDS.dryFilmHint}
        limit={LIMITS.dryFilm}
        draft={draft.dryFilm}
        onDraft={(dryFilm) => patch({ dryFilm })}
        isTried={isTried}
        refused={refused}
      />
      <Choice
        label={WORDS.in}
        options={[
          { value: 'Y', label: 'Y' },
          { value: 'L', label: 'L*' },
        ]}
        value={draft.in}
        onChange={(as) => patch({ in: as })}
      />
    </>
  );
}

type LuminanceProps = PartProps & { readonly name: FieldName; readonly label: string };

function LuminanceField({ draft, patch, isTried, name, label }: LuminanceProps) {
  return (
    <TypedField
      label={label}
      limit={LIMITS.luminance}
      draft={draft.fields[name]}
      onDraft={(field) => patch({ fields: { ...draft.fields, [name]: field } })}
      isTried={isTried}
    />
  );
}
