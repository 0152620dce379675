import { expect, test } from 'vitest';
import { zoneOffset } from '../../src/logbook/time/zone-offset';
import { planBench } from '../../src/planner/plan-bench';
import type { Step } from '../../src/planner/step';
import { remindersNow } from '../../src/reminders/due';
import { soundsAt } from '../../src/reminders/quiet';
import type { Reminder } from '../../src/reminders/reminder';
import { remindersOf } from '../../src/reminders/reminders';
import { coat, dateTime, piece, utc, wait, working } from '../planner/a-bench';

// The nights in which the clocks change. Every instant is worked out by hand from the rules of the zones (IANA tz database): Berlin is
// UTC+1, and UTC+2 from the last Sunday of March 01:00 UTC to the last of October 01:00 UTC; New York is UTC-5, and UTC-4 from the
// second Sunday of March 02:00 to the first of November 02:00 on the wall.
const BERLIN = zoneOffset('Europe/Berlin');
const NEW_YORK = zoneOffset('America/New_York');
const NOTHING = { jars: [], cartridges: [], cards: [], updates: [] };
const NIGHT = { open: 22 * 60, close: 31 * 60 }; // 22:00 to 07:00

/** Two coats, with so much drying between them, in a shop open 8 to 17 on its wall. */
function planned(now: string, zone: typeof BERLIN, dryMinutes: number) {
  const steps: Step[] = [coat('1'), wait('w', dryMinutes), coat('2')];
  const bench = { now: utc(now), working: working(8, 17, { zone }), pieces: [piece('a', steps)] };
  const plan = planBench(bench);
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  const reminders = remindersOf(plan.value, bench, NOTHING);
  const startOf = (id: string) => dateTime(plan.value.steps.find(({ stepId }) => stepId === id)?.start ?? 0);
  const remindedOf = (id: string) => dateTime(reminders.find((one) => one.id === id)?.at ?? 0);
  return { second: startOf('2'), reminded: remindedOf('next-coat:2') };
}

// The first coat is begun at 16:00 on the eve and takes 10 minutes.
test.each([
  // 15:10 UTC + 15 h = 06:10 UTC = 08:10 on the wall, where the night had only 15 hours from 16:10 to 08:10.
  {
    what: 'the hour that is left out, Berlin',
    zone: BERLIN,
    now: '2026-03-28 15:00',
    dry: 900,
    is: '2026-03-29 06:10',
  },
  // Dry at 05:10 UTC = 07:10: not before the shop opens at 08:00 = 06:00 UTC.
  {
    what: 'opening after it, Berlin',
    zone: BERLIN,
    now: '2026-03-28 15:00',
    dry: 840,
    is: '2026-03-29 06:00',
  },
  // 14:10 UTC + 17 h = 07:10 UTC = 08:10 on the wall: the night had 17 hours.
  {
    what: 'the hour that comes twice, Berlin',
    zone: BERLIN,
    now: '2026-10-24 14:00',
    dry: 1020,
    is: '2026-10-25 07:10',
  },
  {
    what: 'opening after it, Berlin',
    zone: BERLIN,
    now: '2026-10-24 14:00',
    dry: 840,
    is: '2026-10-25 07:00',
  },
  // 21:10 UTC + 15 h = 12:10 UTC = 08:10 in summer time.
  {
    what: 'the hour that is left out, New York',
    zone: NEW_YORK,
    now: '2026-03-07 21:00',
    dry: 900,
    is: '2026-03-08 12:10',
  },
  {
    what: 'opening after it, New York',
    zone: NEW_YORK,
    now: '2026-03-07 21:00',
    dry: 840,
    is: '2026-03-08 12:00',
  },
  // 20:10 UTC + 17 h = 13:10 UTC = 08:10 in winter time.
  {
    what: 'the hour that comes twice, New York',
    zone: NEW_YORK,
    now: '2026-10-31 20:00',
    dry: 1020,
    is: '2026-11-01 13:10',
  },
  {
    what: 'opening after it, New York',
    zone: NEW_YORK,
    now: '2026-10-31 20:00',
    dry: 840,
    is: '2026-11-01 13:00',
  },
])('plan and reminder over $what', ({ zone, now, dry, is }) => {
  expect(planned(now, zone, dry)).toEqual({ second: is, reminded: is });
});

const coatDue = (at: string): Reminder => ({ id: 'next-coat:1', kind: 'next-coat', at: utc(at) });
// In the quiet hours: it sounds at 07:00 on the wall of that morning.
test.each([
  { what: 'Berlin, forward', zone: BERLIN, due: '2026-03-28 23:30', sounds: '2026-03-29 05:00' },
  {
    what: 'Berlin, back, the first 02:30',
    zone: BERLIN,
    due: '2026-10-25 00:30',
    sounds: '2026-10-25 06:00',
  },
  {
    what: 'Berlin, back, the second 02:30',
    zone: BERLIN,
    due: '2026-10-25 01:30',
    sounds: '2026-10-25 06:00',
  },
  { what: 'New York, forward', zone: NEW_YORK, due: '2026-03-08 06:30', sounds: '2026-03-08 11:00' },
  {
    what: 'New York, back, the second 01:30',
    zone: NEW_YORK,
    due: '2026-11-01 06:30',
    sounds: '2026-11-01 12:00',
  },
])('quiet hours over the change: $what', ({ zone, due, sounds }) => {
  expect(dateTime(soundsAt(coatDue(due), NIGHT, zone))).toBe(sounds);
});

test('a journey from Berlin to New York moves no reminder, but is quiet by the wall there', () => {
  const due = coatDue('2026-06-10 08:00'); // 10:00 in Berlin, 04:00 in New York
  const at = (zone: typeof BERLIN) =>
    remindersNow([due], { now: utc('2026-06-10 07:00'), acknowledgements: [], switches: {}, zone });
  expect([BERLIN, NEW_YORK].map((zone) => at(zone).upcoming)).toEqual([[due], [due]]);
  expect(dateTime(soundsAt(due, NIGHT, BERLIN))).toBe('2026-06-10 08:00');
  expect(dateTime(soundsAt(due, NIGHT, NEW_YORK))).toBe('2026-06-10 11:00'); // 07:00 in summer time
});

test('a plan made after the journey opens by the wall there, and the film is as dry as it was', () => {
  // Laid at 15:00 UTC: 17:00 in Berlin, 11:00 in New York. Dry at 22:10 UTC, which is 18:10 there: the next morning at 08:00.
  expect(planned('2026-06-10 15:00', NEW_YORK, 420).second).toBe('2026-06-11 12:00');
  expect(planned('2026-06-10 15:00', NEW_YORK, 240).second).toBe('2026-06-10 19:10');
});
