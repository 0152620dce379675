import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import type { PiecePlan } from '../../logbook/fold/shop/plans';
import { toMinute } from '../../planner/local-day';
import type { Step } from '../../planner/step';
import { type Happening, happenings } from './happenings';

/**
 * The steps of a plan with what was logged: a coat laid is the next coat of the plan, a check that passes opens its gate.
 *
 * Only a coat may pass over what stands before it, and a sanding another; whatever else is logged before its turn is history and no step.
 * A coat beyond the plan begins the wait after the last one anew.
 */
export function planSteps(plan: PiecePlan, piece: Piece, shop: Pick<Shop, 'jars' | 'stepMarks'>): Step[] {
  const steps = plan.steps.map(untouched);
  for (const happening of happenings(plan, piece, shop)) place(steps, happening);
  return steps;
}

function untouched(step: PiecePlan['steps'][number]): Step {
  if (step.kind === 'gate') return { ...step, failedAt: [] };
  if (step.kind === 'work') {
    const { notBefore, ...work } = step;
    return notBefore === undefined ? work : { ...work, notBefore: toMinute(Date.parse(notBefore)) };
  }
  if (step.kind !== 'wait') return step;
  const { isOwn: _, ...wait } = step;
  return wait;
}

function place(steps: Step[], happening: Happening): void {
  const at = toMinute(happening.atMs);
  const index = steps.findIndex((step) => !step.done && isAbout(step, happening));
  const step = steps[index];
  if (happening.kind === 'coat') {
    if (step) steps[index] = ended(step, at);
    else prolong(steps, at);
    return;
  }
  const isOpen = (one: Step): boolean =>
    isOpenCoat(one) || (happening.kind === 'tried' && isOpenSanding(one));
  const isInTurn = happening.kind === 'marked' || !steps.slice(0, index).some(isOpen);
  if (step && isInTurn) steps[index] = passes(happening) ? ended(step, at) : failed(step, at);
}

const passes = (happening: Happening): boolean =>
  happening.kind === 'tried' ? happening.passes : happening.kind === 'marked' ? happening.isDone : true;

function isAbout(step: Step, happening: Happening): boolean {
  switch (happening.kind) {
    case 'coat':
      return step.kind === 'work' && happening.tasks.includes(step.task);
    case 'sanded':
    case 'ground':
      return step.kind === 'work' && step.task === happening.task;
    case 'tried':
      return step.kind === 'gate' && step.check === happening.gate;
    case 'marked':
      return step.id === happening.stepId;
  }
}

const isOpenCoat = (step: Step): boolean => !step.done && step.kind === 'work' && step.isCoat === true;
/** Of what takes a film off: a thumb tried before it says nothing of the film that is left. */
const isOpenSanding = (step: Step): boolean =>
  !step.done && step.kind === 'work' && (step.task === 'level-sand' || step.task === 'rub-out');

/** The step, done: it ended at that minute, for a coat is marked on coming out of the booth. */
function ended(step: Step, at: number): Step {
  const minutes = step.kind === 'work' || step.kind === 'gate' ? step.minutes : 0;
  return { ...step, done: { from: at - minutes, to: at } };
}

const failed = (step: Step, at: number): Step =>
  step.kind === 'gate' ? { ...step, failedAt: [...step.failedAt, at] } : step;

function prolong(steps: Step[], at: number): void {
  const index = steps.findLastIndex(({ done }) => done);
  const last = steps[index];
  if (last?.done && last.kind === 'work' && last.isCoat)
    steps[index] = { ...last, done: { ...last.done, to: at } };
}
