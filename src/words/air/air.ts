// English text of the Air place.

export const AIR_WORDS = {
  title: 'Air',
  back: 'Air',
  now: 'The air now',
  read: 'Take a reading',
  readFirst: 'Log temperature and humidity to see how far the piece is from its dew point.',
  empty: 'No reading yet',
  stale: 'Old reading: take a new one before you spray.',
  of: (when: string): string => `Read ${when}`,
  airRow: 'Air',
  humidityRow: 'Humidity',
  pieceRow: 'Piece',
  pieceAsAir: 'not measured: assumed as warm as the air',
  dewRow: 'Dew point',
  marginRow: 'Above the dew point',
  woodRow: 'Wood moisture',
  woodHint: 'For bare wood and fillers: the moisture that wood settles at in this air, over days to weeks.',
  corrected: (shown: string): string => `hygrometer shows ${shown}`,
  worked: { 'dew-point': 'from the dew point', 'wet-bulb': 'from the wet bulb' },
  more: 'More tools',
  forecast: 'Forecast',
  forecastNone: 'Not set: the last reading is assumed to continue',
  room: 'Solvent in the room',
  roomNone: 'Room not described yet',
  filters: 'Filters and cartridges',
  filtersNone: 'None in the log',
  filtersDue: (count: number): string => (count === 1 ? '1 is due' : `${count} are due`),
  cautions: 'Cautions',
  cautionsHint: 'All of them, and what was confirmed',
  dayEnd: 'End of the day',
  dayEndHint: 'Rags, dust and filters, before you leave',
  dayEndDone: 'Confirmed',
  dayEndDue: 'To do before you leave',
  finishes: 'Finishes and data sheets',
  finishesHint: 'What each kind needs; your sheet’s own times',
  oldFinish: 'What is this old finish?',
  oldFinishHint: 'Spot tests, weakest solvent first',
} as const;

/** What to expect of fast lacquer, as a word and a sentence. */
export const OUTLOOK_WORDS = {
  'below-floor': {
    word: 'Do not coat',
    text: 'The piece is within 3 °C (5 °F) of its dew point. Water settles on it and in the film.',
  },
  'expect-blush': {
    word: 'Blush likely',
    text: 'The film cools below the dew point as it dries and turns white.',
  },
  care: { word: 'Blush possible', text: 'Light coats; watch the first one turn.' },
  easy: { word: 'Blush unlikely', text: 'The piece is well above its dew point.' },
} as const;

/** Said beside a possible blush of a lacquer that takes another thinner. */
export const SLOWER_THINNER = 'A slower thinner helps.';

/** Of a finish that dries by water or cures. */
export const SHOP_LIMIT_WORDS = {
  label: (finish: string): string => `Air for ${finish}`,
  fits: (asksDry: boolean): string => (asksDry ? 'Warm and dry enough' : 'Warm enough'),
  cold: 'Too cold',
  damp: 'Too damp',
  coldAndDamp: 'Too cold and too damp',
  wants: (lowest: string, highest: string | undefined): string =>
    highest === undefined
      ? `It needs ${lowest} or more, at the coat and overnight.`
      : `It needs ${lowest} or more and at most ${highest} humidity, at the coat and overnight.`,
  night: (night: string, lowest: string): string =>
    `Tonight ${night}: below ${lowest}. Keep the room warm until the film has formed, or coat early enough that it has.`,
} as const;

/** Where the limits come from. */
export const LIMIT_WORDS = {
  usual: (care: string, easy: string): string =>
    `Usual limits: blush likely under ${care}, unlikely from ${easy}. Common practice; floor 3 °C (5 °F) after ISO 8502-4.`,
  own: (seen: number, care: string, easy: string, spread: string): string =>
    `Your own limits, from ${seen} ${seen === 1 ? 'coat' : 'coats'} you looked at: blush likely under ${care} (give or take ${spread}), unlikely from ${easy}. The floor of 3 °C (5 °F) stays.`,
  teach: 'Log “Blushed” or “No blush” on a piece and this limit becomes your own.',
} as const;

