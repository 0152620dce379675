import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Piece } from '../../logbook/fold/pieces';
import { BASES } from '../../logbook/kinds/piece';
import { LIMITS } from '../../logbook/limits';
import { Button } from '../../parts/button';
import { Choice } from '../../parts/choice';
import { Refusal } from '../../parts/refusal';
import { useUnits } from '../../parts/shop-context';
import { TextField } from '../../parts/text-field';
import { type Draft, draftProblem, TypedField } from '../../parts/typed-field';
import type { Form } from '../../parts/use-form';
import { PIECE_FORM } from '../../words/piece';

type Area = Draft<'m2' | 'cm2' | 'ft2' | 'in2'>;
type Film = Draft<'um' | 'mil'>;

/** What is said of a piece; what stays empty is left out. */
export interface PieceSaid {
  readonly name: string;
  readonly base: Piece['base'];
  readonly oldFilm?: Film;
  readonly area?: Area;
  readonly note?: string;
}

interface PieceFormProps {
  readonly piece?: Piece;
  readonly form: Form;
  readonly submit: string;
  readonly onSend: (said: PieceSaid, isWhole: boolean) => void;
  /** Further fields, above the button. */
  readonly children?: ComponentChildren;
}

const OPTIONS = BASES.map((value) => ({ value, ...PIECE_FORM.bases[value] }));
const isOld = (base: Piece['base']): boolean => base === 'old-redissolves';

/** Name, base and area of a piece; for starting one and for changing what was said. */
export function PieceForm({ piece, form, submit, onSend, children }: PieceFormProps) {
  const isUs = useUnits() === 'us';
  const name = useSignal(piece?.name ?? '');
  const base = useSignal<Piece['base']>(piece?.base ?? 'bare-wood');
  const oldFilm = useSignal<Film>((piece?.oldFilm?.typed as Film) ?? { text: '', unit: isUs ? 'mil' : 'um' });
  const area = useSignal<Area>((piece?.area?.typed as Area) ?? { text: '', unit: isUs ? 'in2' : 'cm2' });
  const note = useSignal(piece?.note ?? '');
  const fields = form.refused.value?.fields ?? {};
  const nameProblem = name.value.trim() === '' ? PIECE_FORM.nameMissing : undefined;

  function send(event: Event): void {
    event.preventDefault();
    const hasOld = isOld(base.value) && oldFilm.value.text.trim() !== '';
    const isWhole =
      !nameProblem &&
      !draftProblem(area.value, LIMITS.area, true) &&
      (!isOld(base.value) || !draftProblem(oldFilm.value, LIMITS.oldFilm, true));
    const said: PieceSaid = {
      name: name.value.trim(),
      base: base.value,
      ...(hasOld && { oldFilm: oldFilm.value }),
      ...(area.value.text.trim() !== '' && { area: area.value }),
      ...((note.value !== '' || piece?.note) && { note: note.value }),
    };
    onSend(said, isWhole);
  }

  const isTried = form.isTried.value;
  return (
    <form class="stack" onSubmit={send} noValidate>
      <TextField
        label={PIECE_FORM.name}
        text={name.value}
        onText={(text) => {
          name.value = text;
        }}
        hint={PIECE_FORM.nameHint}
        problem={(isTried ? nameProblem : undefined) ?? fields['name']}
      />
      <div class="wide-tiles">
        <Choice
          label={PIECE_FORM.base}
          options={OPTIONS}
          value={base.value}
          onChange={(value) => {
            base.value = value;
          }}
        />
      </div>
      {isOld(base.value) && (
        <TypedField
          label={PIECE_FORM.oldFilm}
          limit={LIMITS.oldFilm}
          draft={oldFilm.value}
          onDraft={(draft) => {
            oldFilm.value = draft;
          }}
          hint={PIECE_FORM.oldFilmHint}
          isOptional
          isTried={isTried}
          refused={fields['oldFilm']}
        />
      )}
      <TypedField
        label={PIECE_FORM.area}
        limit={LIMITS.area}
        draft={area.value}
        onDraft={(draft) => {
          area.value = draft;
        }}
        hint={PIECE_FORM.areaHint}
        isOptional
        isTried={isTried}
        refused={fields['area']}
      />
      <TextField
        label={PIECE_FORM.note}
        text={note.value}
        onText={(text) => {
          note.value = text;
        }}
        isLong
        problem={fields['note']}
      />
      {children}
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button kind="main" icon="check" isSubmit isWide disabled={form.isBusy.value}>
          {submit}
        </Button>
      </div>
    </form>
  );
}
