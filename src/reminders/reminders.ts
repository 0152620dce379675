import type { Plan } from '../planner/plan';
import type { Bench } from '../planner/step';
import { planReminders } from './plan-reminders';
import type { Reminder } from './reminder';
import { promiseReminders, ragReminders, type Surroundings, shopReminders } from './shop-reminders';

/** Everything there is to be reminded of, as the plan stands, soonest first. */
export function remindersOf(plan: Plan, { working, pieces }: Bench, around: Surroundings): Reminder[] {
  const promises = new Map(pieces.map(({ id, promised }) => [id, promised]));
  return [
    ...planReminders(plan, working.zone),
    ...ragReminders(plan, working),
    ...promiseReminders(plan, promises),
    ...shopReminders(around),
  ].sort((a, b) => a.at - b.at);
}
