import { expect, test } from 'vitest';
import { atLocal, localDay, nextDayStart, weekday } from '../../src/planner/local-day';
import { dateTime, utc } from './a-bench';

// New York, 2026: clocks go forward at 02:00 on 8 March and back at 02:00 on 1 November (Energy Policy Act of 2005, sec. 110:
// second Sunday in March, first Sunday in November), from UTC-5 to UTC-4 and back.
const newYork = (minute: number): number =>
  minute >= utc('2026-03-08 07:00') && minute < utc('2026-11-01 06:00') ? -240 : -300;
// Lord Howe Island: half an hour of summer time, UTC+11 and UTC+10:30; ends at 02:00 on the first Sunday in April.
const lordHowe = (minute: number): number => (minute < utc('2026-04-04 15:00') ? 660 : 630);
const dayOf = (date: string): number => utc(`${date} 00:00`) / 1440;

test.each([
  { zone: newYork, date: '2026-03-07', time: 120, is: '2026-03-07 07:00', what: 'the day before' },
  { zone: newYork, date: '2026-03-08', time: 0, is: '2026-03-08 05:00', what: 'midnight before the jump' },
  {
    zone: newYork,
    date: '2026-03-08',
    time: 119,
    is: '2026-03-08 06:59',
    what: 'the minute before the jump',
  },
  {
    zone: newYork,
    date: '2026-03-08',
    time: 150,
    is: '2026-03-08 07:30',
    what: '02:30, which does not exist: 03:30',
  },
  {
    zone: newYork,
    date: '2026-03-08',
    time: 180,
    is: '2026-03-08 07:00',
    what: 'the first minute after the jump',
  },
  { zone: newYork, date: '2026-03-09', time: 0, is: '2026-03-09 04:00', what: 'midnight after the jump' },
  {
    zone: newYork,
    date: '2026-11-01',
    time: 90,
    is: '2026-11-01 05:30',
    what: '01:30, which comes twice: the first',
  },
  {
    zone: newYork,
    date: '2026-11-01',
    time: 120,
    is: '2026-11-01 07:00',
    what: 'the minute after the hour that comes twice',
  },
  { zone: newYork, date: '2026-11-02', time: 0, is: '2026-11-02 05:00', what: 'the day after' },
  {
    zone: lordHowe,
    date: '2026-04-05',
    time: 100,
    is: '2026-04-04 14:40',
    what: 'half an hour that comes twice',
  },
  { zone: lordHowe, date: '2026-04-05', time: 120, is: '2026-04-04 15:30', what: 'after it' },
  { zone: () => 0, date: '2028-02-29', time: 120, is: '2028-02-29 02:00', what: 'a leap day' },
])('$date $time: $what', ({ zone, date, time, is }) => {
  expect(dateTime(atLocal(dayOf(date), time, zone))).toBe(is);
});

test.each([
  { minute: '2026-03-08 04:59', day: '2026-03-07' },
  { minute: '2026-03-08 05:00', day: '2026-03-08' },
  { minute: '2026-03-09 03:59', day: '2026-03-08' },
  { minute: '2026-03-09 04:00', day: '2026-03-09' },
])('in New York $minute UTC is on $day', ({ minute, day }) => {
  expect(localDay(utc(minute), newYork)).toBe(dayOf(day));
});

test('begins the next day 23 hours after a day in which the clocks jump', () => {
  expect(dateTime(nextDayStart(utc('2026-03-08 05:00'), newYork))).toBe('2026-03-09 04:00');
});

test.each([
  ['1970-01-01', 3], // a Thursday
  ['2026-03-02', 0], // a Monday
  ['2028-02-29', 1], // a Tuesday
  ['1969-12-29', 0],
] as const)('%s is weekday %d', (date, day) => {
  expect(weekday(dayOf(date))).toBe(day);
});