/** What this jar’s own solvents do to it. */
export const JAR_BLUSH_WORDS = {
  title: 'With your jar',
  choose: 'Jar',
  none: 'Fill a jar under Mix to see how far its own solvents cool the film.',
  cools: (jar: string, from: string, to: string): string =>
    `A wet film of ${jar} cools ${from} to ${to} as its fast solvents leave.`,
  film: (lowest: string, highest: string, dew: string): string =>
    `At its coldest it is ${lowest} to ${highest}; the dew point is ${dew}.`,
  'stays-clear': 'Stays above the dew point',
  'may-blush': 'May touch the dew point',
  blushes: 'Falls below the dew point',
  how: 'Worked out from latent heat and vapour pressure of the mix; a real film shows 40 to 65 % of that cooling (fitted to three published blush limits).',
  unknownOwn: 'The solvents in the can are the usual ones for this finish; no data sheet was entered.',
} as const;

/** What would help. */
export const HELP_WORDS = {
  title: 'What would help',
  room: (margin: string): string => `Let the piece warm to the room: ${margin} above the dew point.`,
  piece: (temperature: string): string => `Warm the piece to ${temperature}: blush is then unlikely.`,
  drier: (percent: string): string => `Dry the air to ${percent} at this temperature.`,
  day: (from: string, margin: string): string =>
    `By day, from ${from}, the forecast gives ${margin} above the dew point.`,
  night: (from: string, margin: string): string =>
    `From ${from} the forecast gives ${margin} above the dew point.`,
  still: (word: string): string => `Still: ${word.toLowerCase()}.`,
  retarder: 'Retarder',
  retarderFloor: 'Retarder is no answer this close to the dew point: wait, or warm the piece.',
  retarderUsual: 'Usual: 5 to 10 % of the mix; 15 % is extreme (common practice, no source).',
  retarderStep: (percent: string, less: string): string =>
    `${percent} more of the mix cools the film ${less} less, and keeps it open so that it can clear.`,
  retarderCost: (piece: string, percent: string, level: string, rub: string): string =>
    `On ${piece}, ${percent} more in every coat moves level-sand by ${level} and rub-out by ${rub}.`,
  retarderAsk: 'What would it cost?',
  retarderFailed: 'That could not be worked out. Try again.',
  retarderFar: 'over a year',
  retarderWorking: 'Working out what it costs…',
  forecastMissing: 'Set a forecast with its humidity to see the drier hours.',
} as const;

export const READ_WORDS = {
  title: 'Take a reading',
  temperature: 'Air temperature',
  by: 'Humidity from',
  shown: '% RH',
  dewPoint: 'Dew point',
  wetBulb: 'Wet bulb',
  humidity: 'Humidity',
  dewLabel: 'Dew point',
  wetLabel: 'Wet bulb',
  correction: 'Hygrometer correction',
  correctionHint: 'Added to what it shows; from your last salt or sling check. Empty: none.',
  movement: 'Air movement',
  movements: { still: 'Still', gentle: 'Gentle', booth: 'Booth', strong: 'Strong fan' },
  piece: 'Piece temperature',
  pieceHint: 'By a contact or infrared thermometer. Empty: as warm as the air.',
  when: 'When',
  log: 'Log the reading',
  logged: 'Reading logged.',
} as const;

export const FORECAST_WORDS = {
  title: 'Forecast',
  intro:
    'What the shop will be like when nobody takes a reading. Estimates and plans use it for the days ahead.',
  day: 'By day',
  night: 'By night',
  dayFrom: 'Day begins',
  nightFrom: 'Night begins',
  humidity: 'Humidity by day',
  humidityHint: 'Optional; for the drier hours.',
  movement: 'Air movement',
  save: 'Set the forecast',
  saved: 'Forecast set. Dates are worked out again.',
  line: (day: string, night: string): string => `${day} by day, ${night} by night`,
} as const;

export const READINGS_WORDS = {
  title: 'Readings',
  each: 'One by one',
  time: 'When',
  margin: 'Above the dew point',
  easy: 'Blush unlikely above',
  care: 'Blush likely below',
  describe: (count: number): string =>
    `How far the piece was above its dew point over the last ${count} readings.`,
  line: (air: string, humidity: string, margin: string): string =>
    `${air}, ${humidity}, ${margin} above the dew point`,
  undo: 'Undo this reading',
  undone: 'Reading undone.',
  count: (count: number): string => (count === 1 ? '1 reading' : `${count} readings`),
} as const;
