import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../words/frame/logbook';
import { COUNTS } from '../limits';

const UUID_7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const EARLIEST = '2000-01-01T00:00:00.000Z';

/** An id that sorts by the time it was made and is unique on every device (RFC 9562, version 7). */
export const Id = v.pipe(v.string(), v.regex(UUID_7, LOGBOOK_WORDS.notAnId));

// One spelling of every instant, so that instants sort as text.
const isInstant = (text: string): boolean => {
  const time = Date.parse(text);
  return Number.isFinite(time) && new Date(time).toISOString() === text;
};

/** A UTC instant as `Date.toISOString` writes it, from the year 2000 on. */
export const Instant = v.pipe(
  v.string(),
  v.check(isInstant, LOGBOOK_WORDS.notAnInstant),
  v.check((text) => text >= EARLIEST, LOGBOOK_WORDS.beforeEarliest),
);

const knownZones = new Set<string>();

// Asking Intl is slow, and fifty thousand entries name a handful of zones.
function isZone(name: string): boolean {
  if (knownZones.has(name)) return true;
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
  } catch {
    return false;
  }
  knownZones.add(name);
  return true;
}

/** An IANA time zone that this device knows. */
const Zone = v.pipe(v.string(), v.maxLength(64), v.check(isZone, LOGBOOK_WORDS.notAZone));

const longEnough = v.minLength<string, number, string>(COUNTS.text.lowest, LOGBOOK_WORDS.empty);
const shortEnough = v.maxLength<string, number, string>(
  COUNTS.text.highest,
  LOGBOOK_WORDS.tooLong(COUNTS.text.highest),
);

/** A name: some text, shown as text. */
export const Name = v.pipe(v.string(), v.trim(), longEnough, shortEnough);
/** A note: any text, none included. */
export const Note = v.pipe(v.string(), shortEnough);
/**
 * The name of a thing in one of the app's own tables: `n-butyl-acetate`. Any such name is read, for the table of a
 * newer app holds more; whoever looks it up answers for what is not there.
 */
export const TableKey = v.pipe(v.string(), v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, LOGBOOK_WORDS.notATableKey));
const Share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
/** A place on a picture: shares of its width and height, from the left and from above. */
export const Point = v.tuple([Share, Share]);
/** A part of a whole, above 0 and up to 1. */
export const Fraction = v.pipe(
  v.number(),
  v.check((share) => share > 0 && share <= 1, LOGBOOK_WORDS.notAShare),
);
const isDay = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.startsWith(text) === true;
/** A day of the calendar, `2026-03-01`. */
export const CalendarDay = v.pipe(v.string(), v.check(isDay, LOGBOOK_WORDS.notADay));
/** A wall-clock time, `06:30`. */
export const ClockTime = v.pipe(
  v.string(),
  v.regex(/^([01]\d|2[0-3]):[0-5]\d$/, LOGBOOK_WORDS.notAClockTime),
);
/** A whole number within a count's limits. */
export const count = (limits: { readonly lowest: number; readonly highest: number }) =>
  v.pipe(
    v.number(),
    v.check(
      (input) => Number.isInteger(input) && input >= limits.lowest && input <= limits.highest,
      LOGBOOK_WORDS.notACount(limits),
    ),
  );

/** A count in halves, from a half on. */
export const halves = (limits: { readonly highest: number }) =>
  v.pipe(
    v.number(),
    v.check(
      (input) => Number.isInteger(input * 2) && input > 0 && input <= limits.highest,
      LOGBOOK_WORDS.notHalves(limits.highest),
    ),
  );

/** Every version of one kind of entry, the first one first. A later version only ever adds: whatever it read, it reads. */
export interface Versions<Latest extends v.GenericSchema> {
  readonly versions: readonly [v.GenericSchema, ...v.GenericSchema[]];
  readonly latest: Latest;
}

const schemaOf = <const Kind extends string, const Body extends v.ObjectEntries>(
  kind: Kind,
  version: number,
  body: Body,
) => v.object({ id: Id, v: v.literal(version), kind: v.literal(kind), at: Instant, zone: Zone, ...body });

type None = Record<never, never>;

/**
 * One kind of entry: what every entry has, and its own body.
 *
 * A released version never changes. What changes a kind, a value added to a list included, is a later version: the fields
 * that it adds, or reads more widely than before. An entry is written in the lowest version that can say it (`inItsVersion`),
 * so that older apps go on as long as they can; an app that does not know the version sets the entry aside and opens it
 * after its update.
 * @param later what version 2 adds, or reads more widely
 */
export function entryOf<
  const Kind extends string,
  const Body extends v.ObjectEntries,
  const Later extends v.ObjectEntries = None,
>(kind: Kind, body: Body, later?: Later) {
  const first = schemaOf(kind, 1, body);
  const latest = schemaOf(kind, later ? 2 : 1, { ...body, ...later } as unknown as Omit<Body, keyof Later> &
    Later);
  return { versions: later ? [first, latest] : [first], latest } as unknown as Versions<typeof latest>;
}
