import { COUNTS, LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { NumberField } from '../../../parts/fields/number-field';
import { TextField } from '../../../parts/fields/text-field';
import { TimeField } from '../../../parts/fields/time-field';
import { TypedField } from '../../../parts/fields/typed-field';
import type { Form } from '../../../parts/fields/use-form';
import type { useTime } from '../../../parts/fields/use-time';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { READ_WORDS as WORDS } from '../../../words/match/match';
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
      {of.as === 'trial' || of.as === 'card' ? <ClearFields drafts={drafts} form={form} /> : null}
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

/** Four coats are the usual clear over a repair of colour. Common practice, no source. */
const USUAL_CLEARS = '4';

function ClearFields({ drafts: { clearCoats }, form }: Pick<SurfaceFieldsProps, 'drafts' | 'form'>) {
  return (
    <>
      <Choice
        label={WORDS.under}
        options={[
          { value: 'bare', ...WORDS.bare },
          { value: 'clear', ...WORDS.clear },
        ]}
        value={clearCoats.value === undefined ? 'bare' : 'clear'}
        onChange={(under) => {
          clearCoats.value = under === 'bare' ? undefined : USUAL_CLEARS;
        }}
      />
      {clearCoats.value !== undefined && (
        <CountField label={WORDS.coats} of={clearCoats} isTried={form.isTried.value} limits={COUNTS.coats} />
      )}
    </>
  );
}

interface CountFieldProps {
  readonly label: string;
  readonly of: { value: string | undefined };
  readonly isTried: boolean;
  readonly limits: { readonly lowest: number; readonly highest: number };
}

function CountField({ label, of, isTried, limits }: CountFieldProps) {
  const text = of.value ?? '';
  const isWrong = !/^\d+$/.test(text.trim()) || Number(text) < limits.lowest || Number(text) > limits.highest;
  return (
    <NumberField
      label={label}
      text={text}
      onText={(next) => {
        of.value = next;
      }}
      problem={isWrong && (isTried || text !== '') ? LOGBOOK_WORDS.notACount(limits) : undefined}
    />
  );
}
