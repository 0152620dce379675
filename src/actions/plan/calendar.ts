import { toMinute } from '../../planner/local-day';
import { calendarFile } from '../../reminders/calendar/calendar';
import { planEvents } from '../../reminders/calendar/plan-events';
import { revise } from '../../reminders/calendar/revise';
import { type HandedOver, handOverCalendar } from '../../reminders/phone/hand-over';
import { keepEvents, keptEvents } from '../../reminders/phone/kept';
import { DAY_MINUTES } from '../../units';
import { CALENDAR_WORDS } from '../../words/plan/reminders';
import type { OpenShop } from '../shop';
import { followPlan } from './follow-plan';

const FILE_NAME = 'coatwait-bench.ics';

/**
 * Gives the whole bench out as a calendar file. What was given out before is corrected by it, not doubled; the demo's is not remembered.
 */
export async function giveCalendar(open: OpenShop): Promise<HandedOver> {
  const { bench, plan } = followPlan(open).planned.peek();
  if (!plan.ok) return 'failed'; // an empty file would cancel what was given out before
  const { pieces } = open.shop.peek();
  const zone = open.needs.zone();
  const drafts = planEvents(plan.value, bench, { piece: (id) => pieces.get(id)?.name ?? '', zone });
  const nowMs = open.needs.now();
  const issued = open.which === 'own' ? await keptEvents().catch(() => []) : [];
  const events = revise(issued, drafts, nowMs);
  const given = await handOverCalendar(calendarFile(events, CALENDAR_WORDS.name, zone), FILE_NAME);
  if (open.which === 'own' && (given === 'shared' || given === 'downloaded'))
    await keepEvents(events.filter(isOfUse(toMinute(nowMs))));
  return given;
}

const A_YEAR_MINUTES = 366 * DAY_MINUTES;

/** Events long past are not corrected any more. */
const isOfUse =
  (now: number) =>
  ({ time }: { readonly time: { readonly day: number } | { readonly endMs: number } }): boolean =>
    'day' in time
      ? time.day * DAY_MINUTES > now - A_YEAR_MINUTES
      : toMinute(time.endMs) > now - A_YEAR_MINUTES;
