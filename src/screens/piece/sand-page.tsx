import { useSignal } from '@preact/signals';
import type { Sanding } from '../../logbook/fold/pieces';
import { SANDING_STAGES } from '../../logbook/kinds/coat';
import { LIMITS } from '../../logbook/limits';
import { OneOf, Quantity, Send, Words } from '../../parts/fields/form-fields';
import { SandingGate } from '../../parts/fields/sanding-gate';
import { TimeField } from '../../parts/fields/time-field';
import { type Draft, draftProblem } from '../../parts/fields/typed-field';
import { useForm } from '../../parts/fields/use-form';
import { useTime } from '../../parts/fields/use-time';
import { Page, Section } from '../../parts/frame/page';
import { fromHere, linkTo } from '../../parts/frame/route';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { sayLogged } from '../../parts/frame/undo';
import { closestPGrade, grainUm, gritOf } from '../../science/abrasives';
import { EVENT_WORDS, SAND_FORM } from '../../words/piece/piece';
import { typedWords } from './film-as-typed';
import { StillSoft } from './still-soft';
import { usePiece } from './use-piece';

const STAGES = SANDING_STAGES.map((value) => ({ value, ...SAND_FORM.stages[value] }));

/** Marks a sanding and what it took off. */
export function SandPage() {
  const { piece } = usePiece();
  const { form, time, stage, removed, grit, log } = useSanding();
  return (
    <Page title={SAND_FORM.title} backTo={linkTo('piece', piece.id)}>
      <Section title={piece.name}>
        <SandingGate piece={piece}>
          <form class="stack" onSubmit={log} noValidate>
            <StillSoft stage={stage.value} />
            <OneOf label={SAND_FORM.stage} of={stage} options={STAGES} />
            <Quantity
              label={SAND_FORM.removed}
              hint={SAND_FORM.removedHint}
              of={removed}
              limit={LIMITS.removed}
              form={form}
              at="removed"
            />
            <Words label={SAND_FORM.grit} hint={grainWords(grit.value)} of={grit} form={form} at="grit" />
            <TimeField label={SAND_FORM.when} {...time.field} problem={form.refused.value?.fields['at']} />
            <Send form={form} icon="sand">
              {SAND_FORM.log}
            </Send>
          </form>
        </SandingGate>
      </Section>
    </Page>
  );
}

/** What the paper named cuts with; how to name one until then. */
function grainWords(text: string): string {
  const paper = gritOf(text);
  if (!paper) return SAND_FORM.gritHint;
  const um = String(grainUm(paper));
  return paper.scale === 'P' ? SAND_FORM.grain(um) : SAND_FORM.grainLike(um, closestPGrade(paper));
}

function useSanding() {
  const { actions } = useShop();
  const { piece } = usePiece();
  const form = useForm();
  const time = useTime();
  const stage = useSignal<Sanding['stage']>('scuff');
  const removed = useSignal<Draft<'um' | 'mil'>>({ text: '', unit: useUnits() === 'us' ? 'mil' : 'um' });
  const grit = useSignal('');

  async function log(event: Event): Promise<void> {
    const goOn = fromHere();
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
    sayLogged(actions, logged.id, what, SAND_FORM.logged(what, typedWords(said.removed)));
    goOn(linkTo('piece', piece.id));
  }

  return { form, time, stage, removed, grit, log: (event: Event) => void log(event) };
}
