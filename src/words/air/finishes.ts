// English text of the kinds of finish and of data sheets.

export const FINISH_WORDS = {
  title: 'Finishes and data sheets',
  intro:
    'What each kind needs. Common practice, no source, where nothing else is said; your product’s data sheet comes first.',
  kinds: 'Kinds of finish',
  sheets: 'Your jars',
  noSheet: 'No data sheet entered',
  hasSheet: (temperature: string, wet: string | undefined): string =>
    `Data sheet at ${temperature}${wet ? `, ${wet} wet` : ''}`,
  noJars: 'Fill a jar under Mix; its data sheet is entered here.',
  hardens: 'Hardens',
  how: {
    release: 'By losing solvent, and nothing else: a new coat melts into the old one.',
    waterborne:
      'Water leaves, by the humidity of the air; then the particles flow together. It does not re-dissolve.',
    precatalysed:
      'Loses solvent, then cures slowly with the acid in it. After its window it no longer bonds without a scuff.',
    conversion:
      'Loses solvent, then cures with the acid you add. Each coat goes on within its window, and the whole film stays thin.',
    urethane:
      'Loses solvent, then two parts react. Each coat goes on within its window; later it is scuffed.',
  },
  texts: {
    nitrocellulose: 'Fast, repairable, yellows. The drying model is made for it.',
    acrylic: 'Water-clear; lets go of its solvent more slowly. Same model, own constants.',
    cab: 'Hardly yellows, softer at the edges. Same model, own constants.',
    shellac: 'Dry in minutes, hard in weeks; alcohol dissolves it for ever. Same model, own constants.',
    waterborne:
      'No melt-in: coats bond by key. Scuff between days, and put the last two coats on in one day: a cut-through shows as a witness line.',
    precatalysed: 'Keeps for months in the can, for its catalyst works there too.',
    conversion: 'Tough and thin. Too much film cracks.',
    urethane: 'Hard and clear. Isocyanate: read the cautions first.',
  },
  touch: 'Dry to touch',
  recoat: 'Recoat from',
  recoatUntil: 'Recoat until',
  level: 'Level-sand',
  rubOut: 'Rub out',
  lightUse: 'Light use',
  settled: 'Fully cured',
  potLife: (at: string): string => `Pot life at ${at}`,
  totalFilm: 'All coats together',
  shop: 'Shop',
  shopFrom: (lowest: string): string => `${lowest} or warmer`,
  shopDamp: (highest: string): string => `at most ${highest} humidity`,
  at: (at: string, humidity: string): string => `At ${at} and ${humidity} humidity, one usual coat`,
  range: (low: string, high: string): string => `${low} to ${high}`,
  atMost: (film: string): string => `at most ${film} dry`,
  byModel: 'Worked out by the drying model from your coats and your air.',
  origin: 'Common practice, no source. Cure by Arrhenius, held back as the film turns to glass.',
} as const;

export const SHEET_WORDS = {
  title: 'Data sheet',
  intro:
    'Enter what the sheet says, at its own conditions. Its drying is then scaled to the sheet, with whatever the sheet leaves out.',
  temperature: 'Sheet’s temperature',
  humidity: 'Sheet’s humidity',
  wetFilm: 'Sheet’s wet film of a coat',
  wetFilmHint: 'Its times hold for this film. Empty: a usual coat.',
  touch: 'Dry to touch',
  recoatFrom: 'Recoat from',
  recoatUntil: 'Recoat until',
  recoatUntilHint: 'Upper end of the window; empty where there is none.',
  sand: 'Sand from',
  cured: 'Full cure',
  potLife: 'Pot life',
  totalFilm: 'All coats together at most, dry',
  empty: 'Empty: not on the sheet.',
  save: 'Save the sheet',
  saved: 'Data sheet saved. Dates are updated.',
  scaled: 'Scaled to your data sheet.',
} as const;

/** What a piece’s page says of a finish that cures. */
export const CURE_WORDS = {
  title: 'Window and film',
  windowUntil: 'Recoat window closes',
  windowOver: 'The window has closed: scuff before the next coat.',
  total: (film: string, limit: string): string => `${film} dry in all; at most ${limit}.`,
  near: 'One more coat would go over the limit.',
  over: 'Over the limit: a film this thick may crack. Sand some off before another coat, or leave it.',
  tooCold: 'It stood too cold to form a film. Look at it closely: a chalky film does not recover by warming.',
  byLaw: 'From the usual times for its kind, adjusted to your air; not from the drying model.',
} as const;

/** What is not known of a finish that dries by water or cures. */
export const LAW_UNKNOWN = [
  'Its times are those of common practice for the kind, or of your data sheet, adjusted to your air. The product may be twice as fast or slow again.',
  'Activation energies of urethanes were measured (29 to 36 kJ/mol with tin); those of other cures are from memory, and how far turning to glass holds them back is judgement.',
  'Air movement, parts measured out wrong, bare wood that soaks it up, and draughts in corners are left out.',
  'The data sheet and your own hand come before every time shown here.',
] as const;
