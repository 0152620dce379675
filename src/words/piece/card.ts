// English text of the test cards: foil that is coated beside a piece and weighed.

import { WHO_DECIDES } from '../air/cautions';

export const CARD_WORDS = {
  title: 'Test cards',
  one: 'Test card',
  lead: 'A piece of kitchen foil, coated beside a piece and weighed now and then, tells how fast your own lacquer dries. A pocket scale will do.',
  none: 'No test card yet',
  noneText: 'Cut a piece of foil, weigh it bare, and make a card of it here.',
  make: 'Make a test card',
  list: 'Test cards',
  beside: (piece: string): string => `Beside ${piece}`,
  alone: 'Beside no piece',
  coats: (count: number): string => (count === 1 ? '1 coat' : `${count} coats`),
  weighings: (count: number): string => (count === 1 ? '1 weighing' : `${count} weighings`),
  ended: 'Ended',
  unknown: 'There is no such card',
  gone: 'It was undone, or it is on another phone.',
  toPiece: 'Back to the piece',
  toMore: 'Back to settings',
} as const;

export const CARD_FORM = {
  title: 'Make a test card',
  lead: 'Foil, flat and clean, about 10 by 20 cm (4 by 8 in). Write its number on it, then weigh it bare.',
  piece: 'Which piece does it lie beside?',
  noPiece: 'None',
  noPieceHint: 'It is coated on its own',
  area: 'Area of one side',
  areaHint: 'Only what gets coated.',
  faces: 'How much of it gets coated?',
  face: { 1: { label: 'One side' }, 2: { label: 'Both sides' } },
  bare: 'Bare weight',
  bareHint: 'As the scale shows it, all digits.',
  division: 'Smallest step of the scale',
  divisions: {
    '0.001': { label: '0.001 g' },
    '0.01': { label: '0.01 g' },
    '0.1': { label: '0.1 g', hint: 'tells next to nothing' },
  },
  when: 'Weighed bare',
  tells: 'What it can tell',
  working: 'Working it out',
  prior: (factor: string): string =>
    `Today the dates of a product that nobody has tested may be out by a factor of ${factor} either way.`,
  plain: (factor: string): string => `Three coats like these, weighed for two weeks: a factor of ${factor}.`,
  warm: (factor: string): string =>
    `Weighed for two days and dried warm on the sixth: a factor of ${factor}, within a week.`,
  little: 'That is not much.',
  other: 'Another card would tell more:',
  thin: (dry: string, factor: string): string => `Three thin coats, ${dry} dry each: ${factor}`,
  fine: (factor: string): string => `A scale that goes by 0.001 g: ${factor}`,
  twice: (factor: string): string => `Twice the area: ${factor}`,
  curing: 'This finish cures. Its weight says little of that; a thumb and a sheet of paper say more.',
  noFilm: 'Fill a jar first; what the card can tell depends on what is in it.',
  log: 'Make the card',
  logged: 'Test card made. Coat it with the piece: the page Log a coat asks.',
} as const;

export const CARD_NEXT = {
  title: 'What next',
  coat: 'Coat it together with the piece. Log a coat has a switch for it.',
  now: 'Weigh it now: this is when a weighing tells most.',
  later: (when: string): string => `The next weighing tells most ${when}.`,
  anyTime: 'You can weigh it at any other time too.',
  warm: 'Dry it warm for a day and weigh it: nothing tells more now.',
  nothing: 'Nothing more would tell. End the card.',
  coatAlone: 'Coat it as you coat your pieces, and log each coat below.',
  lay: 'Log a coat',
  end: 'End this card',
  endedToast: 'Test card ended.',
} as const;

export const COAT_ALONE = {
  title: 'Log a coat on the card',
  when: 'When',
  log: 'Log the coat',
  coat: 'Coat on the card',
  logged: 'Coat logged on the card.',
} as const;

export const WEIGH_FORM = {
  title: 'Weigh it',
  mass: 'Weight',
  massHint: (last: string): string => `Last: ${last}`,
  massFirst: (bare: string): string => `Bare it was ${bare}.`,
  warm: 'Dried warm first',
  warmHint: 'A day at 55 to 60 °C (130 to 140 °F), until two weighings agree',
  temperature: 'How warm',
  time: 'For how long',
  when: 'When',
  log: 'Log the weight',
  logged: (grams: string): string => `${grams} logged.`,
} as const;

