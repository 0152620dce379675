import type { Step } from '../step';
import { OPEN_PORES } from './beside';
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

/** The steps of a job, each with a name of its own, to be changed freely; open pores are filled once the wood is clean. */
export function startPlan(
  job: Job,
  newId: () => string,
  hasOpenPores = false,
): { coatsADay: number; steps: Step[] } {
  const { coatsADay, steps } = STARTING_PLANS[job];
  const [clean, ...rest] = steps;
  const all = hasOpenPores && clean ? [clean, ...OPEN_PORES, ...rest] : steps;
  return { coatsADay, steps: all.map((draft) => ({ ...draft, id: newId() })) };
}
