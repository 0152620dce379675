import { useSignal } from '@preact/signals';
import { setHours } from '../../../actions/plan/set-hours';
import { Fold } from '../../../parts/blocks/fold';
import { Notice } from '../../../parts/blocks/notice';
import { Page } from '../../../parts/blocks/page';
import { Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { Line } from '../../../parts/fields/line';
import { Tick } from '../../../parts/fields/tick';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { undoWithToast } from '../../../parts/frame/undo';
import { HOURS_WORDS, PLAN_WORDS } from '../../../words/plan/plan';
import { Closures } from './closures';
import {
  type DayDraft,
  isSpanWhole,
  isWhole,
  type StretchDraft,
  type WeekDraft,
  weekDraft,
  weekSaid,
} from './hours-draft';
import { SpanFields } from './span-fields';
import { StretchFields } from './stretch-fields';

/** When work is done: the week, the booth, the quiet hours, and what is closed. */
export function HoursPage() {
  return (
    <Page title={HOURS_WORDS.title} backTo={linkTo('plan')} backLabel={PLAN_WORDS.toPlan} columns="two">
      <WeekForm />
      <Fold title={HOURS_WORDS.closures}>
        <Closures />
      </Fold>
    </Page>
  );
}

function WeekForm() {
  const { shop, needs, actions } = useShop();
  const form = useForm();
  const draft = useSignal<WeekDraft>(weekDraft(shop.value.hours));
  const { days, quiet } = draft.value;
  const change = (more: Partial<WeekDraft>): void => {
    draft.value = { ...draft.value, ...more };
  };

  async function save(event: Event): Promise<void> {
    event.preventDefault();
    const kept = await form.send(isWhole(draft.value), () => setHours(needs, weekSaid(draft.value)));
    if (kept)
      showToast({
        text: HOURS_WORDS.saved,
        onUndo: () => void undoWithToast(actions, kept.id, HOURS_WORDS.title),
      });
  }

  return (
    <form class="stack" onSubmit={(event) => void save(event)} noValidate>
      <p class="quiet">{HOURS_WORDS.text}</p>
      {!days.some(({ work }) => work.isOn) && (
        <Notice kind="caution">
          <p>{HOURS_WORDS.noDays}</p>
        </Notice>
      )}
      {days.map((day, index) => (
        <DayFields
          key={HOURS_WORDS.days[index]}
          name={HOURS_WORDS.days[index] ?? ''}
          day={day}
          onDay={(changed) => change({ days: days.map((one, at) => (at === index ? changed : one)) })}
          isTried={form.isTried.value}
        />
      ))}
      <Line label={HOURS_WORDS.quiet} says={quiet.isOn ? stretchesText([quiet]) : HOURS_WORDS.off}>
        <Tick
          label={HOURS_WORDS.quietOn}
          isTicked={quiet.isOn}
          onTick={(isOn) => change({ quiet: { ...quiet, isOn } })}
        />
        {quiet.isOn && (
          <SpanFields
            from={HOURS_WORDS.quietFrom}
            to={HOURS_WORDS.quietTo}
            span={quiet}
            onSpan={(span) => change({ quiet: { ...quiet, ...span } })}
            problem={form.isTried.value && !isSpanWhole(quiet) ? HOURS_WORDS.missing : undefined}
          />
        )}
      </Line>
      <Send form={form} icon="check">
        {HOURS_WORDS.save}
      </Send>
    </form>
  );
}

interface DayFieldsProps {
  readonly name: string;
  readonly day: DayDraft;
  readonly onDay: (day: DayDraft) => void;
  readonly isTried: boolean;
}

function DayFields({ name, day, onDay, isTried }: DayFieldsProps) {
  const { work, booth } = day;
  return (
    <Line label={name} says={work.isOn ? stretchesText(work.stretches) : HOURS_WORDS.off}>
      <Tick label={name} isTicked={work.isOn} onTick={(isOn) => onDay({ ...day, work: { ...work, isOn } })} />
      {work.isOn && (
        <>
          <StretchFields
            name={name}
            from={HOURS_WORDS.from}
            to={HOURS_WORDS.to}
            stretches={work.stretches}
            onStretches={(stretches) => onDay({ ...day, work: { ...work, stretches } })}
            isTried={isTried}
          />
          <details class="folded" open={booth.isOn}>
            <summary>
              {HOURS_WORDS.booth}
              <span class="heard">, {name}</span>
            </summary>
            <div class="stack">
              <Tick
                label={HOURS_WORDS.booth}
                isTicked={booth.isOn}
                onTick={(isOn) => onDay({ ...day, booth: { ...booth, isOn } })}
              />
              {booth.isOn && (
                <StretchFields
                  name={HOURS_WORDS.named(name, HOURS_WORDS.boothName)}
                  from={HOURS_WORDS.from}
                  to={HOURS_WORDS.to}
                  stretches={booth.stretches}
                  onStretches={(stretches) => onDay({ ...day, booth: { ...booth, stretches } })}
                  isTried={isTried}
                />
              )}
            </div>
          </details>
        </>
      )}
    </Line>
  );
}

const stretchesText = (stretches: readonly StretchDraft[]): string =>
  stretches.map(({ open, close }) => `${open}\u00a0–\u2060\u00a0${close}`).join(', ');
