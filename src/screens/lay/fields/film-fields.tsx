import { finishTraits } from '../../../estimator/finishes/traits';
import { COAT_WAYS } from '../../../logbook/kinds/piece/coat';
import { Choice } from '../../../parts/fields/choice';
import { PassesField } from '../../../parts/fields/passes-field';
import { TypedField } from '../../../parts/fields/typed-field';
import { useShop } from '../../../parts/frame/shop-context';
import { CAN_WORDS, LAY_WORDS } from '../../../words/piece/coat/lay';
import { amountShown, type CoatDraft, type FilmField, usualAmount, wayOf, waysToSay } from '../coat-draft';

interface FilmFieldsProps {
  readonly draft: CoatDraft;
  readonly onChange: (more: Partial<CoatDraft>) => void;
  readonly isTried: boolean;
  readonly fields: Readonly<Record<string, string>>;
}

const WAYS = COAT_WAYS.map((value) => ({ value, ...LAY_WORDS.ways[value] }));

/** How the coat goes on, and how much of it, in the way the person can tell. */
export function FilmFields(props: FilmFieldsProps) {
  const { draft, onChange } = props;
  const ways = waysToSay(draft.how);
  const jar = useShop().shop.value.jars.get(draft.jar ?? '');
  const finish = jar?.product.finish;
  const meltsIn = finish === undefined || finishTraits(finish).meltsIn;
  // A flash coat of thinner opens only what melts in.
  const offered = WAYS.filter(({ value }) => meltsIn || value !== 'flash');
  return (
    <>
      <Choice
        label={LAY_WORDS.how}
        options={offered}
        value={draft.how}
        onChange={(how) => onChange({ how, by: usualAmount(how) })}
      />
      {ways.length > 1 && (
        <Choice
          label={LAY_WORDS.film}
          options={ways.map((value) => ({ value, ...LAY_WORDS.by[value] }))}
          value={wayOf(draft)}
          onChange={(by) => onChange({ by })}
        />
      )}
      <Amount {...props} />
      {draft.how === 'spray' && jar?.contains?.includes('aerosol') && (
        <p class="quiet">
          {CAN_WORDS.shake} {CAN_WORDS.rest}
        </p>
      )}
    </>
  );
}

const AMOUNTS: Record<FilmField, { readonly label: string; readonly hint: string; readonly path: string }> = {
  coat: { label: LAY_WORDS.wetFilm, hint: LAY_WORDS.hints.wet, path: 'film.wetFilm' },
  flash: { label: LAY_WORDS.wetFilm, hint: LAY_WORDS.hints.flash, path: 'film.wetFilm' },
  pass: { label: LAY_WORDS.perPass, hint: LAY_WORDS.hints.perPass, path: 'film.perPass' },
  build: { label: LAY_WORDS.dryFilm, hint: LAY_WORDS.hints.usual, path: 'film.dryFilm' },
  pad: { label: LAY_WORDS.dryFilm, hint: LAY_WORDS.hints.usual, path: 'film.dryFilm' },
  fill: { label: LAY_WORDS.dryFilm, hint: LAY_WORDS.hints.fill, path: 'film.dryFilm' },
};

function Amount({ draft, onChange, isTried, fields }: FilmFieldsProps) {
  const { by, field, amount, limit } = amountShown(draft);
  const { label, hint, path } = AMOUNTS[field];
  return (
    <>
      {by === 'passes' && (
        <PassesField
          text={draft.passes}
          onText={(passes) => onChange({ passes })}
          isTried={isTried}
          refused={fields['film.passes']}
        />
      )}
      <TypedField
        key={field}
        label={label}
        limit={limit}
        draft={amount}
        onDraft={(next) => onChange({ films: { ...draft.films, [field]: next } })}
        hint={hint}
        isTried={isTried}
        refused={fields[path]}
      />
    </>
  );
}
