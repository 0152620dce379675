import { markStep } from '../../../actions/plan/mark-step';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { linkTo } from '../../../parts/frame/route';
import { sayRefused } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { undoWithToast } from '../../../parts/frame/undo';
import { stepName } from '../../../planner/say';
import type { Step } from '../../../planner/step';
import { PIECE_PLAN } from '../../../words/plan/plan';

/** What a person says of the step that comes next. */
export function StepActs({ piece, step }: { readonly piece: string; readonly step: Step }) {
  const { needs, actions } = useShop();
  const name = stepName(step);

  async function mark(as: 'done' | 'not-passed'): Promise<void> {
    const marked = await markStep(needs, { piece, step: step.id, as });
    if (!marked.ok) return sayRefused(marked.failure);
    const text = as === 'done' ? PIECE_PLAN.marked(name) : PIECE_PLAN.notPassed(name);
    showToast({ text, onUndo: () => void undoWithToast(actions, marked.value.id, name) });
  }

  if (step.kind === 'work' && step.isCoat)
    return (
      <div class="acts">
        <LinkButton kind="main" icon="coat" href={`${linkTo('lay')}?piece=${piece}`}>
          {PIECE_PLAN.act.lay}
        </LinkButton>
        <Button icon="check" onClick={() => void mark('done')}>
          {PIECE_PLAN.act.done}
        </Button>
      </div>
    );
  return (
    <div class="acts">
      <Button kind={step.kind === 'wait' ? 'usual' : 'main'} icon="check" onClick={() => void mark('done')}>
        {doneWord(step)}
      </Button>
      {step.kind === 'gate' && (
        <Button icon="close" onClick={() => void mark('not-passed')}>
          {PIECE_PLAN.act.notPassed}
        </Button>
      )}
    </div>
  );
}

function doneWord({ kind }: Step): string {
  if (kind === 'gate') return PIECE_PLAN.act.passed;
  return kind === 'work' ? PIECE_PLAN.act.done : PIECE_PLAN.act.skip;
}
