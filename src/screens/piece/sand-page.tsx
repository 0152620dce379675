import { useSignal } from '@preact/signals';
import { SANDING_STAGES } from '../../logbook/kinds/coat';
import { LIMITS } from '../../logbook/limits';
import { Button } from '../../parts/button';
import { Choice } from '../../parts/choice';
import { momentsOf } from '../../parts/moments';
import { Notice } from '../../parts/notice';
import { Page, Section } from '../../parts/page';
import { Refusal } from '../../parts/refusal';
import { goTo, linkTo } from '../../parts/route';
import { SandingGate } from '../../parts/sanding-gate';
import { useShop, useUnits } from '../../parts/shop-context';
import { TextField } from '../../parts/text-field';
import { TimeField } from '../../parts/time-field';
import { showToast } from '../../parts/toast';
import { type Draft, draftProblem, TypedField } from '../../parts/typed-field';
import { undoWithToast } from '../../parts/undo';
import { useForm } from '../../parts/use-form';
import { useTime } from '../../parts/use-time';
import { EVENT_WORDS, SAND_FORM } from '../../words/piece';
import { whenWords } from '../../words/times';
import { typedWords } from './film-as-typed';
import { usePiece } from './use-piece';

type Stage = (typeof SANDING_STAGES)[number];

const STAGE_OPTIONS = SANDING_STAGES.map((value) => ({ value, ...SAND_FORM.stages[value] }));

/** Marks a sanding and what it took off. */
export function SandPage() {
  const { actions } = useShop();
  const { piece } = usePiece();
  const units = useUnits();
  const form = useForm();
  const time = useTime();
  const stage = useSignal<Stage>('scuff');
  const removed = useSignal<Draft<'um' | 'mil'>>({ text: '', unit: units === 'us' ? 'mil' : 'um' });
  const grit = useSignal('');
  const fields = form.refused.value?.fields ?? {};

  async function log(event: Event): Promise<void> {
    event.preventDefault();
    const isWhole = draftProblem(removed.value, LIMITS.removed) === undefined;
    const gritSaid = grit.value.trim();
    const said = {
      piece: piece.id,
      stage: stage.value,
      removed: removed.value,
      ...(gritSaid && { grit: gritSaid }),
    };
    const logged = await form.send(isWhole, () => actions.sand(said, time.instantMs() ?? Number.NaN));
    if (!logged) return;
    const what = EVENT_WORDS.sanded[said.stage];
    showToast({
      text: SAND_FORM.logged(what, typedWords(said.removed)),
      onUndo: () => void undoWithToast(actions, logged.id, what),
    });
    goTo('piece', piece.id);
  }

  return (
    <Page title={SAND_FORM.title} backTo={linkTo('piece', piece.id)}>
      <Section title={piece.name}>
        <SandingGate piece={piece}>
          <form class="stack" onSubmit={(event) => void log(event)} noValidate>
            <StillSoft stage={stage.value} />
            <Choice
              label={SAND_FORM.stage}
              options={STAGE_OPTIONS}
              value={stage.value}
              onChange={(value) => {
                stage.value = value;
              }}
            />
            <TypedField
              label={SAND_FORM.removed}
              limit={LIMITS.removed}
              draft={removed.value}
              onDraft={(draft) => {
                removed.value = draft;
              }}
              hint={SAND_FORM.removedHint}
              isTried={form.isTried.value}
              refused={fields['removed']}
            />
            <TextField
              label={SAND_FORM.grit}
              text={grit.value}
              onText={(text) => {
                grit.value = text;
              }}
              hint={SAND_FORM.gritHint}
              problem={fields['grit']}
            />
            <TimeField label={SAND_FORM.when} {...time.field} problem={fields['at']} />
            <Refusal refused={form.refused.value} />
            <div class="acts">
              <Button kind="main" icon="sand" isSubmit isWide disabled={form.isBusy.value}>
                {SAND_FORM.log}
              </Button>
            </div>
          </form>
        </SandingGate>
      </Section>
    </Page>
  );
}

/** Says so when the estimate still has the film soft; it does not forbid anything. */
function StillSoft({ stage }: { readonly stage: Stage }) {
  const nowMs = useShop().nowMs.value;
  const { piece, outlook } = usePiece();
  const name = stage === 'rub-out' ? 'rubOut' : 'level';
  const moment = momentsOf(piece, outlook, nowMs).find((one) => one.name === name);
  if (stage === 'scuff' || !moment || moment.earliestMs <= nowMs) return null;
  return (
    <Notice kind="caution">
      <p>{SAND_FORM.soft(whenWords(moment.likelyMs, nowMs))}</p>
    </Notice>
  );
}
