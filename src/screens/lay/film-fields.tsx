import { COAT_WAYS } from '../../logbook/kinds/coat';
import { LIMITS } from '../../logbook/limits';
import { Choice } from '../../parts/choice';
import { NumberField } from '../../parts/number-field';
import { TypedField } from '../../parts/typed-field';
import { LAY_WORDS } from '../../words/lay';
import { type CoatDraft, passesProblem, wayOf, waysToSay } from './coat-draft';

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
  return (
    <>
      <Choice label={LAY_WORDS.how} options={WAYS} value={draft.how} onChange={(how) => onChange({ how })} />
      {ways.length > 1 && (
        <Choice
          label={LAY_WORDS.film}
          options={ways.map((value) => ({ value, ...LAY_WORDS.by[value] }))}
          value={wayOf(draft)}
          onChange={(by) => onChange({ by })}
        />
      )}
      <Amount {...props} />
    </>
  );
}

function Amount({ draft, onChange, isTried, fields }: FilmFieldsProps) {
  const by = wayOf(draft);
  if (by === 'usual')
    return (
      <TypedField
        label={LAY_WORDS.dryFilm}
        limit={LIMITS.dryFilm}
        draft={draft.dryFilm}
        onDraft={(dryFilm) => onChange({ dryFilm })}
        hint={draft.how === 'brush-fill' ? LAY_WORDS.hints.fill : LAY_WORDS.hints.usual}
        isTried={isTried}
        refused={fields['film.dryFilm']}
      />
    );
  if (by === 'wet')
    return (
      <TypedField
        label={LAY_WORDS.wetFilm}
        limit={LIMITS.wetFilm}
        draft={draft.wetFilm}
        onDraft={(wetFilm) => onChange({ wetFilm })}
        hint={draft.how === 'flash' ? LAY_WORDS.hints.flash : LAY_WORDS.hints.wet}
        isTried={isTried}
        refused={fields['film.wetFilm']}
      />
    );
  return (
    <>
      <NumberField
        label={LAY_WORDS.passes}
        text={draft.passes}
        onText={(passes) => onChange({ passes })}
        problem={(isTried ? passesProblem(draft.passes) : undefined) ?? fields['film.passes']}
      />
      <TypedField
        label={LAY_WORDS.perPass}
        limit={LIMITS.wetFilm}
        draft={draft.perPass}
        onDraft={(perPass) => onChange({ perPass })}
        hint={LAY_WORDS.hints.perPass}
        isTried={isTried}
        refused={fields['film.perPass']}
      />
    </>
  );
}
