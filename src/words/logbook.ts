const UNIT_WORDS: Record<string, string> = {
  um: 'µm',
  C: '°C',
  F: '°F',
  m2: 'm²',
  cm2: 'cm²',
  ft2: 'ft²',
  in2: 'in²',
};

/** A unit as it is written beside a number; a bare ratio has none. */
export const unitWord = (unit: string): string => (unit === 'ratio' ? '' : (UNIT_WORDS[unit] ?? unit));

interface Range {
  readonly lowest: number;
  readonly highest: number;
}
const show = (value: number): string => String(value).replace('-', '\u2212');

/** "5 to 60 °C" */
export const rangeWords = ({ lowest, highest, unit }: Range & { readonly unit: string }): string =>
  `${show(lowest)} to ${show(highest)} ${unitWord(unit)}`.trim();

/** What is said of a logbook entry that cannot be taken as it is. */
export const LOGBOOK_WORDS = {
  notANumber: 'Write one number, such as 3.5 or 3,5.',
  outOfRange: (range: Range & { readonly unit: string }) => `Give a value from ${rangeWords(range)}.`,
  notACount: ({ lowest, highest }: Range) => `Give a whole number from ${lowest} to ${highest}.`,
  notAShare: 'Give a share above 0 and up to 100 %.',
  sharesDoNotAddUp: 'The shares must add up to 100 %.',
  solventTwice: 'A solvent stands in this blend twice; add its shares together.',
  emptyBlend: 'Name at least one solvent.',
  longBlend: (most: number) => `Name at most ${most} solvents.`,
  empty: 'Write something here.',
  tooLong: (most: number) => `Keep this to ${most} characters.`,
  notAnId: 'is not an id of this logbook',
  notAnInstant: 'is not a UTC time such as 2026-03-01T08:00:00.000Z',
  beforeEarliest: 'Give a time from the year 2000 on.',
  inTheFuture: 'Give a time no later than now; check the clock of this device.',
  notAZone: 'is not a time zone that this device knows',
  notATableKey: 'is not the name of a thing in the tables',
  notAClockTime: 'Give a time of day such as 06:30.',
  notAnEntry: 'is not an entry',
  unknownKind: 'is a kind of entry that this version does not know; get the newest version of the app',
  newerVersion: 'was written by a newer version of the app; get the newest version',
  missing: 'is missing',
  expected: (what: string) => `must be ${what}`,
} as const;
