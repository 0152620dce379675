import { parseNumber } from '../../../logbook/as-typed';
import { COUNTS } from '../../../logbook/limits';
import { DAY_MINUTES, HOUR_MINUTES } from '../../../units';
import { STEP_FIELDS } from '../../../words/plan/plan';

export const DURATION_UNITS = ['min', 'h', 'd'] as const;
export type DurationUnit = (typeof DURATION_UNITS)[number];

const MINUTES_IN: Record<DurationUnit, number> = { min: 1, h: HOUR_MINUTES, d: DAY_MINUTES };

/** A length of time as it is being typed. */
export interface Duration {
  readonly text: string;
  readonly unit: DurationUnit;
}

/** Minutes in the largest unit in which they are a whole or a half number. */
export function durationOf(minutes: number): Duration {
  const fits = (unit: DurationUnit): boolean =>
    minutes >= MINUTES_IN[unit] && minutes % (MINUTES_IN[unit] / 2) === 0;
  const unit = (['d', 'h'] as const).find(fits) ?? 'min';
  return { text: String(minutes / MINUTES_IN[unit]), unit };
}

/** Whole minutes of what was typed; undefined when it is not a length of time that a plan takes. */
export function minutesIn({ text, unit }: Duration): number | undefined {
  const amount = parseNumber(text);
  const minutes = amount === undefined ? Number.NaN : Math.round(amount * MINUTES_IN[unit]);
  const { lowest, highest } = COUNTS.planMinutes;
  return minutes >= lowest && minutes <= highest ? minutes : undefined;
}

/** What is wrong with what was typed; undefined when nothing is. */
export const durationProblem = (duration: Duration): string | undefined =>
  minutesIn(duration) === undefined ? STEP_FIELDS.notMinutes : undefined;
