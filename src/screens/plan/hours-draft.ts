import type { WorkingHours } from '../../logbook/fold/plans';
import { USUAL_WEEK } from '../../logbook/plan/clock-hours';

/** A span of clock times as it is being typed. */
export interface SpanDraft {
  readonly isOn: boolean;
  readonly open: string;
  readonly close: string;
}

export interface DayDraft {
  readonly work: SpanDraft;
  readonly booth: SpanDraft;
  /** Further stretches of work that day, kept as they are. */
  readonly more: WorkingHours['week'][number]['work'];
}

export interface WeekDraft {
  readonly days: readonly DayDraft[];
  readonly quiet: SpanDraft;
}

const WORK = { open: '09:00', close: '17:00' };
const QUIET = { open: '20:00', close: '08:00' };

const spanOf = (
  span: { open: string; close: string } | undefined,
  usual: { open: string; close: string },
): SpanDraft => ({
  isOn: span !== undefined,
  ...(span ?? usual),
});

/** The week as it was last set, or as it is usual. */
export function weekDraft(hours: Pick<WorkingHours, 'week' | 'quiet'> | undefined): WeekDraft {
  return {
    days: (hours?.week ?? USUAL_WEEK).map(({ work: [first, ...more], booth }) => ({
      work: spanOf(first, WORK),
      booth: spanOf(booth?.[0], first ?? WORK),
      more,
    })),
    quiet: spanOf(hours?.quiet, QUIET),
  };
}

/** Whether both times of every span that is on are there. */
export const isWhole = ({ days, quiet }: WeekDraft): boolean =>
  [quiet, ...days.flatMap(({ work, booth }) => [work, booth])].every(isSpanWhole);

/** Whether a span is off, or has both its times. */
export const isSpanWhole = ({ isOn, open, close }: SpanDraft): boolean =>
  !isOn || (open !== '' && close !== '');

/** The week as an entry says it. */
export function weekSaid({ days, quiet }: WeekDraft): Pick<WorkingHours, 'week' | 'quiet'> {
  return {
    week: days.map(({ work, booth, more }) => ({
      work: work.isOn ? [timesOf(work), ...more] : [],
      ...(work.isOn && booth.isOn && { booth: [timesOf(booth)] }),
    })),
    ...(quiet.isOn && { quiet: timesOf(quiet) }),
  };
}

const timesOf = ({ open, close }: SpanDraft) => ({ open, close });
