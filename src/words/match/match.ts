// English text of the Match place.

import { PHOTO_FAULTS } from './photo';

type Size = 'hint' | 'little' | 'clearly' | 'far';
type Direction = 'light' | 'dark' | 'yellow' | 'blue' | 'red' | 'green' | 'clean' | 'dirty';

const SIZE: Record<Size, string> = {
  hint: 'a hint too',
  little: 'a little too',
  clearly: 'clearly too',
  far: 'far too',
};

/** "Clearly too light, a hint too red." At most two remarks, the larger first. */
export function painterWords(
  remarks: readonly { readonly size: Size; readonly direction: Direction }[],
): string {
  if (remarks.length === 0) return 'Nothing that a word would name.';
  const said = remarks.map(({ size, direction }) => `${SIZE[size]} ${direction}`).join(', ');
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

export const MATCH_WORDS = {
  title: 'Match',
  back: 'Match',
  start: 'Start a match',
  empty: 'No match yet',
  emptyText:
    'Read the old colour, mix a trial, read it dry: you are told how far off it is and what to add next, in grams.',
  needs: 'You need an instrument that gives L*a*b*, or a phone photo to rank trials.',
  open: 'In progress',
  away: 'Archived',
  notHere: 'No such match',
  notHereText: 'It may have been undone.',
  toList: 'All matches',
  places: { 'open-panel': 'Open panel', edge: 'Edge', hidden: 'Hidden' },
  placeHints: {
    'open-panel': 'ΔE00 0.6: plain, well lit',
    edge: 'ΔE00 0.8: chips, edges',
    hidden: 'ΔE00 1.8: inside, behind',
  },
  through: { bare: 'bare', clear: 'through clear' },
  line: (place: string, tolerance: string, light: string): string =>
    `${place}, within ΔE00 ${tolerance}, under ${light}`,
  cameOfIt: 'What came of it',
  recipe: (name: string, version: number): string => `Recipe: ${name}, version ${version}`,
  jar: (name: string): string => `Jar: ${name}`,
  match: (name: string): string => `Match: ${name}`,
  coatsOn: (piece: string, coats: number): string => `${coats} ${coats === 1 ? 'coat' : 'coats'} on ${piece}`,
  onPiece: (piece: string): string => `On ${piece}`,
  stand: 'Result so far',
  next: 'What to add next',
  trials: 'Target and trials',
  earlierTrials: (count: number): string => `${count} earlier`,
  more: 'More tools',
  change: 'Change this match',
  changeHint: 'Place, tinters, scale, let-downs',
  putAway: 'Archive this match',
  putAwayDone: 'Archived. What was read stays.',
  target: 'Target',
  targetNone: 'Not read yet',
  readTarget: 'Read the target',
  trial: (number: number): string => (number === 1 ? 'Trial 1, the base' : `Trial ${number}`),
  trialShort: (number: number): string => `Trial ${number}`,
  trialUnread: 'Not read yet',
  readTrial: (number: number): string => `Read trial ${number}`,
  readTrialAgain: (number: number): string => `Read trial ${number} again`,
} as const;

/** A light and observer: "D65, 10°". */
export const lightWords = (white: string): string => {
  const [light = '', angle = ''] = white.split('/');
  return `${light}, ${angle}°`;
};

export const VERDICT_WORDS = {
  pass: 'Within tolerance',
  'not-yet': 'Not yet',
  'measure-again': 'Too close to call: read it again',
  wet: 'Wet: no verdict',
  'camera-ranks-only': 'Photo: ranks, never passes',
} as const;

export const STAND_WORDS = {
  bare: 'Bare',
  clear: 'Under clear',
  uncertainty: (amount: string): string => `give or take ${amount}`,
  tolerance: (amount: string): string => `tolerance ${amount}`,
  parts: { dL: 'Lightness ΔL′', dC: 'Chroma ΔC′', dH: 'Hue ΔH′' },
  partsNote: 'In ΔE00 units, sample less target, each already weighted (CIEDE2000).',
  swatch: 'Target left, sample right. Not for judging by eye: a screen is no colour card.',
  swatchBent: 'The screen cannot show one of these colours.',
  swatchName: (target: string, sample: string): string =>
    `Target ${target} beside sample ${sample}; for orientation only`,
  unmoved:
    'The target was read through clear and this trial bare. Coat the trial’s card with the clear and read it again: clear makes it yellower and darker.',
  moved: (lab: string): string =>
    `Compared with the aim for the bare colour, ${lab}: target less the clear’s shift.`,
  yellowing: (amount: string): string =>
    `The aim is ${amount} of b* below the target, for the yellowing to come.`,
  wetNote:
    'A wet film is darker and glossier. It is kept, and is no target and no pass: read it again when dry.',
  cameraNote:
    'A photo with a chart is off by about 1 ΔE00, without one by 3 to 4: it can rank trials, it cannot pass one.',
  aside: {
    wet: (count: number): string => `${count} wet ${count === 1 ? 'reading' : 'readings'} left out.`,
    camera: (count: number): string => `${count} by photo left out.`,
    otherLight: (count: number, light: string): string =>
      `${count} under another light left out: only readings under ${light} can be compared.`,
  },
  lights: 'Under other lights',
  lightNames: {
    'D65/10': 'Daylight (D65)',
    'A/10': 'Filament lamp (A)',
    'LED-B3/10': 'White LED (B3)',
  } as Readonly<Record<string, string>>,
  lightsNote: 'From the spectra. The verdict goes by the worst.',
  oneLight: 'Without spectra this holds for one light only: look at it under a second, very different one.',
  readings: (count: number, spread: string | undefined): string =>
    spread === undefined
      ? 'One reading: assumed to scatter by 0.3 ΔE00. Read it three times.'
      : `Mean of ${count} readings, spread ${spread} ΔE00.`,
} as const;

export const NEXT_WORDS = {
  working: 'Working it out…',
  lost: 'The calculation failed. Try again.',
  retry: 'Try again',
  shiftFirst:
    'The clear’s shift is not read yet, so this aims at the target itself, and clear will make it yellower. Reading the shift first saves white.',
  toShift: 'Clear shift',
  add: 'Add, and stir in',
  grams: (grams: string): string => `${grams} g`,
  form: {
    neat: 'neat',
    'let-down-10': 'of its 10 % let-down',
    'let-down-1': 'of its 1 % let-down',
  },
  coarse: (percent: string): string =>
    `Half a division of your scale is ${percent} of this amount: a let-down, or a finer scale, would be surer.`,
  predicted: (lab: string, dE: string, doubt: string): string =>
    `Then expect ${lab}: ΔE00 ${dE} from the aim, give or take ${doubt}.`,
  less: 'Less than would hit the target on paper: too little costs a trial, too much costs white.',
  log: 'I have added this',
  other: 'I added something else',
  stop: 'Stop here',
  stopText: (dE: string): string => `It is within the tolerance: ΔE00 ${dE}. More would only move it about.`,
  'as-near-as-it-gets': 'As near as it gets',
  nearText: (dE: string): string =>
    `At ΔE00 ${dE} nothing on this bench brings it nearer. Another tinter, or a wider tolerance for this place, would.`,
  'out-of-reach': 'Out of reach',
  reachText: (dE: string, lab: string): string =>
    `The nearest that this bench can come is ${lab}, ΔE00 ${dE} off.`,
  left: (words: string): string => `What is left there: ${words.charAt(0).toLowerCase()}${words.slice(1)}`,
  missing: {
    light: 'A tinter that darkens is missing, such as raw umber or black.',
    dark: 'More white would be needed, or a cleaner start.',
    yellow: 'A bluer or greyer tinter is missing; white alone may not take the yellow back.',
    blue: 'A yellow tinter is missing, such as ochre or raw sienna.',
    red: 'A green tinter is missing.',
    green: 'A red tinter is missing, such as red oxide or burnt umber.',
    clean: 'A dirty tinter is missing, such as raw umber or black.',
    dirty: 'It has gone too dirty: only white brings it back.',
  },
  room: (grams: string): string => `The jar would need room for ${grams} g more.`,
  'too-little-to-weigh': 'Too little to weigh',
  tooLittle: (grams: string, tinter: string): string =>
    `${grams} g of ${tinter} is under what your scale shows. Make a let-down of it and say so under “Change this match”.`,
  letDown: 'Let-down: 1 g of tinter and 9 g of the same clear is 10 %; 1 g of that and 9 g of clear is 1 %.',
  carried: (grams: string, percent: string): string =>
    `Let-downs have added ${grams} g of clear to the jar, ${percent} of it: it hides that much less.`,
  strengths: 'Assumed strength of the tinters',
  strength: (factor: string, doubt: string): string => `${factor} times, give or take ${doubt}`,
  strengthFrom: {
    'drawn-down': 'against your draw-downs',
    usual: 'against common practice; draw it down to be surer',
  },
  learnedEarlier: (trials: number): string =>
    trials === 1
      ? 'Strength learned from one earlier trial.'
      : `Strength learned from ${trials} earlier trials.`,
  learnedIn: 'Earlier matches:',
  learned: (count: number): string =>
    count === 1 ? 'Learned from one trial.' : `Learned from ${count} trials: each corrects the next.`,
  model: {
    bands: 'Kubelka-Munk in three broad bands with Saunderson’s surface, from L*a*b*. Good for this light.',
    spectral: 'Kubelka-Munk wavelength by wavelength with Saunderson’s surface, from your spectra.',
  },
  firstSurely:
    'These strengths are common practice and may be off by a factor of two. The first trial is small, and tells how strong yours are.',
  cautions: 'Order: weak tinters first, stir, draw a card, dry it, read it.',
} as const;

/** What has to be there first. */
export const MISSING_WORDS = {
  target: { text: 'Read the target first.', act: 'Read the target' },
  'firm-target': {
    text: 'The target is known wet or by photo only. Read it dry, by an instrument, before adding to a jar.',
    act: 'Read the target',
  },
  white: { text: 'Weigh the white base into the jar: that is trial 1.', act: 'Weigh in the base' },
  'base-reading': { text: 'Draw down the untinted base, let it dry, and read it.', act: 'Read the base' },
  tinters: {
    text: 'Nothing is known of any tinter here. Say which usual one each is like, or draw it down.',
    act: 'Tinters',
  },
  'trial-reading': { text: 'Draw down the newest trial, let it dry, and read it.', act: 'Read the trial' },
  'tinter-unknown': {
    text: 'A tinter in the jar is not known. Say which usual one it is like, or draw it down.',
    act: 'Tinters',
  },
} as const;

export const FORM_WORDS = {
  newTitle: 'Start a match',
  changeTitle: 'Change this match',
  name: 'Name',
  nameHint: 'Such as “Radio cabinet, cream”.',
  noName: 'Give it a name.',
  piece: 'Piece',
  choosePiece: 'Choose the piece',
  whichPiece: 'Say which piece it is for, or that it is for none.',
  newPiece: 'A new piece',
  noPiece: 'None: a test card, a spare part',
  pieceName: 'Name of the piece',
  pieceNameHint: 'Empty: the name of the match.',
  place: 'Where the repair lies',
  through: 'The target is seen',
  throughBare: { label: 'Bare', hint: 'no clear over it' },
  throughClear: { label: 'Through clear', hint: 'old clear is over it' },
  white: 'Light and observer of your instrument',
  whiteHint: 'As it says beside L*a*b*. Only like is compared with like.',
  base: 'White base',
  newBase: 'New: white lacquer',
  newBaseName: 'White lacquer',
  tinters: 'Tinters on the bench',
  tintersHint: 'What is not in the shop yet becomes an ingredient.',
  noTinter: 'Tick at least one tinter.',
  likeLabel: (name: string): string => `${name} is like`,
  likeNone: 'None of these: I’ll draw it down',
  scale: 'Scale',
  scaleHint: 'Its smallest division.',
  letDowns: 'Let-downs made up',
  letDownNames: { none: 'None', ten: '10 %', both: '10 % and 1 %' },
  clear: 'Let-downs are made in',
  newClear: 'New: clear lacquer',
  newClearName: 'Clear lacquer',
  jarHolds: 'The jar takes',
  jarHoldsHint: 'Empty: twice what is in it.',
  tolerance: 'Tolerance, ΔE00',
  toleranceHint: 'Empty: that of the place.',
  yellowing: 'Aim b* lower by',
  yellowingHint:
    'New lacquer goes on yellowing, most in its first year. Empty: aim at the target. Half a unit or so leaves it slightly light now.',
  more: 'More',
  start: 'Start the match',
  save: 'Save',
  started: 'Match started.',
  saved: 'Saved.',
  usual: {
    ochre: 'Ochre',
    'raw sienna': 'Raw sienna',
    'raw umber': 'Raw umber',
    'burnt umber': 'Burnt umber',
    black: 'Black',
    'red oxide': 'Red oxide',
    'green oxide': 'Green oxide',
  },
  usualHints: {
    ochre: 'yellower',
    'raw sienna': 'yellower, redder',
    'raw umber': 'darker, dirtier',
    'burnt umber': 'darker, redder',
    black: 'darker, greyer',
    'red oxide': 'redder',
    'green oxide': 'greener: against pink',
  },
} as const;

export const MIX_WORDS = {
  title: (number: number): string => (number === 1 ? 'Weigh in the base' : `Mix trial ${number}`),
  baseHint: 'What is in the jar, untinted.',
  grams: (name: string): string => `${name}, g`,
  form: 'Weighed',
  forms: { neat: 'Neat', 'let-down-10': '10 %', 'let-down-1': '1 %' },
  suggested: 'As suggested. Change what the scale showed.',
  empty: 'Leave empty what was not added.',
  nothing: 'Enter at least one amount.',
  save: 'Log this trial',
  saved: (number: number): string => `Trial ${number} logged. Draw it down, dry it, read it.`,
  when: 'When',
  error: (percent: string): string => `Half a division of the scale is ${percent} of this.`,
  unweighable: 'Not weighable: it is under half a division of the scale.',
  better: (grams: string, form: string): string => `Surer: ${grams} g ${form}.`,
} as const;

export const READ_WORDS = {
  titles: {
    target: 'Read the target',
    card: 'Read a card',
    ground: 'Read what the toner goes over',
    toned: 'Read the toned card',
  },
  tint: (name: string): string => `Draw-down of ${name}`,
  how: 'The instrument gives',
  hows: { lab: 'L*a*b*', xyz: 'XYZ', hex: 'Hex', file: 'A file' },
  photo: 'By photo instead',
  light: 'Light and observer',
  lightOther: (light: string): string =>
    `This match is under ${light}. A reading under another light is kept, and cannot be compared.`,
  hexLight: 'Hex means D65, 2°.',
  reading: (number: number): string => `Reading ${number}`,
  another: 'Another reading',
  remove: 'Leave out',
  removeThis: (number: number): string => `Leave out reading ${number}`,
  parts: { L: 'L*', a: 'a*', b: 'b*', X: 'X', Y: 'Y', Z: 'Z' },
  hex: 'Hex',
  hexHint: 'Such as #e6dcc0. Rounded to a 256th: good for orientation.',
  mean: (lab: string): string => `Mean ${lab}`,
  spread: (spread: string): string => `spread ${spread} ΔE00`,
  single: 'Read it again, a little aside: three readings tell how sure it is.',
  wide: 'They lie far apart. Clean the place, set the instrument flat, and read again.',
  film: 'The film is',
  dry: { label: 'Dry', hint: 'overnight, or forced and cooled' },
  wet: { label: 'Wet', hint: 'kept; no target, no pass' },
  under: 'Read',
  bare: { label: 'Bare', hint: 'no clear' },
  clear: { label: 'Under clear', hint: 'the coats it will get' },
  coats: 'Coats of clear',
  share: 'Tinter in the mix with the base',
  shareHint: 'By weight of neat tinter: 5 % is 1 g in 19 g of base. Two shares tell more than one.',
  passes: 'Passes of toner on it',
  over: 'Over what, and how dried',
  overHint: 'Such as “white primer, two coats, overnight”.',
  when: 'When',
  far: (dE: string): string => `ΔE00 ${dE} apart: is it the same surface?`,
  farText: (lab: string): string =>
    `It read ${lab} before. If this is another card, say which; if it is the same, clean it, read it once more, and log it.`,
  farAmong: 'These readings are too far apart for one card. Check them, or log them as they are.',
  farOf: 'This reading is of',
  farSame: (title: string): string => `${title}: the same surface`,
  saveFar: 'Log it all the same',
  newer: (number: number): string => `Trial ${number} is newer and not read yet. Is this reading of it?`,
  save: 'Log the reading',
  saved: 'Reading logged.',
  file: 'CSV or CGATS file from the instrument',
  fileHint: 'Columns of L*a*b*, XYZ, or reflectance by wavelength. It is read on this phone only.',
  fileFound: (count: number): string =>
    count === 1
      ? 'One reading found. Tick what was read here.'
      : `${count} readings found. Tick what was read here.`,
  fileChoose: 'Readings in the file',
  fileWrong: 'This file cannot be read as it is',
  fileNone: 'Tick at least one reading.',
  fileMixed: 'These were taken under different lights. Log them one light at a time.',
  fileRow: (line: number, name: string): string => (name === '' ? `Line ${line}` : `${name} (line ${line})`),
  spectrum: 'spectrum',
  undoName: 'Reading',
  more: 'Over what, and when',
} as const;

export const READ_PROBLEMS = {
  hexLight: 'A hex colour is always under D65 and the 2° observer. Choose that light for it.',
  noColour: 'A spectrum must cover 400 to 700 nm in even steps, under D65, D50, A or LED-B3.',
  impossible: 'No surface has this colour. Look at the numbers again, and at the light they belong to.',
} as const;

/** A file's fault by its line. */
export const fileLine = (line: number, problem: string): string => `Line ${line}: ${problem}`;

export const FILE_PROBLEMS = {
  'too-large': () => 'the file is too large to be a list of readings. Export fewer.',
  'too-many-rows': () => 'more rows than can be read at once. Export fewer.',
  'too-many-columns': () => 'more columns than a reading has.',
  'no-readings': () => 'no readings follow. Export the measurements, not the settings.',
  'no-colour-columns': (found: string) =>
    `no columns of L*a*b*, XYZ or reflectance are named here${found === '' ? '' : ` (it says “${found}”)`}.`,
  unfinished: () => 'the file ends before its END_DATA. Export it again.',
  'open-quote': () => 'a quotation mark is never closed.',
  'wrong-cell-count': (found: string) => `this row has ${found} cells, and the heading has another number.`,
  'wrong-row-count': (found: string) => `NUMBER_OF_SETS and the rows do not agree (${found}).`,
  'not-a-number': (found: string) => `“${found}” is no number.`,
  'impossible-colour': (found: string) => `no surface can be ${found}.`,
  'unknown-light': (found: string) =>
    `the light “${found}” is not known here. Use D50, D65, A, C or another of the list.`,
  'spectrum-steps': () => 'the wavelengths are not in even steps of 1, 2, 5, 10 or 20 nm.',
  'spectrum-range': () => 'the spectrum must cover 400 to 700 nm.',
} as const;

export const COLOUR_PHOTO_WORDS = {
  title: 'Read by photo',
  intro:
    'Put chart or grey card and the dry sample side by side, in one even light, no gloss, no shadow. The photo stays on this phone and is not kept; only the colour is.',
  honest: 'A photo can rank trials. It never passes one.',
  choose: 'Take or choose a photo',
  against: 'Against',
  edition: 'Chart made',
  editions: { 'since-2014': 'Since Nov 2014', 'before-2014': 'Before' },
  chart: { label: '24-patch chart', hint: 'off by about 1 ΔE00' },
  grey: { label: 'Grey card', hint: 'off by 3 to 4 ΔE00' },
  reflectance: 'Reflectance of the card',
  mark: 'Mark by touch',
  marks: {
    chart: [
      'Brown patch, outer corner',
      'Blue-green patch, outer corner',
      'Black patch, outer corner',
      'White patch, outer corner',
    ],
    card: ['Card, top left', 'Card, top right', 'Card, bottom right', 'Card, bottom left'],
    sample: 'Sample, its middle',
  },
  markHint: 'Choose a mark, then touch the photo where it belongs. The arrows move it finely.',
  chartHint:
    'The brown patch begins the first row, blue-green ends it; white begins the last row, black ends it.',
  nudge: { up: 'Up', down: 'Down', left: 'Left', right: 'Right' },
  size: 'Size of the sample',
  sizes: { small: 'Small', medium: 'Medium', large: 'Large' },
  picture: 'The photo with its marks',
  read: 'Read the colour',
  reading: 'Reading the photo…',
  result: (lab: string): string => `The sample reads ${lab}`,
  under: 'D65, 2°',
  spread: (percent: string): string => `Light over the sample varies by ${percent}.`,
  residual: (median: string, worst: string): string =>
    `On the chart’s own patches the fit is off by ΔE00 ${median} (median), ${worst} at worst.`,
  residualNone: 'A single card cannot tell how far off the fit is: assume 3 to 4 ΔE00.',
  poor: 'The fit is poor. Look at the corners and at the light, or take the photo again.',
  otherLight: (light: string): string =>
    `Carried over to ${light} as the eye adapts (Bradford): good enough to rank by. Rank photos against a photo of the target, taken the same way.`,
  unmoved: (marks: string): string => `Touch the photo where these belong first: ${marks}.`,
  log: 'Log it, for ranking',
  faults: {
    'not-a-picture': PHOTO_FAULTS['not-opened'],
    'reference-outside': 'A corner of the chart or card is outside the photo. Mark it again.',
    'reference-crossed': 'The corners do not go round. Mark them in the order they are named.',
    'reference-too-small': 'The chart or card is too small in the photo. Go nearer.',
    'sample-outside': 'The sample is outside the photo. Mark its middle again.',
    'sample-crossed': 'The sample could not be found. Mark its middle again.',
    'sample-too-small': 'The sample is too small in the photo. Go nearer.',
    'reference-clipped':
      'The light patches are burnt out: their true light is not known. Take the photo again, darker.',
    'sample-clipped': 'The sample is burnt out: its true light is not known. Take the photo again, darker.',
    'no-fit': 'The marked patches do not look like the chart. Look at the corners, or take the photo again.',
  },
  lost: 'The photo could not be read here. Choose a smaller one.',
} as const;

export const TRIAL_WORDS = {
  inJar: 'In the jar',
  total: (grams: string): string => `${grams} g in all`,
  readings: 'Readings',
  noReadings: 'None yet.',
  readAgain: 'Add a reading',
  undoReading: 'Undo this reading',
  undoTrial: 'Undo this trial',
  dry: 'dry',
  wet: 'wet',
  bare: 'bare',
  underClear: (coats: number): string => `under ${coats} ${coats === 1 ? 'clear' : 'clears'}`,
  byPhoto: 'photo',
  clearOfLetDowns: 'Clear, of let-downs',
  yellowness: 'Yellowness',
  yellownessOf: (sample: string, target: string | undefined): string =>
    target === undefined ? `YI ${sample}` : `YI ${sample}, target ${target}`,
  yellownessNote: 'ASTM E313, for whites and creams of the same gloss. It leaves hue out: ΔE00 decides.',
  drift:
    'Both will go on yellowing, the new film faster at first. If that is accepted, aim slightly light: “Change this match”, “Aim b* lower by”.',
  accept: 'Accept this trial',
  acceptAgain: 'Accept this one instead',
  accepted: 'Recipe written.',
  openRecipe: 'Open the recipe',
  jar: 'Put it in a jar',
  openJar: (name: string): string => `Open the jar: ${name}`,
} as const;

export const TRIAL_JAR_WORDS = {
  title: (trial: number): string => `The jar of trial ${trial}`,
  lead: (grams: string): string =>
    `The jar in your hand, ${grams} g as weighed in. Nothing is weighed again.`,
  left: 'Left in it now',
  leftHint: 'Content alone. Empty: all that was weighed in.',
  thinner: 'Thinner stirred in now',
  thinnerHint: (percent: string): string =>
    percent === '0'
      ? 'Empty: none.'
      : `Empty: none. Usual for the gun: ${percent} % of the lacquer by volume.`,
  fill: 'Save the jar',
  later: 'Later',
  toRecipe: 'Weigh up more by the recipe',
} as const;

export const RECIPE_FROM_MATCH = {
  note: (name: string, trial: number, clearGrams: string | undefined): string =>
    `From the match “${name}”, trial ${trial}.${clearGrams === undefined ? '' : ` Let-downs also brought in ${clearGrams} g of clear.`}`,
} as const;

export const SHIFT_WORDS = {
  title: 'Clear shift',
  intro:
    'Clear makes a colour yellower and darker. Read one dry card bare, coat it with the clear it will get, read it again: the opaque is then aimed at the target less that shift.',
  none: 'Not read yet',
  usual:
    'Usual for 100 µm of nitrocellulose over white: b* +1 to +3.5, L* −0.3 to −1.2 (common practice, no source).',
  onTrial: (number: number): string => `Read on trial ${number}`,
  onCard: 'Read on a card',
  coats: (coats: number): string => `under ${coats} ${coats === 1 ? 'coat' : 'coats'} of clear`,
  shift: 'Shift',
  target: 'Target',
  aim: 'New aim for the bare colour',
  bareTarget: 'This target is seen bare, so nothing is taken off it.',
  readBare: 'Read a card bare',
  row: (dL: string, db: string): string => `L* ${dL}, b* ${db}`,
  halves: 'Bare and under clear must be of the same card, dry, and under the light of this match.',
  rest: 'It holds for this colour and this much clear. Another build shifts it otherwise.',
} as const;

export const TINTER_WORDS = {
  title: 'Tinters',
  intro:
    'A draw-down is the base with a known share of one tinter, dry and hiding. One makes the calculation surer; two, a light and a deep one, surer still.',
  drawn: (count: number): string => (count === 1 ? 'One draw-down' : `${count} draw-downs`),
  like: (name: string): string => `Assumed like the usual ${name.toLowerCase()}`,
  unknown: 'Not known: draw it down',
  draw: 'Log a draw-down',
  rung: (share: string, lab: string): string => `${share}: ${lab}`,
  base: 'Base',
  baseNone: 'Read the base first: draw-downs are held against it.',
  hint: 'How strong, and from where',
} as const;

export const HIDING_PROBLEMS = {
  noFilm:
    'No film does this: over black it must read below over white, and both fields must still differ. If they read alike, draw a thinner film.',
} as const;

export const HIDING_WORDS = {
  title: 'Hiding',
  intro: 'Draw the jar down over a black and white card, let it dry, and read both fields, bare and coated.',
  none: 'Not read yet',
  dryFilm: 'Dry film of the draw-down',
  dryFilmHint: 'Wet gap times volume solids, or by a film gauge.',
  in: 'Read as',
  black: 'Over black',
  white: 'Over white',
  card: 'Card, bare',
  coated: 'Coated',
  save: 'Log the draw-down',
  saved: 'Draw-down logged.',
  ratio: 'Contrast ratio',
  ratioOf: (ratio: string, film: string): string => `${ratio} at ${film}`,
  hides: 'Hides at',
  hidesNote: 'Dry film for a contrast ratio of 0.98 (ISO 6504-1 practice).',
  never: 'No sensible film of this hides: it needs more white, or a primer of its colour.',
  coats: 'Coats to hide',
  coatsOf: (coats: number, film: string): string => `${coats} at ${film} dry each`,
  coatFrom: {
    piece: 'dry film of the newest coat on the piece, as its drying is worked out',
    drawdown: 'the draw-down’s own film',
  },
  chart: (film: string): string => `Contrast ratio against dry film: it hides at ${film}.`,
  chartNever: 'Contrast ratio against dry film: it never hides.',
  filmAxis: 'dry film, µm',
  ratioAxis: 'contrast ratio',
} as const;

export const TONER_WORDS = {
  title: 'Dye toner',
  hint: 'Passes to the target, from one toned card',
  intro:
    'A dye only takes light away. Read what it goes over, spray a card of that with a few even passes, and read it again near the depth you want.',
  none: 'Not read yet',
  ground: 'Before',
  toned: 'After',
  readGround: 'Read what it goes over',
  readToned: 'Read the toned card',
  afterPasses: (passes: number): string => `after ${passes} ${passes === 1 ? 'pass' : 'passes'}`,
  plan: 'To the target',
  passes: (full: number, half: boolean): string => {
    if (full === 0) return 'One pass at half strength';
    return `${full} ${full === 1 ? 'pass' : 'passes'}${half ? ', then one at half strength' : ''}`;
  },
  expect: (lab: string, dE: string): string => `Then expect ${lab}, ΔE00 ${dE} from the target.`,
  hueOff: 'What is left is hue: another toner, or a little of a second dye, would be nearer.',
  last: 'Make the last pass at half strength: it can be followed by another, and never taken off.',
  'cannot-be-made-lighter': 'It is darker than the target already. A toner cannot make it lighter.',
  'already-there': (dE: string): string => `It is there already: ΔE00 ${dE}.`,
  'another-toner': 'Every pass of this toner leads away from the target. Take another.',
  needsTarget: 'Read the target first.',
} as const;
