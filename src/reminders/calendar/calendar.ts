import { contentLine, dateValue, textValue, utcValue } from './content-line';

/** When an event is: from instant to instant, or all of one day (days since 1970). */
export type EventTime = { readonly startMs: number; readonly endMs: number } | { readonly day: number };

/** An event as it should stand in the calendar. */
export interface EventDraft {
  /** The same for the same step at every export. */
  readonly uid: string;
  readonly time: EventTime;
  readonly summary: string;
  readonly description: string;
  /** Minutes before the start at which the calendar sounds; below 0: after it. */
  readonly alarmsBefore: readonly number[];
}

/** An event as it was last given out. */
export interface CalendarEvent extends EventDraft {
  /** Counts the changes, so that a calendar takes the newest for the same event. */
  readonly sequence: number;
  readonly revisedMs: number;
  readonly isCancelled: boolean;
}

/**
 * An iCalendar file of the events, ready to be shared.
 * @param zone the IANA name of the time zone that the events were planned in
 *
 * Source: RFC 5545; the name of the calendar by RFC 7986, 5.1. The zone to show it in has no property of the RFCs: X-WR-TIMEZONE is
 * what calendars write and read (common practice, no source).
 * Times are in UTC, without time zones: a coat flashes off in minutes gone by, not by the clock on the wall, and an instant
 * stays right when the clocks change. There is no METHOD, so DTSTAMP is when the event was last changed (3.8.7.2).
 */
export function calendarFile(events: readonly CalendarEvent[], calendarName: string, zone: string): string {
  return [
    contentLine('BEGIN', 'VCALENDAR'),
    contentLine('VERSION', '2.0'),
    contentLine('PRODID', '-//Coatwait//Coatwait//EN'),
    contentLine('CALSCALE', 'GREGORIAN'),
    contentLine('NAME', textValue(calendarName)),
    contentLine('X-WR-CALNAME', textValue(calendarName)),
    contentLine('X-WR-TIMEZONE', textValue(zone)),
    ...events.flatMap(eventLines),
    contentLine('END', 'VCALENDAR'),
  ].join('');
}

function eventLines(event: CalendarEvent): string[] {
  const revised = utcValue(event.revisedMs);
  return [
    contentLine('BEGIN', 'VEVENT'),
    contentLine('UID', textValue(event.uid)),
    contentLine('DTSTAMP', revised),
    contentLine('LAST-MODIFIED', revised),
    contentLine('SEQUENCE', String(event.sequence)),
    ...timeLines(event.time),
    contentLine('SUMMARY', textValue(event.summary)),
    contentLine('DESCRIPTION', textValue(event.description)),
    contentLine('STATUS', event.isCancelled ? 'CANCELLED' : 'CONFIRMED'),
    contentLine('TRANSP', 'TRANSPARENT'), // a piece that dries keeps nobody busy
    ...(event.isCancelled ? [] : event.alarmsBefore.flatMap((minutes) => alarmLines(minutes, event.summary))),
    contentLine('END', 'VEVENT'),
  ];
}

function timeLines(time: EventTime): string[] {
  if ('day' in time) return [contentLine('DTSTART;VALUE=DATE', dateValue(time.day))]; // lasts one day: 3.6.1
  const start = contentLine('DTSTART', utcValue(time.startMs));
  // The end must come later than the start (3.8.2.2); an event without one ends as it begins.
  return time.endMs > time.startMs ? [start, contentLine('DTEND', utcValue(time.endMs))] : [start];
}

function alarmLines(minutesBefore: number, summary: string): string[] {
  const sign = minutesBefore > 0 ? '-' : '';
  return [
    contentLine('BEGIN', 'VALARM'),
    contentLine('ACTION', 'DISPLAY'),
    contentLine('DESCRIPTION', textValue(summary)),
    contentLine('TRIGGER', `${sign}PT${Math.abs(minutesBefore)}M`),
    contentLine('END', 'VALARM'),
  ];
}
