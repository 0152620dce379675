const UNIT_WORDS: Record<string, string> = {
  um: 'µm',
  C: '°C',
  F: '°F',
  mm2: 'mm²',
  m2: 'm²',
  cm2: 'cm²',
  ft2: 'ft²',
  in2: 'in²',
  m3: 'm³',
  ft3: 'ft³',
  'm3/h': 'm³/h',
  'm2/L': 'm²/L',
  'ft2/gal': 'ft²/gal',
  'lb-cut': 'lb cut',
  'fl-oz-us': 'fl oz (US)',
  'fl-oz-imperial': 'fl oz (imperial)',
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
  notANumber: 'Enter a number, such as 3.5 or 3,5.',
  eitherNumber: (one: string, other: string) => `Is that ${one} or ${other}? Choose one.`,
  outOfRange: (range: Range & { readonly unit: string }) => `Enter a value from ${rangeWords(range)}.`,
  notACount: ({ lowest, highest }: Range) => `Enter a whole number from ${lowest} to ${highest}.`,
  notHalves: (highest: number) => `Enter whole or half passes, from 0.5 to ${highest}.`,
  notAShare: 'Enter a share above 0 and up to 100 %.',
  sharesDoNotAddUp: 'The shares must add up to 100 %.',
  solventTwice: 'A solvent is in this blend twice; add its shares together.',
  emptyBlend: 'Name at least one solvent.',
  longBlend: (most: number) => `Name at most ${most} solvents.`,
  empty: 'Write something here.',
  tooShort: (least: number) => `Write at least ${least} characters.`,
  tooLong: (most: number) => `Keep this to ${most} characters.`,
  notAnId: 'is not an id of this logbook',
  notAnInstant: 'is not a UTC time such as 2026-03-01T08:00:00.000Z',
  beforeEarliest: 'Enter a time from the year 2000 on.',
  inTheFuture: 'Enter a time no later than now; check the clock of this device.',
  notAZone: 'is not a time zone that this device knows',
  notATableKey: 'is not the name of a thing in the tables',
  notADay: 'Enter a day such as 2026-03-01.',
  notAnAmount: 'Enter an amount above 0.',
  notAMass: 'Enter a mass above 0 and up to 200 kg.',
  percentOfWhat: 'Say whether the percentage is of the lacquer or of the mix.',
  byMassOrVolume: 'Say whether this goes by mass or by volume.',
  emptyRecipe: 'Enter at least one ingredient with an amount.',
  longRecipe: (most: number) => `Enter at most ${most} ingredients.`,
  longTinters: (most: number) => `Put at most ${most} tinters on the bench.`,
  tinterTwice: 'A tinter is listed twice.',
  noReading: 'Enter at least one reading.',
  longReadings: (most: number) => `Enter at most ${most} readings at once.`,
  notAHex: 'Write six hex digits, such as #e6dcc0.',
  notAClockTime: 'Enter a time of day such as 06:30.',
  windowEndsFirst: 'The window must end after it begins. Check both times on the sheet.',
  dewAboveAir: 'The dew point can’t be above the air temperature. Check both.',
  wetAboveDry: 'The wet bulb can’t read above the dry one. Check both.',
  wetTooLow: 'No air is dry enough for a wet bulb that low. Check both.',
  bandOutOfOrder: 'Earliest, likely and late must come in that order.',
  tooManySteps: 'A plan has at most 200 steps. Split the job.',
  endsFirst: 'It must end after it begins.',
  nothingCorrected: 'Change the time, the piece, the jar or the amount.',
  alwaysShown: 'This caution is always shown.',
  notAnEntry: 'is not an entry',
  unknownKind: 'is a kind of entry that this version does not know; get the newest version of the app',
  newerVersion: 'was written by a newer version of the app; get the newest version',
  missing: 'is missing',
  expected: (what: string) => `must be ${what}`,
} as const;