/** Before a card is dried warm: nitrocellulose burns fiercely. It cannot be switched off. */
export const WARM_CAUTION = {
  id: 'warm-drying',
  kind: 'fire',
  title: 'Warm, never hot',
  text: 'A heat mat or a warm cupboard, 60 °C (140 °F) at most, after two days in the open air. Never an oven, a flame, a hair dryer or a heat gun. Nothing that sparks or glows near it.',
  why: 'Nitrocellulose lights easily and burns fiercely; a dry film breaks down by itself where it is hot. What leaves the film is flammable vapour.',
  usual: 'The card lies flat on something that does not burn, in moving air, well away from food.',
  decides: WHO_DECIDES,
} as const;

export const ODD_WORDS = {
  title: 'Is this weight right?',
  milligrams: (grams: string): string =>
    `That is as heavy as a brick. Did the scale show milligrams? Then it is ${grams} g.`,
  below: 'That is less than the bare foil with its dry film. A corner torn off, or a slip?',
  up: 'It has gained weight. Dust, a fingerprint, or damp air?',
  down: 'It has lost more than solvent can. A corner torn off, or a flake lost?',
  scale: (division: string): string =>
    `That goes by ${division} g, the card by other steps. Was it another scale?`,
  change: 'Change it',
  grams: (grams: string): string => `It is ${grams} g`,
  right: 'It is right',
  other: 'Another scale',
  same: 'The same scale',
  leaveOut: { dust: 'Leave it out: dust', damp: 'Leave it out: damp', torn: 'Leave it out: torn' },
} as const;

export const TOLD_WORDS = {
  curve: 'Measured and expected',
  describe: (now: string): string =>
    `Weight of the card since its last coat, with its band. Expected now: ${now} g.`,
  line: 'expected',
  measured: 'measured',
  grams: 'g',
  humidity: (percent: string): string => `Every weight as it would be at ${percent} humidity.`,
  columns: { time: 'After', low: 'Low', likely: 'Expected', high: 'High' },
  title: 'What it has shown',
  nothing: 'Nothing yet: weigh it.',
  slower: (factor: string, give: string): string =>
    `Your lacquer dries ${factor} times slower than usual, give or take a factor of ${give}.`,
  faster: (factor: string, give: string): string =>
    `Your lacquer dries ${factor} times faster than usual, give or take a factor of ${give}.`,
  same: (give: string): string => `Your lacquer dries as usual, give or take a factor of ${give}.`,
  guessed:
    'For some weighings the humidity is a guess, and foil shows it. Read the air when you weigh: it tells more.',
  before: (give: string): string => `Without the card it was a factor of ${give}.`,
  flows:
    'Every piece with this product goes by it: pieces from the same jar most, older ones and other jars less.',
  failed: {
    'no-coats': 'No coat on it yet.',
    'unknown-jar': 'Its jar is not on this phone.',
    'no-room-for-lacquer': 'The jar says more thinner than there is room for. Put that right first.',
    'no-drying-law': 'This finish cures; its weight tells little. Check the piece by thumb and paper.',
    unsolvable: 'It could not be worked out from these weights.',
  },
  weighings: 'Weighings',
  bare: 'Bare',
  warm: (temperature: string, time: string): string => `dried warm, ${temperature}, ${time}`,
  leftOut: {
    damp: 'left out: damp',
    dust: 'left out: dust',
    torn: 'left out: torn',
    scale: 'left out: scale',
    unknown: 'left out',
  },
  otherScale: 'another scale',
  undo: (grams: string): string => `Undo ${grams} g`,
  weighed: 'Weighing',
  coats: 'Coats on it',
  noCoats: 'None yet.',
  also: 'It got these coats of the piece too',
  alsoLog: 'Log them',
  alsoLogged: (count: number): string =>
    count === 1 ? '1 coat logged on the card.' : `${count} coats logged on the card.`,
} as const;
