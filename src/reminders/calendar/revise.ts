import { DAY_MS } from '../../units';
import type { CalendarEvent, EventDraft, EventTime } from './calendar';

/**
 * The events to give out now, from those given out before and those there should be: the same stay as they are, changed ones count
 * one up, and those that fell away are cancelled, so that a second import corrects the first and doubles nothing.
 *
 * Source: RFC 5545, 3.8.7.4 (SEQUENCE) and 3.8.1.11 (STATUS:CANCELLED).
 */
export function revise(
  issued: readonly CalendarEvent[],
  drafts: readonly EventDraft[],
  nowMs: number,
): CalendarEvent[] {
  const before = new Map(issued.map((event) => [event.uid, event]));
  const wanted = new Set(drafts.map(({ uid }) => uid));
  const kept = drafts.map((draft) => next(before.get(draft.uid), draft, nowMs));
  const gone = issued.filter(({ uid, time }) => !wanted.has(uid) && startMs(time) > nowMs);
  return [...kept, ...gone.map((event) => cancelled(event, nowMs))];
}

function next(issued: CalendarEvent | undefined, draft: EventDraft, nowMs: number): CalendarEvent {
  if (!issued) return { ...draft, sequence: 0, revisedMs: nowMs, isCancelled: false };
  if (!issued.isCancelled && looks(issued) === looks(draft)) return issued;
  return { ...draft, sequence: issued.sequence + 1, revisedMs: nowMs, isCancelled: false };
}

function cancelled(event: CalendarEvent, nowMs: number): CalendarEvent {
  if (event.isCancelled) return event;
  return { ...event, sequence: event.sequence + 1, revisedMs: nowMs, isCancelled: true };
}

const looks = ({ time, summary, description, alarmsBefore }: EventDraft): string =>
  JSON.stringify(['day' in time ? time.day : [time.startMs, time.endMs], summary, description, alarmsBefore]);

/** An event that has begun stays in the calendar as it was; a day, until it is over in every zone. */
const startMs = (time: EventTime): number => ('day' in time ? (time.day + 2) * DAY_MS : time.startMs);
