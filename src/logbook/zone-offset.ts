import { DAY_MINUTES, toInstantMs, type ZoneOffset } from '../planner/local-day';

/** Clocks change on whole quarters of an hour of UTC. */
const STEP_MINUTES = 15;
const HOUR_MINUTES = 60;
const offsets = new Map<string, ZoneOffset>();

/**
 * How far the wall clock of an IANA zone is ahead of UTC, in minutes.
 *
 * Asking Intl is slow: it is asked once a day, and more closely only on a day in which the clocks change.
 */
export function zoneOffset(timeZone: string): ZoneOffset {
  const known = offsets.get(timeZone);
  if (known) return known;
  const ask = remembered(asked(timeZone));
  const offset: ZoneOffset = (minute) => {
    const dayStart = floorTo(DAY_MINUTES, minute);
    const before = ask(dayStart);
    return before === ask(dayStart + DAY_MINUTES) ? before : ask(floorTo(STEP_MINUTES, minute));
  };
  offsets.set(timeZone, offset);
  return offset;
}

const floorTo = (step: number, minute: number): number => Math.floor(minute / step) * step;

function asked(timeZone: string): ZoneOffset {
  const format = new Intl.DateTimeFormat('en', { timeZone, timeZoneName: 'longOffset' });
  return (minute) => {
    // "GMT" alone where it is level with UTC.
    const [, sign, hours, minutes] = /([+-])(\d\d):(\d\d)/.exec(format.format(toInstantMs(minute))) ?? [];
    return sign === undefined
      ? 0
      : (sign === '-' ? -1 : 1) * (Number(hours) * HOUR_MINUTES + Number(minutes));
  };
}

function remembered(offset: ZoneOffset): ZoneOffset {
  const answers = new Map<number, number>();
  return (minute) => {
    const answer = answers.get(minute) ?? offset(minute);
    answers.set(minute, answer);
    return answer;
  };
}
