import fc from 'fast-check';
import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { type CalendarEvent, calendarFile, type EventTime } from '../../src/reminders/calendar/calendar';

const DAY_MS = 86_400_000;

function event(more: Partial<CalendarEvent> = {}): CalendarEvent {
  return {
    uid: 'coatwait-s1',
    time: { startMs: Date.parse('2026-03-02T09:00:00Z'), endMs: Date.parse('2026-03-02T09:10:00Z') },
    summary: 'Coat: Radio cabinet',
    description: 'As planned',
    alarmsBefore: [10],
    sequence: 0,
    revisedMs: Date.parse('2026-03-01T18:30:05Z'),
    isCancelled: false,
    ...more,
  };
}

/** The events of a file as the reference library reads them. */
function parsed(events: readonly CalendarEvent[], name = 'Bench'): ICAL.Event[] {
  const calendar = new ICAL.Component(ICAL.parse(calendarFile(events, name, 'Europe/Berlin')));
  return calendar.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
}
const only = (it: CalendarEvent): ICAL.Event => parsed([it])[0] as ICAL.Event;
const startOf = (it: CalendarEvent): string => only(it).startDate.toString();

test('writes a whole file, line by line', () => {
  // Written by hand from RFC 5545, 3.4 to 3.8.
  expect(calendarFile([event()], 'Bench', 'Europe/Berlin').split('\r\n')).toEqual([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Coatwait//Coatwait//EN',
    'CALSCALE:GREGORIAN',
    'NAME:Bench',
    'X-WR-CALNAME:Bench',
    'X-WR-TIMEZONE:Europe/Berlin',
    'BEGIN:VEVENT',
    'UID:coatwait-s1',
    'DTSTAMP:20260301T183005Z',
    'LAST-MODIFIED:20260301T183005Z',
    'SEQUENCE:0',
    'DTSTART:20260302T090000Z',
    'DTEND:20260302T091000Z',
    'SUMMARY:Coat: Radio cabinet',
    'DESCRIPTION:As planned',
    'STATUS:CONFIRMED',
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    'DESCRIPTION:Coat: Radio cabinet',
    'TRIGGER:-PT10M',
    'END:VALARM',
    'END:VEVENT',
    'END:VCALENDAR',
    '',
  ]);
});

test('escapes text as the RFC does', () => {
  // RFC 5545, 3.3.11: the example of the RFC, in our property.
  const summary = 'Project XYZ Final Review\nConference Room - 3B\nCome Prepared.';
  const lines = calendarFile([event({ summary, alarmsBefore: [] })], 'B', 'Europe/Berlin').replaceAll(
    '\r\n ',
    '',
  );
  expect(lines).toContain('SUMMARY:Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.\r\n');
  expect(calendarFile([], 'a;b,c\\d', 'Europe/Berlin')).toContain('NAME:a\\;b\\,c\\\\d\r\n');
});

const TEXT = fc.string({ unit: 'binary', maxLength: 300 });
// The RFC knows no control characters but the tab; the line break is written as an escape.
const isControl = (character: string): boolean =>
  (character < ' ' && character !== '\t' && character !== '\n') || character === '\u007f';
const asRead = (text: string): string =>
  [...text.replace(/\r\n?/g, '\n')].filter((character) => !isControl(character)).join('');

test('gives back every text that goes in, through the reference library', () => {
  fc.assert(
    fc.property(TEXT, TEXT, (summary, description) => {
      const read = only(event({ summary, description }));
      expect(read.summary).toBe(asRead(summary));
      expect(read.description).toBe(asRead(description));
    }),
  );
});

test('keeps lines to 75 octets, ends each with CRLF and cuts no character in two', () => {
  fc.assert(
    fc.property(TEXT, (summary) => {
      const file = calendarFile([event({ summary })], summary, 'Europe/Berlin');
      const lines = file.split('\r\n');
      const utf8 = new TextEncoder();
      for (const line of lines) expect(utf8.encode(line).length).toBeLessThanOrEqual(75);
      expect(lines.join('')).not.toMatch(/[\r\n]/);
      expect(file.endsWith('\r\n')).toBe(true);
      expect(file).not.toMatch(/\p{Surrogate}/u); // a lone half of a character
    }),
  );
});

test.each([
  { name: 'one octet', summary: 'x'.repeat(67), folds: false }, // SUMMARY: is 8 octets: 75
  { name: 'one octet too many', summary: 'x'.repeat(68), folds: true },
  { name: 'a character of two that ends on 75', summary: `${'x'.repeat(65)}é`, folds: false },
  { name: 'a character of two that would end on 76', summary: `${'x'.repeat(66)}é`, folds: true },
  { name: 'the last character of one that ends on 75', summary: `${'x'.repeat(66)}\u007e`, folds: false },
  {
    name: 'the first character of two that would end on 76',
    summary: `${'x'.repeat(66)}\u0080`,
    folds: true,
  },
  { name: 'the last character of two that ends on 75', summary: `${'x'.repeat(65)}\u07ff`, folds: false },
  {
    name: 'the first character of three that would end on 76',
    summary: `${'x'.repeat(65)}\u0800`,
    folds: true,
  },
  { name: 'the last character of three that ends on 75', summary: `${'x'.repeat(64)}\uffff`, folds: false },
  {
    name: 'the first character of four that would end on 76',
    summary: `${'x'.repeat(64)}\u{10000}`,
    folds: true,
  },
  { name: 'a character of four that would end on 76', summary: `${'x'.repeat(64)}😀`, folds: true },
])('folds at 75 octets: $name', ({ summary, folds }) => {
  const file = calendarFile([event({ summary, alarmsBefore: [] })], 'B', 'Europe/Berlin');
  expect(file.includes('\r\n ')).toBe(folds);
  expect(file.replaceAll('\r\n ', '')).toContain(`SUMMARY:${summary}\r\n`);
});

