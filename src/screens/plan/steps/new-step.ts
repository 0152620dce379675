import { FINISH_LAWS, isCuring } from '../../../estimator/finishes/finish-law';
import { type FinishName, finishTraits } from '../../../estimator/finishes/traits';
import { GATES, type PlanStep, TASKS, WAITS, WEATHERS } from '../../../logbook/kinds/shop/plan';
import { BESIDE_WAITS } from '../../../planner/starting-plans/beside';
import type { Job } from '../../../planner/starting-plans/job';
import {
  atBench,
  check,
  days,
  hold,
  minutes,
  type StepDraft,
  sprayed,
  wait,
  window,
} from '../../../planner/starting-plans/parts';
import { STARTING_PLANS } from '../../../planner/starting-plans/start-plan';
import type { Task, WaitFor } from '../../../planner/step';
import { MINUTE_S } from '../../../units';
import { CHECK_WORDS, STEP_WORDS, TASK_WORDS, WAIT_WORDS } from '../../../words/plan/planner';

/** Everything that can be added to some plan, as `kind:what`. */
export const NEW_STEPS: readonly { readonly value: string; readonly label: string }[] = [
  ...TASKS.map((task) => ({ value: `work:${task}`, label: TASK_WORDS[task] })),
  ...WAITS.map((until) => ({ value: `wait:${until}`, label: WAIT_WORDS[until] })),
  ...GATES.map((gate) => ({ value: `gate:${gate}`, label: CHECK_WORDS[gate] })),
  { value: 'window:', label: STEP_WORDS.window },
  ...WEATHERS.map((against) => ({ value: `hold:${against}`, label: STEP_WORDS.hold[against] })),
];

/** What can be added to a plan of a finish: nothing that belongs to another. */
export function newSteps(finish?: FinishName): typeof NEW_STEPS {
  if (finish === undefined) return NEW_STEPS;
  const { meltsIn, blushes, hasWindow } = finishTraits(finish);
  const others = new Set([
    ...(meltsIn ? [] : ['work:flash-coat']),
    ...(blushes ? [] : ['hold:blush']),
    ...(hasWindow ? [] : ['window:']),
    ...(finish === 'shellac' ? [] : ['work:spirit-off']),
  ]);
  return NEW_STEPS.filter(({ value }) => !others.has(value));
}

const JOB_OF: { readonly [F in FinishName]: Job } = {
  nitrocellulose: 'full-clear',
  acrylic: 'full-clear',
  cab: 'full-clear',
  shellac: 'shellac',
  waterborne: 'waterborne',
  precatalysed: 'catalysed',
  conversion: 'catalysed',
  urethane: 'catalysed',
};

/** The wait of a finish that cures as its law has it, at the usual conditions. */
function lawWait(what: string, finish: FinishName): StepDraft | undefined {
  if (what !== 'recoat' || !isCuring(finish)) return undefined;
  const { low, typical, high } = FINISH_LAWS[finish].recoat;
  return wait('recoat', minutes(low / MINUTE_S, typical / MINUTE_S, high / MINUTE_S));
}

// As in the starting plans where they have the step; else common practice, no source.
const IN_STARTING_PLANS: readonly StepDraft[] = Object.values(STARTING_PLANS).flatMap(({ steps }) => steps);
const COATS: readonly Task[] = ['coat', 'toner-coat', 'opaque-coat', 'seal'];
const BENCH_MINUTES = 30;

/** A new step of that sort, with the times that are usual for the finish. */
export function newStep(value: string, id: string, finish: FinishName = 'nitrocellulose'): PlanStep {
  const [kind = '', what = ''] = value.split(':');
  const own = STARTING_PLANS[JOB_OF[finish]].steps;
  const draft =
    (kind === 'wait' ? lawWait(what, finish) : undefined) ??
    besideWait(what) ??
    [...own, ...IN_STARTING_PLANS].find((step) => step.kind === kind && whatOf(step) === what) ??
    fresh(kind, what);
  return { ...draft, id } as PlanStep;
}

/** A wait of what stands beside the finish. */
function besideWait(what: string): StepDraft | undefined {
  const band = BESIDE_WAITS[what as WaitFor];
  return band && wait(what as WaitFor, band);
}

function whatOf(step: StepDraft): string {
  switch (step.kind) {
    case 'work':
      return step.task;
    case 'wait':
      return step.until;
    case 'gate':
      return step.check;
    case 'window':
      return '';
    case 'hold':
      return step.against;
  }
}

function fresh(kind: string, what: string): StepDraft {
  if (kind === 'wait')
    return wait(what as WaitFor, what === 'flash-off' ? minutes(5, 10, 15) : days(3, 5, 7));
  if (kind === 'gate') return check(what as (typeof GATES)[number]);
  if (kind === 'window') return window(45, 240);
  if (kind === 'hold') return hold(what as (typeof WEATHERS)[number]);
  return COATS.some((coat) => coat === what) ? sprayed(what as Task) : atBench(what as Task, BENCH_MINUTES);
}
