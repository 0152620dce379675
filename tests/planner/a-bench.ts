import type { Piece, Step, WaitStep, WindowStep, WorkStep } from '../../src/planner/step';
import type { DayHours, WorkingTimes } from '../../src/planner/windows/working-times';

/** UTC minute of a wall-clock time in a shop that lives on UTC: utc('2026-03-02 09:00'). */
export const utc = (text: string): number => Date.parse(`${text.replace(' ', 'T')}:00Z`) / 60_000;

/** "09:05" of a UTC minute, with the day in front when asked. */
export const clock = (minute: number): string => new Date(minute * 60_000).toISOString().slice(11, 16);
export const dateTime = (minute: number): string =>
  new Date(minute * 60_000).toISOString().slice(0, 16).replace('T', ' ');

export const hours = (open: number, close: number): DayHours => ({
  work: [{ open: open * 60, close: close * 60 }],
});

/** Open every day from so to so, on UTC, with nothing in the way. */
export function working(open: number, close: number, more: Partial<WorkingTimes> = {}): WorkingTimes {
  const week = Array.from({ length: 7 }, () => hours(open, close));
  return { week, closures: [], unfitAir: [], zone: () => 0, ...more };
}

export const coat = (id: string, more: Partial<WorkStep> = {}): WorkStep => ({
  id,
  kind: 'work',
  task: 'coat',
  place: 'booth',
  minutes: 10,
  moveMinutes: 5,
  isCoat: true,
  ...more,
});

export const bench = (id: string, minutes: number, more: Partial<WorkStep> = {}): WorkStep => ({
  id,
  kind: 'work',
  task: 'level-sand',
  place: 'bench',
  minutes,
  ...more,
});

export const wait = (id: string, likely: number, earliest = likely, late = likely): WaitStep => ({
  id,
  kind: 'wait',
  until: 'recoat',
  minutes: { earliest, likely, late },
});

export const window = (id: string, fromMinutes: number, untilMinutes: number): WindowStep => ({
  id,
  kind: 'window',
  fromMinutes,
  untilMinutes,
  scuffMinutes: 30,
});

export const piece = (id: string, steps: readonly Step[], more: Partial<Piece> = {}): Piece => ({
  id,
  coatsADay: 3,
  steps,
  ...more,
});