const HALF = '\ud83d';
test('writes half a character as the replacement character', () => {
  expect(only(event({ summary: `a${HALF}b` })).summary).toBe('a\ufffdb');
});

test('an alarm at the very time is without a sign, one after it too', () => {
  const file = calendarFile([event({ alarmsBefore: [10, 0, -5] })], 'B', 'Europe/Berlin');
  expect([...file.matchAll(/^TRIGGER:(.*)\r$/gm)].map(([, trigger]) => trigger)).toEqual([
    '-PT10M',
    'PT0M',
    'PT5M',
  ]);
});

test('carries what RFC 5545 asks of every event and alarm', () => {
  const events = ['a', 'b', 'c'].map((uid) => event({ uid, alarmsBefore: [60, 30, 10] }));
  const calendar = new ICAL.Component(ICAL.parse(calendarFile(events, 'Bench', 'Europe/Berlin')));
  for (const name of ['version', 'prodid']) expect(calendar.getAllProperties(name)).toHaveLength(1); // 3.6
  const components = calendar.getAllSubcomponents('vevent');
  for (const component of components) {
    for (const name of ['uid', 'dtstamp', 'dtstart', 'sequence', 'status', 'summary'])
      expect(component.getAllProperties(name)).toHaveLength(1); // 3.6.1: once
    const alarms = component.getAllSubcomponents('valarm');
    expect(alarms.map((alarm) => String(alarm.getFirstPropertyValue('trigger')))).toEqual([
      '-PT60M',
      '-PT30M',
      '-PT10M',
    ]);
    for (const alarm of alarms)
      for (const name of ['action', 'trigger', 'description'])
        expect(alarm.getAllProperties(name)).toHaveLength(1); // 3.6.6
  }
  const uids = components.map((component) => component.getFirstPropertyValue('uid'));
  expect(new Set(uids).size).toBe(3);
});

// Instants either side of changes of the clocks, at month ends and on leap days: each comes back as the instant it was.
test.each([
  { what: 'a coat at two in the morning', at: '2026-03-02T02:00:00Z' },
  { what: '02:30 in New York, an hour that did not exist: 07:30 UTC', at: '2026-03-08T07:30:00Z' },
  { what: 'the minute before the clocks jump in Europe', at: '2026-03-29T00:59:00Z' },
  { what: 'the minute in which they jump', at: '2026-03-29T01:00:00Z' },
  { what: 'the hour that comes twice in Europe, the first time', at: '2026-10-25T00:30:00Z' },
  { what: 'and the second time', at: '2026-10-25T01:30:00Z' },
  { what: 'a leap day', at: '2028-02-29T23:59:00Z' },
  { what: 'the last minute of a year', at: '2026-12-31T23:59:00Z' },
  { what: 'a month end', at: '2026-04-30T23:50:00Z' },
])('keeps the instant: $what', ({ at }) => {
  const startMs = Date.parse(at);
  const it = event({ time: { startMs, endMs: startMs + 20 * 60_000 } });
  expect(startOf(it)).toBe(at);
  expect(only(it).startDate.zone).toBe(ICAL.Timezone.utcTimezone);
  expect(only(it).endDate.toUnixTime()).toBe(startMs / 1000 + 1200);
});

test.each([
  { day: '2028-02-29', next: '2028-03-01' },
  { day: '2027-02-28', next: '2027-03-01' },
  { day: '2026-12-31', next: '2027-01-01' },
])('a promise takes the whole of $day', ({ day, next }) => {
  const it = event({ time: { day: Date.parse(day) / DAY_MS }, alarmsBefore: [-480] });
  expect(startOf(it)).toBe(day);
  expect(only(it).startDate.isDate).toBe(true);
  expect(only(it).endDate.toString()).toBe(next);
  expect(calendarFile([it], 'B', 'Europe/Berlin')).toContain('TRIGGER:PT480M');
});

test('gives an event of no length no end, as an end must come later than the start', () => {
  const time: EventTime = { startMs: 0, endMs: 0 };
  expect(calendarFile([event({ time })], 'B', 'Europe/Berlin')).not.toContain('DTEND');
  expect(only(event({ time })).duration.toSeconds()).toBe(0);
});

test('a cancelled event sounds no alarm', () => {
  const file = calendarFile([event({ isCancelled: true })], 'B', 'Europe/Berlin');
  expect(file).toContain('STATUS:CANCELLED');
  expect(file).not.toContain('VALARM');
});

test('an empty bench is a file without events', () => {
  expect(parsed([])).toEqual([]);
});
