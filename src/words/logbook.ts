const UNIT_WORDS: Record<string, string> = {
  um: 'µm',
  C: '°C',
  F: '°F',
  m2: 'm²',
  cm2: 'cm²',
  ft2: 'ft²',
  in2: 'in²',
  m3: 'm³',
  ft3: 'ft³',
  'm3/h': 'm³/h',
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
  notADay: 'Give a day such as 2026-03-01.',
  notAnAmount: 'Give an amount above 0.',
  notAMass: 'Give a mass above 0 and up to 200 kg.',
  percentOfWhat: 'Say whether the percentage is of the lacquer or of the mix.',
  byMassOrVolume: 'Say whether this goes by mass or by volume.',
  emptyRecipe: 'Give at least one ingredient with an amount.',
  longRecipe: (most: number) => `Give at most ${most} ingredients.`,
  longTinters: (most: number) => `Put at most ${most} tinters on the bench.`,
  tinterTwice: 'A tinter stands on the bench twice.',
  noReading: 'Give at least one reading.',
  longReadings: (most: number) => `Give at most ${most} readings at once.`,
  notAHex: 'Write six hex digits, such as #e6dcc0.',
  notAClockTime: 'Give a time of day such as 06:30.',
  windowEndsFirst: 'The window must end after it begins. Look at both times on the sheet again.',
  dewAboveAir: 'The dew point cannot lie above the air temperature. Look at both again.',
  wetAboveDry: 'The wet bulb cannot read above the dry one. Look at both again.',
  wetTooLow: 'No air is dry enough for a wet bulb that low. Look at both again.',
  bandOutOfOrder: 'Earliest, likely and late must come in that order.',
  tooManySteps: 'A plan has at most 200 steps. Split the job.',
  endsFirst: 'It must end after it begins.',
  alwaysShown: 'This caution is always shown.',
  notAnEntry: 'is not an entry',
  unknownKind: 'is a kind of entry that this version does not know; get the newest version of the app',
  newerVersion: 'was written by a newer version of the app; get the newest version',
  missing: 'is missing',
  expected: (what: string) => `must be ${what}`,
} as const;

interface Times {
  readonly earliest: string;
  readonly latest: string;
}

/** Why nothing was logged, each saying what to do; times come written out. */
export const FAILURE_WORDS = {
  'in-the-future': ({ latest }: Times) => `Give a time no later than ${latest}.`,
  'too-early': ({ earliest, latest }: Times) =>
    `Give a time from ${earliest}, when this was started, to ${latest}.`,
  'unknown-piece': () => 'This piece is not in the logbook. Choose another, or start it first.',
  'unknown-jar': () => 'This jar is not in the logbook. Choose another, or fill it first.',
  'unknown-air': () => 'This air reading is not in the logbook. Take a new one.',
  'unknown-entry': () => 'This entry is not in the logbook, so there is nothing to undo.',
  'piece-closed': () => 'This piece is closed. Undo its closing to go on with it.',
  'piece-there-already': () => 'This piece is in the logbook already.',
  'jar-there-already': () => 'This jar is in the logbook already.',
  'unknown-ingredient': () => 'This ingredient is not in the shop. Choose another, or add it first.',
  'unknown-recipe': () => 'This recipe is not in the logbook. Choose another, or write it first.',
  'unknown-weigh-up': () => 'This weigh-up is not in the logbook. Begin it again from its recipe.',
  'contains-itself': () =>
    'This ingredient would be made of itself. Take itself, or what is made of it, out of what it is made of.',
  'not-last-pour': () => 'Later pours stand on this one. Undo the last pour first.',
  'weigh-up-over': () => 'This weigh-up is finished. Begin a new one from its recipe.',
  'no-such-line': () => 'The plan has no such line. Open the weigh-up again.',
  'unknown-match': () => 'This match is not in the logbook. Choose another, or start it first.',
  'unknown-trial': () => 'This trial is not in the logbook. Choose another, or mix it first.',
  'trial-there-already': () => 'This trial is in the logbook already.',
  'unknown-filter': () => 'This filter is not in the logbook. Choose another, or open it first.',
  'filter-there-already': () => 'This filter is in the logbook already.',
  'unknown-step': () => 'This step is not in the plan any more. Look at the plan again.',
  'unknown-closure': () => 'This closure was taken back already.',
  'already-struck': () => 'This entry has been undone already.',
  'still-used': () => 'Later work depends on this entry. Undo that work first.',
  full: () => 'This device is full, so nothing was logged. Make room, then try again.',
  'no-answer': () =>
    'This device did not answer in time. Reload and look whether it was logged, then try again.',
  damaged: () =>
    'The browser cannot use what it keeps for this app. Restart the browser and try again; nothing was logged.',
  unavailable: () =>
    'This browser will not keep anything, so nothing was logged. Leave private browsing, then try again.',
} as const;

/** Why a backup was not taken in. */
export const BACKUP_WORDS = {
  'too-large': 'This file is too large for a backup. Nothing was taken in.',
  unreadable:
    'This file cannot be read. If it lies in a cloud, fetch it onto this phone first. Nothing was taken in.',
  'not-json': 'This file is not a backup, or it was cut short. Nothing was taken in.',
  'not-a-backup': 'This file is not a backup of this app. Nothing was taken in.',
  damaged: 'This backup was changed or damaged on its way. Nothing was taken in; try another copy.',
  packed: 'Another program has packed this file anew. Bring in the file as the app wrote it.',
  'newer-backup': 'A newer version of the app wrote this backup. Get the newest version first.',
  'faulty-entries': 'Some entries of this backup are faulty. Nothing was taken in.',
} as const;
