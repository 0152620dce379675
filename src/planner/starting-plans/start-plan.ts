import type { Step } from '../step';
import type { Job } from './job';
import { COATS_ON, DROP_FILL, FULL_CLEAR, MELT_IN, OPAQUE_TOUCH_UP, TONER } from './lacquer';
import { CATALYSED, SHELLAC, WATERBORNE } from './other-finishes';
import type { StartingPlan } from './parts';

/** The jobs there is a plan to start from for. */
export const STARTING_PLANS: Readonly<Record<Job, StartingPlan>> = {
  'melt-in': MELT_IN,
  'opaque-touch-up': OPAQUE_TOUCH_UP,
  'full-clear': FULL_CLEAR,
  toner: TONER,
  waterborne: WATERBORNE,
  shellac: SHELLAC,
  catalysed: CATALYSED,
  'drop-fill': DROP_FILL,
  'coats-on': COATS_ON,
};

/** The steps of a job, each with a name of its own, to be changed freely. */
export function startPlan(job: Job, newId: () => string): { coatsADay: number; steps: Step[] } {
  const { coatsADay, steps } = STARTING_PLANS[job];
  return { coatsADay, steps: steps.map((draft) => ({ ...draft, id: newId() })) };
}
