import { LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { named, SelectField } from '../../../parts/fields/select-field';
import { TypedField } from '../../../parts/fields/typed-field';
import { useShop } from '../../../parts/frame/shop-context';
import { FORM_WORDS as WORDS } from '../../../words/match/form';
import { clears, type FormPart, NEW_BASE, NEW_CLEAR, whiteBases } from './match-draft';

/** What the mix is weighed from, and how finely. */
export function ScaleFields({ draft, patch, isTried }: FormPart) {
  const shop = useShop().shop.value;
  const bases = named(whiteBases(shop));
  const inClear = named(clears(shop));
  return (
    <>
      <SelectField
        label={WORDS.base}
        options={[...bases, { value: NEW_BASE, label: WORDS.newBase }]}
        value={draft.base}
        onChange={(base) => patch({ base })}
      />
      <TypedField
        label={WORDS.scale}
        hint={WORDS.scaleHint}
        limit={LIMITS.division}
        draft={draft.division}
        onDraft={(division) => patch({ division })}
        isTried={isTried}
      />
      <Choice
        label={WORDS.letDowns}
        options={(['none', 'ten', 'both'] as const).map((value) => ({
          value,
          label: WORDS.letDownNames[value],
        }))}
        value={draft.letDowns}
        onChange={(letDowns) => patch({ letDowns })}
      />
      {draft.letDowns !== 'none' && (
        <SelectField
          label={WORDS.clear}
          options={[...inClear, { value: NEW_CLEAR, label: WORDS.newClear }]}
          value={draft.clear}
          onChange={(clear) => patch({ clear })}
        />
      )}
    </>
  );
}
