import { differenceInCalendarDays } from 'date-fns/differenceInCalendarDays';
import { MINUTE_MS } from '../units';

// Instants, days and spans of time in words. Local time; twenty-four hours, for a band must stay short.

const CLOCK = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
const WEEKDAY = new Intl.DateTimeFormat('en-GB', { weekday: 'short' });
const DATE = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });
const DATE_YEAR = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;
const CLOCK_BAND_MS = 20 * HOUR_MS; // a wider band is told in days: its minutes would say more than is known
const WEEK_OF_DAYS = 6; // within it a weekday names one day

/** "14:20" */
export const clockWords = (atMs: number): string => CLOCK.format(atMs);

/** Whole local days from one instant to another: 1 is tomorrow, whatever the hour. */
const daysBetween = (fromMs: number, toMs: number): number => differenceInCalendarDays(toMs, fromMs);

/** "6 Dec", with its year when that is another one. */
export function dateWords(atMs: number, nowMs: number): string {
  return (yearOf(atMs) === yearOf(nowMs) ? DATE : DATE_YEAR).format(atMs);
}

const yearOf = (atMs: number): number => new Date(atMs).getFullYear();

const NEAR_DAYS = new Map([
  [-1, 'yesterday'],
  [0, 'today'],
  [1, 'tomorrow'],
]);

/** "today", "tomorrow", "Thu 27 Nov", or "6 Dec" beyond a week. */
export function dayWords(atMs: number, nowMs: number): string {
  const days = daysBetween(nowMs, atMs);
  return NEAR_DAYS.get(days) ?? (Math.abs(days) <= WEEK_OF_DAYS ? weekday(atMs) : dateWords(atMs, nowMs));
}
const weekday = (atMs: number): string => `${WEEKDAY.format(atMs)} ${DATE.format(atMs)}`;

/** "today 14:20" */
export const whenWords = (atMs: number, nowMs: number): string =>
  `${dayWords(atMs, nowMs)} ${clockWords(atMs)}`;

/** "since 14:20" of this day, "since Tue" of this week, "since 6 Nov" before. */
export function sinceWords(atMs: number, nowMs: number): string {
  const days = daysBetween(atMs, nowMs);
  if (days === 0) return `since ${clockWords(atMs)}`;
  return `since ${days <= WEEK_OF_DAYS ? WEEKDAY.format(atMs) : dateWords(atMs, nowMs)}`;
}

const MORE_THAN_A_YEAR = 'over a year';

/** A length of time, rounded to what matters: "12 min", "1 h 20 min", "3 days", "5 weeks". */
export function spanWords(ms: number): string {
  if (!Number.isFinite(ms)) return MORE_THAN_A_YEAR;
  if (ms < 90 * MINUTE_MS) return `${Math.round(ms / MINUTE_MS)} min`;
  if (ms < 5 * HOUR_MS) return hoursAndMinutes(Math.round(ms / (5 * MINUTE_MS)) * 5);
  if (ms < 36 * HOUR_MS) return `${Math.round(ms / HOUR_MS)} h`;
  if (ms < 21 * DAY_MS) return `${count(ms / DAY_MS, 'day')}`;
  if (ms < 70 * DAY_MS) return `${count(ms / DAY_MS / 7, 'week')}`;
  return `${count(ms / DAY_MS / 30.4, 'month')}`;
}

/** What is left, for a board: "4:07" minutes and seconds in the last hour, "2 h 05" within a day and a half, then days. */
export function countDownWords(ms: number): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  const seconds = Math.max(0, Math.ceil(ms / 1000));
  const minutes = Math.floor(seconds / 60);
  if (minutes < 60) return `${minutes}:${two(seconds % 60)}`;
  return ms < 36 * HOUR_MS ? `${Math.floor(minutes / 60)} h ${two(minutes % 60)}` : spanWords(ms);
}

const count = (amount: number, what: string): string => {
  const whole = Math.round(amount);
  return `${whole} ${what}${whole === 1 ? '' : 's'}`;
};
const hoursAndMinutes = (minutes: number): string =>
  minutes % 60 === 0 ? `${minutes / 60} h` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;

/** "just now", "12 min ago" */
export const agoWords = (ms: number): string => (ms < MINUTE_MS ? 'just now' : `${spanWords(ms)} ago`);

/** Beyond what was looked at. */
export const MUCH_LATER = 'much later';

/** A band of time in words: its likely time, its ends, and the day where it is not today. */
export interface BandWords {
  readonly likely: string;
  readonly earliest: string;
  readonly late: string;
  readonly day: string | undefined;
}

export interface BandMs {
  readonly earliestMs: number;
  readonly likelyMs: number;
  readonly lateMs: number;
}

/** The likely time of a band: to the minute only where the band is hours. */
export const likelyWords = ({ earliestMs, likelyMs, lateMs }: BandMs, nowMs: number): string =>
  lateMs - earliestMs <= CLOCK_BAND_MS ? whenWords(likelyMs, nowMs) : dayWords(likelyMs, nowMs);

/** A band in clock times when it is short, in dates when it is not; an end that is not reached says so. */
export function bandWords({ earliestMs, likelyMs, lateMs }: BandMs, nowMs: number): BandWords {
  const inDays = !(lateMs - earliestMs <= CLOCK_BAND_MS);
  const end = (atMs: number): string => {
    if (!Number.isFinite(atMs)) return MUCH_LATER;
    if (inDays) return dateWords(atMs, nowMs);
    return daysBetween(likelyMs, atMs) === 0
      ? clockWords(atMs)
      : `${WEEKDAY.format(atMs)} ${clockWords(atMs)}`;
  };
  const isToday = daysBetween(nowMs, likelyMs) === 0;
  const day = inDays || isToday || !Number.isFinite(likelyMs) ? undefined : dayWords(likelyMs, nowMs);
  return { likely: end(likelyMs), earliest: end(earliestMs), late: end(lateMs), day };
}
