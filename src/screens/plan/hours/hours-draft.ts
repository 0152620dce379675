import type { WorkingHours } from '../../../logbook/fold/shop/plans';
import { hoursOf, USUAL_WEEK } from '../../../shop/plan/clock-hours';

/** From and to by the clock, as they are being typed. */
export interface StretchDraft {
  readonly open: string;
  readonly close: string;
}

export interface SpanDraft extends StretchDraft {
  readonly isOn: boolean;
}

/** The stretches of a day in their order: the morning, and what follows the break. */
export interface StretchesDraft {
  readonly isOn: boolean;
  readonly stretches: readonly StretchDraft[];
}

export interface DayDraft {
  readonly work: StretchesDraft;
  readonly booth: StretchesDraft;
}

export interface WeekDraft {
  readonly days: readonly DayDraft[];
  readonly quiet: SpanDraft;
}

const WORK = { open: '09:00', close: '17:00' };
const QUIET = { open: '20:00', close: '08:00' };
export const EMPTY_STRETCH: StretchDraft = { open: '', close: '' };

/** What is said of a day, or what is usual and switched off. */
const stretchesOf = (
  said: readonly StretchDraft[] | undefined,
  usual: readonly StretchDraft[],
): StretchesDraft =>
  said && said.length > 0 ? { isOn: true, stretches: said } : { isOn: false, stretches: usual };

/** The week as it was last set, or as it is usual. */
export function weekDraft(hours: Pick<WorkingHours, 'week' | 'quiet'> | undefined): WeekDraft {
  return {
    days: (hours?.week ?? USUAL_WEEK).map((day) => {
      const work = stretchesOf(day.work, [WORK]);
      return { work, booth: stretchesOf(day.booth, work.stretches) };
    }),
    quiet: { isOn: hours?.quiet !== undefined, ...(hours?.quiet ?? QUIET) },
  };
}

/** What keeps a stretch from being kept. */
export function stretchProblem(
  stretches: readonly StretchDraft[],
  index: number,
): 'missing' | 'overlaps' | undefined {
  const [before, stretch] = [stretches[index - 1], stretches[index]];
  if (!stretch || !hasBothTimes(stretch)) return 'missing';
  if (!before || !hasBothTimes(before)) return undefined;
  return hoursOf(stretch).open < hoursOf(before).close ? 'overlaps' : undefined;
}

const hasBothTimes = ({ open, close }: StretchDraft): boolean => open !== '' && close !== '';

/** Whether a span is off, or has both its times. */
export const isSpanWhole = (span: SpanDraft): boolean => !span.isOn || hasBothTimes(span);

const areInOrder = ({ isOn, stretches }: StretchesDraft): boolean =>
  !isOn || stretches.every((_, index) => stretchProblem(stretches, index) === undefined);

/** Whether every stretch that is on has both times, and begins when the one before it is over. */
export const isWhole = ({ days, quiet }: WeekDraft): boolean =>
  isSpanWhole(quiet) &&
  days.every(({ work, booth }) => !work.isOn || (areInOrder(work) && areInOrder(booth)));

/** The week as an entry says it. */
export function weekSaid({ days, quiet }: WeekDraft): Pick<WorkingHours, 'week' | 'quiet'> {
  return {
    week: days.map(({ work, booth }) => ({
      work: work.isOn ? work.stretches.map(timesOf) : [],
      ...(work.isOn && booth.isOn && { booth: booth.stretches.map(timesOf) }),
    })),
    ...(quiet.isOn && { quiet: timesOf(quiet) }),
  };
}

const timesOf = ({ open, close }: StretchDraft): StretchDraft => ({ open, close });
