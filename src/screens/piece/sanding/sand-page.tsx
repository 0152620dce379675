import { useSignal } from '@preact/signals';
import { overrideHolds } from '../../../actions/verdicts/override-hold';
import type { Sanding } from '../../../logbook/fold/piece/pieces';
import { SANDING_STAGES } from '../../../logbook/kinds/piece/coat';
import { LIMITS } from '../../../logbook/limits';
import { CautionRow } from '../../../parts/blocks/caution';
import { Page, Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { Quantity, Send, Words } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { TimeField } from '../../../parts/fields/time/time-field';
import { useTime } from '../../../parts/fields/time/use-time';
import { type Draft, draftProblem } from '../../../parts/fields/typed-field';
import { typedWords } from '../../../parts/fields/typed-words';
import { fromHere } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { JudgedLine } from '../../../parts/verdict/judged-line';
import { Reasons } from '../../../parts/verdict/reasons';
import { isReasonWhole, WhyAnyway } from '../../../parts/verdict/why-anyway';
import { cautionsFor } from '../../../reminders/cautions';
import { closestPGrade, grainUm, gritOf } from '../../../science/abrasives';
import { SANDING_ACTS } from '../../../verdicts/sanding';
import { holdsOf } from '../../../verdicts/verdict';
import { EVENT_WORDS, SAND_FORM } from '../../../words/piece/piece';
import { usePiece } from '../use-piece';
import { FillRest } from '../zone/fill-rest';
import { isUsualRemoval, stageNext, verdictOnSanding } from './judged-sanding';
import { usualRemoval } from './usual-removal';

const STAGES = SANDING_STAGES.map((value) => ({ value, ...SAND_FORM.stages[value] }));

/** Marks a sanding and what it took off. */
export function SandPage() {
  const { piece, zone, home } = usePiece();
  const { form, time, stage, choose, removed, grit, reason, verdict, log } = useSanding();
  return (
    <Page title={SAND_FORM.title} backTo={home}>
      <Section title={zone?.name ?? piece.name}>
        <form class="stack" onSubmit={log} noValidate>
          <Choice label={SAND_FORM.stage} options={STAGES} value={stage} onChange={choose} />
          {zone && stage === 'level' && <FillRest piece={piece} zoneId={zone.zoneId} />}
          <SandingCautions />
          <JudgedLine verdict={verdict} />
          <Reasons pieceId={piece.id} verdict={verdict} />
          <Quantity
            label={SAND_FORM.removed}
            hint={SAND_FORM.removedHint(useUnits())}
            of={removed}
            limit={LIMITS.removed}
            form={form}
            at="removed"
          />
          <Words label={SAND_FORM.grit} hint={grainWords(grit.value)} of={grit} form={form} at="grit" />
          <TimeField label={SAND_FORM.when} {...time.field} problem={form.refused.value?.fields['at']} />
          <WhyAnyway verdict={verdict} reason={reason} isTried={form.isTried.value} />
          <Send form={form} icon="sand">
            {SAND_FORM.log}
          </Send>
        </form>
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
  const open = useShop();
  const { actions, needs } = open;
  const { piece, zone, place, home } = usePiece();
  const form = useForm();
  const time = useTime();
  const stage = useSignal(stageNext(open.standings.peek().get(piece.id)));
  const units = useUnits();
  const unit = units === 'us' ? 'mil' : 'um';
  const removed = useSignal<Draft<'um' | 'mil'>>(usualRemoval(stage.value, unit));
  const said = { stage: stage.value, removed: removed.value };
  const isUsual = isUsualRemoval(said);
  const grit = useSignal('');
  const reason = useSignal('');
  const act = SANDING_ACTS[stage.value];
  const verdict = verdictOnSanding(open, { standId: zone?.zoneId ?? piece.id, ...said });

  /** What is usual follows the stage; what was typed stays. */
  const choose = (next: Sanding['stage']): void => {
    if (isUsual) removed.value = usualRemoval(next, removed.value.unit);
    stage.value = next;
  };

  async function log(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isWhole = draftProblem(removed.value, LIMITS.removed) === undefined && isReasonWhole(reason.value);
    const gritSaid = grit.value.trim();
    const sanding = {
      piece: piece.id,
      ...said,
      ...place,
      ...(isUsual && { isUsual: true as const }),
      ...(gritSaid && { grit: gritSaid }),
    };
    const holds = verdict && reason.value.trim() ? holdsOf(verdict) : [];
    const logged = await form.send(isWhole, async () => {
      const kept = await overrideHolds(
        needs,
        { piece: piece.id, act, reason: reason.value, ...place },
        holds,
      );
      return kept.ok ? actions.sand(sanding, time.instantMs() ?? Number.NaN) : kept;
    });
    if (!logged) return;
    const what = EVENT_WORDS.sanded[sanding.stage];
    sayLogged(actions, logged.id, what, SAND_FORM.logged(what, typedWords(sanding.removed, units)));
    goOn(home);
  }

  return {
    form,
    time,
    stage: stage.value,
    choose,
    removed,
    grit,
    reason,
    verdict,
    log: (event: Event) => void log(event),
  };
}

/** The cautions before any sanding, a line each. What is to be said of lead the judge says. */
function SandingCautions() {
  const { shop } = useShop();
  const dust = cautionsFor('sand', [], [...shop.value.silencedCautions]);
  return (
    <ul class="caution-rows">
      {dust.map((caution) => (
        <li key={caution.id}>
          <CautionRow caution={caution} />
        </li>
      ))}
    </ul>
  );
}
