import { calendarFile } from '../../reminders/calendar/calendar';
import { planEvents } from '../../reminders/calendar/plan-events';
import { revise } from '../../reminders/calendar/revise';
import { type HandedOver, handOverCalendar } from '../../reminders/phone/hand-over';
import { keepEvents, keptEvents } from '../../reminders/phone/kept';
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
  const issued = open.which === 'own' ? await keptEvents().catch(() => []) : [];
  const events = revise(issued, drafts, open.needs.now());
  const given = await handOverCalendar(calendarFile(events, CALENDAR_WORDS.name, zone), FILE_NAME);
  if (open.which === 'own' && (given === 'shared' || given === 'downloaded')) await keepEvents(events);
  return given;
}
