import { useSignal } from '@preact/signals';
import { setReminders } from '../../../actions/reminders/set-reminders';
import { Button } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { Tick } from '../../../parts/fields/tick';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { undoWithToast } from '../../../parts/frame/undo';
import { HOURS_WORDS } from '../../../words/plan/plan';
import { REMINDER_SETTINGS } from '../../../words/plan/reminders';
import { isSpanWhole, type SpanDraft } from '../hours/hours-draft';
import { SpanFields } from '../hours/span-fields';

const USUAL = { open: '22:00', close: '07:00' };

/** Hours in which nothing sounds, but for fire. */
export function QuietHours() {
  const { shop, needs, actions } = useShop();
  const { off = [], quiet } = shop.value.reminderSettings ?? {};
  const form = useForm();
  const span = useSignal<SpanDraft>({ isOn: quiet !== undefined, ...(quiet ?? USUAL) });

  async function save(): Promise<void> {
    const { isOn, open, close } = span.value;
    const kept = await form.send(isSpanWhole(span.value), () =>
      setReminders(needs, { off, ...(isOn && { quiet: { open, close } }) }),
    );
    if (kept)
      showToast({
        text: REMINDER_SETTINGS.saved,
        onUndo: () => void undoWithToast(actions, kept.id, REMINDER_SETTINGS.quiet),
      });
  }
  return (
    <Fold title={REMINDER_SETTINGS.quiet} brief={quiet && `${quiet.open}\u00a0–\u2060\u00a0${quiet.close}`}>
      <p class="quiet">{REMINDER_SETTINGS.quietText}</p>
      <Tick
        label={REMINDER_SETTINGS.quietOn}
        isTicked={span.value.isOn}
        onTick={(isOn) => {
          span.value = { ...span.value, isOn };
        }}
      />
      {span.value.isOn && (
        <SpanFields
          from={REMINDER_SETTINGS.from}
          to={REMINDER_SETTINGS.to}
          span={span.value}
          onSpan={(changed) => {
            span.value = { ...span.value, ...changed };
          }}
          problem={form.isTried.value && !isSpanWhole(span.value) ? HOURS_WORDS.missing : undefined}
        />
      )}
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button icon="check" onClick={() => void save()}>
          {REMINDER_SETTINGS.save}
        </Button>
      </div>
    </Fold>
  );
}
