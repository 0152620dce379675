import { atBench, check, days, drops, type StepDraft, wait } from '../../planner/starting-plans/parts';
import type { Step } from '../../planner/step';
import { asPlanned } from '../../shop/plan/as-planned';
import { REST_DAYS } from '../../shop/zone/drop-fill';
import { type ActionNeeds, type Logged, log } from '../log';

/** Minutes at the bench to level a small fill (common practice, no source). */
const LEVEL_MINUTES = 30;

/** So many drops, the rest, levelling, and a look for sink a week later. */
const clearDropFill = (count: number): readonly StepDraft[] => [
  ...drops(count),
  wait('level-sand', days(REST_DAYS.earliest, REST_DAYS.usualFrom, REST_DAYS.deep)),
  check('powders'),
  atBench('level-sand', LEVEL_MINUTES),
  wait('rest', days(REST_DAYS.sinkCheck, REST_DAYS.sinkCheck, REST_DAYS.sinkCheck)),
  check('sink'),
];

/** Takes the drops still to come into the plan of a piece, before whatever else is planned for it. */
export function planDrops(
  needs: ActionNeeds,
  piece: string,
  { drops: count, aDay }: { readonly drops: number; readonly aDay: number },
): Logged<'piece-planned'> {
  const before = needs.logbook.shop.value.plans.get(piece);
  const fresh = clearDropFill(count).map((draft) => asPlanned({ ...draft, id: needs.newId() } as Step));
  return log(needs, 'piece-planned', {
    piece,
    coatsADay: aDay,
    steps: [...fresh, ...(before ? stillPlanned(needs, piece) : [])],
    since: new Date(needs.now()).toISOString(),
  });
}

/** What was planned before is kept as it was said, less drops of an earlier reckoning. */
function stillPlanned({ logbook }: ActionNeeds, piece: string) {
  const { plans, entries } = logbook.shop.value;
  const entry = entries.get(plans.get(piece)?.id ?? '');
  if (entry?.kind !== 'piece-planned') return [];
  return entry.steps.some((step) => step.kind === 'work' && step.task === 'drop-fill') ? [] : entry.steps;
}
