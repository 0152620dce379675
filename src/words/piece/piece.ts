import type { UnitSystem } from '../quantities';
// English text of a piece's pages.

export const PIECE_WORDS = {
  title: 'Piece',
  toBench: 'Back to the bench',
  unknown: 'No such piece',
  unknownText: 'It may have been undone, or it belongs to another shop.',
  lay: 'Log a coat',
  check: 'Log a check',
  sand: 'Sand',
  why: 'Why these times?',
  plan: 'Plan and promise',
  ground: 'Filler, sealer or glue',
  record: 'Print the record',
  change: 'Change the details',
  board: 'Large clock',
  another: 'Another like it',
  milestones: 'When it may be touched',
  history: 'What was done',
  details: 'This piece',
  detailsBrief: 'change, print',
  meant: 'What these times mean',
  firstCoatText: 'Log a coat and its times appear here.',
  computing: 'Working out the times…',
  stale: 'Updating the times…',
  failed: 'The times could not be worked out',
  failedText: (message: string): string => `${message} What you logged is kept.`,
  closedNote: (when: string): string => `Finished ${when}. Reopen it to go on.`,
  now: 'Now',
  sinceAbout: (when: string): string => `since about ${when}`,
  estimate: 'An estimate with its band: one in ten comes before it, one in ten after it.',
  finish: 'Its finish, now',
  matches: 'Its colour matches',
  matchLine: (trials: number, begun: string, isAway: boolean): string =>
    `${trials === 1 ? '1 trial' : `${trials} trials`}, begun ${begun}${isAway ? ', archived' : ''}`,
  startMatch: 'Match its colour',
} as const;

export const COAT_WORDS = {
  ways: {
    spray: 'Sprayed',
    brush: 'Brushed',
    pad: 'Padded',
    'brush-fill': 'Brush fill',
    flash: 'Flash coat',
  },
  wet: (wet: string): string => `${wet} wet`,
  passes: (passes: number, each: string): string =>
    passes <= 1 ? `${passes === 1 ? 1 : '½'} pass of ${each} wet` : `${passes} passes of ${each} wet`,
  usual: (dry: string): string => `usual build of ${dry} dry`,
  laid: (how: string, film: string): string => `${how}, ${film}`,
  fromJar: (jar: string): string => `From ${jar}`,
  gone: 'a jar that is not in this logbook',
  dryNow: 'Dry',
  solventNow: 'Solvent still in it',
  logged: 'Logged',
  asTyped: 'As',
  jar: 'Jar',
  coldest: 'Film at its coldest',
  coldestText: (from: string, to: string, dew: string): string =>
    `${from} to ${to} as its solvents left; dew point ${dew}`,
  blush: {
    'stays-clear': 'It stayed above the dew point.',
    'may-blush': 'It may have touched the dew point: look whether it is milky.',
    blushes: 'It fell below the dew point: look whether it is milky.',
  },
  close: 'Close these details',
  undo: 'Undo this coat',
  oldFinish: 'The finish that was there before, as deep as it softens.',
} as const;

export const EVENT_WORDS = {
  by: (phone: string): string => `By ${phone}`,
  started: 'Started',
  changed: 'Details changed',
  closed: 'Finished',
  sanded: { scuff: 'Scuffed', level: 'Level-sanded', 'rub-out': 'Rubbed out' },
  marked: 'Place marked',
  photo: 'Photo',
  /** An act at a place: "Coat 2, lower edge". */
  at: (what: string, place: string): string => `${what}, ${place}`,
  removed: (amount: string): string => `${amount} taken off`,
  removedUsual: (amount: string): string => `${amount} taken off, as usual`,
  grit: (grit: string): string => `with ${grit}`,
  checks: {
    print: { passes: 'Leaves no print', fails: 'Leaves a print' },
    gum: { passes: 'Powders', fails: 'Gums up' },
    smell: { passes: 'No smell', fails: 'Still smells' },
    blush: { passes: 'No blush', fails: 'Blushed' },
  },
  undo: 'Undo',
  undoOf: (what: string, when: string): string => `Undo: ${what}, ${when}`,
} as const;

export const PIECE_FORM = {
  newTitle: 'Start a piece',
  changeTitle: 'Change the details',
  name: 'Name',
  nameHint: 'What you call it, such as “Jewellery box, walnut”.',
  base: 'Under the first coat',
  bases: {
    'bare-wood': { label: 'Bare wood', hint: 'it soaks up the first coat' },
    sealed: { label: 'Sealed wood', hint: 'dry sanding sealer or shellac' },
    'old-redissolves': {
      label: 'Old finish that softens',
      hint: 'lacquer or shellac: the new coat melts in',
    },
    'old-closed': { label: 'Old finish that stays hard', hint: 'waterborne, catalysed, oil' },
  },
  oldFilm: 'How thick the old finish is',
  oldFilmHint: 'Leave empty if you don’t know.',
  area: 'Area to coat',
  areaHint: 'Optional. Only used for how much to mix.',
  note: 'Note',
  when: 'On the bench since',
  start: 'Start this piece',
  save: 'Save',
  close: 'Finish this piece',
  closeText: 'It leaves the bench. Its record stays, and you can reopen it.',
  started: (name: string): string => `${name} is on the bench.`,
  saved: 'Saved.',
  closed: (name: string): string => `${name} is finished.`,
  nameMissing: 'Give it a name.',
} as const;

export const CHECK_FORM = {
  title: 'Log a check',
  text: 'What you find moves this piece’s times and, a little, those of later pieces.',
  test: 'What you tried',
  tests: {
    print: { label: 'Thumb', hint: 'does it leave a print?' },
    gum: { label: 'Paper', hint: 'does it gum up?' },
    smell: { label: 'Nose', hint: 'close to it, mask off, in clean air' },
    blush: { label: 'Eye', hint: 'is it milky?' },
  },
  result: 'What you found',
  when: 'When',
  log: 'Log it',
  choose: 'Choose what you found.',
  logged: (what: string): string => `Logged: ${what}.`,
} as const;

const USUAL_OFF: Record<UnitSystem, string> = {
  metric: 'scuff 2–4 µm, level 10–25 µm, rub out 3–8 µm',
  us: 'scuff 0.1–0.2 mil, level 0.4–1 mil, rub out 0.1–0.3 mil',
};

export const SAND_FORM = {
  title: 'Sand',
  stage: 'Purpose',
  stages: {
    scuff: { label: 'Scuff', hint: 'a key for the next coat' },
    level: { label: 'Level', hint: 'flat, before rubbing out' },
    'rub-out': { label: 'Rub out', hint: 'to final gloss' },
  },
  removed: 'Taken off',
  removedHint: (units: UnitSystem): string =>
    `Filled in with what is usual (common practice: ${USUAL_OFF[units]}). Change it if you measured.`,
  grit: 'Grit',
  gritHint: 'Such as P800, or 600 for a US grade. Optional.',
  grain: (um: string): string => `Grain about ${um} µm.`,
  grainLike: (um: string, pGrade: number): string =>
    `Grain about ${um} µm, as P${pGrade}: US numbers are finer papers.`,
  when: 'When',
  log: 'Log it',
  logged: (what: string, amount: string): string => `${what}, ${amount} off.`,
} as const;

export const CARD_LINK_WORDS = { card: 'Test card', make: 'Make a test card' } as const;
