import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { BASES } from '../../../logbook/kinds/piece/piece';
import { LIMITS } from '../../../logbook/limits';
import { Button } from '../../../parts/blocks/button';
import { areWhole, given, OneOf, Quantity, Send, Words } from '../../../parts/fields/form/form-fields';
import type { Form } from '../../../parts/fields/form/use-form';
import type { Draft } from '../../../parts/fields/typed-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { redissolves } from '../../../science/old-finish/classify';
import { findingOf, oldFinishOf } from '../../../shop/stack/old-finish';
import { OLD_WORDS } from '../../../words/piece/old-finish';
import { PIECE_FORM } from '../../../words/piece/piece';

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
  /** Sends it, and goes on to the tests of its old finish. */
  readonly onTest?: PieceFormProps['onSend'];
  /** Further fields, above the button. */
  readonly children?: ComponentChildren;
}

const OPTIONS = BASES.map((value) => ({ value, ...PIECE_FORM.bases[value] }));

/** Name, base and area of a piece; for starting one and for changing what was said. */
export function PieceForm({ piece, form, submit, onSend, onTest, children }: PieceFormProps) {
  const drafts = useDrafts(piece);
  const { name, base, oldFilm, area, note } = drafts;
  const send = (event: Event): void => {
    event.preventDefault();
    onSend(...said(drafts, piece?.note));
  };
  return (
    <form class="stack" onSubmit={send} noValidate>
      <Words
        label={PIECE_FORM.name}
        hint={PIECE_FORM.nameHint}
        of={name}
        form={form}
        at="name"
        problem={name.value.trim() === '' ? PIECE_FORM.nameMissing : undefined}
      />
      <BaseFields base={base} oldFilm={oldFilm} form={form} piece={piece} />
      {onTest && isOldBase(base.value) && (
        <>
          <p class="quiet">{OLD_WORDS.startHint}</p>
          <div class="acts">
            <Button icon="check" onClick={() => onTest(...said(drafts, piece?.note))}>
              {OLD_WORDS.startTest}
            </Button>
          </div>
        </>
      )}
      <Quantity
        label={PIECE_FORM.area}
        hint={PIECE_FORM.areaHint}
        of={area}
        limit={LIMITS.area}
        form={form}
        at="area"
        isOptional
      />
      <Words label={PIECE_FORM.note} of={note} form={form} at="note" isLong />
      {children}
      <Send form={form} icon="check">
        {submit}
      </Send>
    </form>
  );
}

type BaseFieldsProps = Pick<Drafts, 'base' | 'oldFilm'> & {
  readonly form: Form;
  readonly piece: Piece | undefined;
};

/** What lies under the first coat; how thick it is counts only where the new coat melts in. */
const BaseFields = ({ base, oldFilm, form, piece }: BaseFieldsProps) => (
  <>
    <div class="wide-tiles">
      <OneOf label={PIECE_FORM.base} of={base} options={useBases(piece)} />
    </div>
    {base.value === 'old-redissolves' && (
      <Quantity
        label={PIECE_FORM.oldFilm}
        hint={PIECE_FORM.oldFilmHint}
        of={oldFilm}
        limit={LIMITS.oldFilm}
        form={form}
        at="oldFilm"
        isOptional
      />
    )}
  </>
);

const isOldBase = (base: Piece['base']): boolean => base === 'old-redissolves' || base === 'old-closed';

/** Melt-in is not offered where spot tests say that the old finish does not re-dissolve. */
function useBases(piece: Piece | undefined) {
  const { shop } = useShop();
  const record = piece && oldFinishOf(piece.id, shop.value);
  if (!record || record.tests.length === 0 || redissolves(findingOf(record).finish)) return OPTIONS;
  return OPTIONS.map((option) =>
    option.value === 'old-redissolves' ? { ...option, hint: OLD_WORDS.noMeltIn, disabled: true } : option,
  );
}

type Drafts = ReturnType<typeof useDrafts>;

function useDrafts(piece: Piece | undefined) {
  const isUs = useUnits() === 'us';
  return {
    name: useSignal(piece?.name ?? ''),
    base: useSignal<Piece['base']>(piece?.base ?? 'bare-wood'),
    oldFilm: useSignal((piece?.oldFilm?.typed as Film) ?? ({ text: '', unit: isUs ? 'mil' : 'um' } as Film)),
    area: useSignal((piece?.area?.typed as Area) ?? ({ text: '', unit: isUs ? 'in2' : 'cm2' } as Area)),
    note: useSignal(piece?.note ?? ''),
  };
}

/** What the form says, and whether it can be sent. A note that was there before can be emptied. */
function said({ name, base, oldFilm, area, note }: Drafts, noteBefore = ''): [PieceSaid, boolean] {
  const isOld = base.value === 'old-redissolves';
  const isWhole =
    name.value.trim() !== '' &&
    areWhole([area, LIMITS.area, 'optional']) &&
    (!isOld || areWhole([oldFilm, LIMITS.oldFilm, 'optional']));
  const piece: PieceSaid = {
    name: name.value.trim(),
    base: base.value,
    ...(isOld && given('oldFilm', oldFilm)),
    ...given('area', area),
    ...((note.value !== '' || noteBefore !== '') && { note: note.value }),
  };
  return [piece, isWhole];
}
