import { toInstantMs, type ZoneOffset } from '../../planner/local-day';
import { DAY_MINUTES, HOUR_MINUTES } from '../../units';

/** No zone changes its clocks and back within a week, and all change them on a whole quarter of an hour of UTC. */
const COARSE_TO_FINE_MINUTES = [7 * DAY_MINUTES, DAY_MINUTES, 15];
const offsets = new Map<string, ZoneOffset>();

/**
 * How far the wall clock of an IANA zone is ahead of UTC, in minutes.
 *
 * Asking Intl is slow: it is asked once a week, and more closely only in a week in which the clocks change.
 */
export function zoneOffset(timeZone: string): ZoneOffset {
  const known = offsets.get(timeZone);
  if (known) return known;
  const ask = remembered(asked(timeZone));
  const offset: ZoneOffset = (minute) => {
    let before = 0;
    for (const step of COARSE_TO_FINE_MINUTES) {
      const start = Math.floor(minute / step) * step;
      before = ask(start);
      if (before === ask(start + step)) break;
    }
    return before;
  };
  offsets.set(timeZone, offset);
  return offset;
}

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
