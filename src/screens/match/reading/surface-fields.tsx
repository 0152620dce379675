import { COUNTS, LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import type { Form } from '../../../parts/fields/form/use-form';
import { TextField } from '../../../parts/fields/text-field';
import { TimeField } from '../../../parts/fields/time/time-field';
import type { useTime } from '../../../parts/fields/time/use-time';
import { TypedField } from '../../../parts/fields/typed-field';
import { READ_WORDS as WORDS } from '../../../words/match/read';
import { ClearFields, CountField } from './count-fields';
import type { ReadOf } from './read-of';
import type { ReadDrafts } from './use-read-drafts';

interface SurfaceFieldsProps {
  readonly of: ReadOf;
  readonly drafts: ReadDrafts;
  readonly time: ReturnType<typeof useTime>;
  readonly form: Form;
}

/** In what state the surface was: how dry, under what clear, with how much tinter or toner, and when. */
export function SurfaceFields({ of, drafts, time, form }: SurfaceFieldsProps) {
  const { isDry, note } = drafts;
  return (
    <>
      {of.as === 'tint' && <ShareField drafts={drafts} form={form} />}
      {of.as === 'toned' && (
        <CountField
          label={WORDS.passes}
          of={drafts.passes}
          isTried={form.isTried.value}
          limits={COUNTS.passes}
        />
      )}
      {of.as === 'trial' || of.as === 'card' ? (
        <ClearFields clearCoats={drafts.clearCoats} isTried={form.isTried.value} />
      ) : null}
      <Choice
        label={WORDS.film}
        options={[
          { value: 'dry', ...WORDS.dry },
          { value: 'wet', ...WORDS.wet },
        ]}
        value={isDry.value ? 'dry' : 'wet'}
        onChange={(film) => {
          isDry.value = film === 'dry';
        }}
      />
      <details class="caution-more">
        <summary>{WORDS.more}</summary>
        <div class="stack">
          <TextField
            label={WORDS.over}
            hint={WORDS.overHint}
            text={note.value}
            onText={(text) => {
              note.value = text;
            }}
          />
          <TimeField label={WORDS.when} {...time.field} problem={form.refused.value?.fields['at']} />
        </div>
      </details>
    </>
  );
}

function ShareField({ drafts: { share }, form }: Pick<SurfaceFieldsProps, 'drafts' | 'form'>) {
  return (
    <TypedField
      label={WORDS.share}
      hint={WORDS.shareHint}
      limit={LIMITS.tintShare}
      draft={share.value}
      onDraft={(draft) => {
        share.value = draft;
      }}
      isTried={form.isTried.value}
    />
  );
}
