// English text of the page that says why a time is what it is.

export const WHY_WORDS = {
  title: 'Why these times?',
  notYet: 'The times are not worked out yet.',
  notYetText: 'Log a coat first; its curves appear here.',
  solvent: 'Solvent still in the film',
  solventText: (held: string, share: string): string =>
    `Now ${held}, ${share} of the film. Its weight falls with the logarithm of time: fast at first, then ever slower.`,
  solventDescribe: (piece: string): string => `Solvent held by ${piece} since the last coat, with its band.`,
  solventLine: 'Solvent held',
  hardness: 'How hard the top is',
  hardnessText: (depth: string, level: string, rubOut: string): string =>
    `How far the newest ${depth} stand above the sanding room’s temperature when they turn from leather to glass. Level-sand above ${level}, rub out above ${rubOut}.`,
  hardnessDescribe: (piece: string): string =>
    `Hardness of the top of ${piece} since the last coat, with its band.`,
  hardnessLine: 'Hardness of the top',
  columns: { time: 'After', low: 'Low', likely: 'Likely', high: 'High' },
  sink: (share: string): string =>
    `Over a pore or a scratch the film will still sink by ${share} of its depth.`,
} as const;

export const MOVES_WORDS = {
  title: 'What would move the date',
  lead: 'Level-sanding would come, and rubbing out:',
  rubOut: (shift: string): string => `rub out ${shift}`,
  names: {
    warmer: 'Shop 5 °C (9 °F) warmer from now on',
    cooler: 'Shop 5 °C (9 °F) colder from now on',
    'thinner-coats': 'Last coat a third thinner',
    'no-retarder': 'No retarder in the jar',
  },
  oneMore: 'One more coat now',
  earlier: (span: string): string => `${span} earlier`,
  later: (span: string): string => `${span} later`,
  same: 'about the same',
  much: 'much later',
  ruleOfThumb: (shift: string): string => `rule of thumb: ${shift}`,
  feeds:
    'Here the colder shop is no gain. The hard top feels the cold less than the soft depth does, and the depth gives up less to it: the top is hard sooner, but the film goes on sinking for longer.',
  both: 'The rule of thumb halves or doubles the time for 10 °C (18 °F); for drying from fresh, this model makes it 3.5 times as long that much colder. Where they part, neither has been measured for this finish.',
} as const;

export const INPUT_WORDS = {
  title: 'What it is based on',
  origins: { log: 'your log', practice: 'common practice', fit: 'fitted to common practice' },
  finish: 'Film former',
  constants: 'Its drying constants',
  constantsText: 'one set for all products of this kind',
  checks: 'Checks',
  checksText: (count: number): string =>
    count === 0
      ? 'none yet; each one narrows the band'
      : count === 1
        ? '1 check narrows the band'
        : `${count} checks narrow the band`,
  coats: 'Coats',
  coatsText: (count: number, dry: string): string =>
    `${count === 1 ? '1 coat' : `${count} coats`}, ${dry} dry`,
  sprayed: (asSold: string, sprayed: string): string => `${asSold} solids as sold, ${sprayed} as it goes on`,
  mixed: (sprayed: string): string => `${sprayed} solids as it goes on, by what was poured`,
  ownSaid: 'Solvents of the can itself',
  ownSaidText: 'as you entered',
  ownUsualText: 'the usual ones for this finish',
  thinner: 'Thinner',
  retarder: 'Retarder',
  pigment: 'Pigment',
  pigmentText: (share: string): string => `${share} of the dry film; it slows solvent leaving`,
  base: 'Under the first coat',
  oldFilm: 'Old finish that softens with it',
  oldFilmText: (deep: string): string => `assumed ${deep} deep`,
  air: 'Air',
  airText: (count: number): string => (count === 1 ? '1 reading, then' : `${count} readings, then`),
  airForecast: (day: string, night: string): string => `forecast: ${day} by day, ${night} by night`,
  airLast: 'the last reading carried on, the air still after the working day',
  airNone: '21 °C (70 °F) and gentle movement',
  sanding: 'Sanding room',
  sandingText: (degrees: string, why: string): string => `${degrees}, ${why}`,
  sandingFrom: {
    setting: 'as you set it',
    usual: 'an ordinary room: a film judged in the cold gums when it comes into a warm one',
    forecast: 'the day of your forecast',
    reading: 'as read last',
  },
  rests: ({ earliest, late }: { readonly earliest: number; readonly late: number }): string =>
    `rests ${earliest} to ${late} days, or as its sheet says`,
  movement: 'How fast moving air takes solvent',
  movementText: 'still, gentle, booth or strong, one figure each',
} as const;

export const UNKNOWN_WORDS = {
  title: 'What this doesn’t know',
  lines: [
    'No measurement of how solvent moves in this film was found. Its constants were fitted to common practice.',
    'So the band lets solvent move 2.5 times faster or slower; one in ten lies outside at either end. Your own checks narrow it.',
    'Evaporation may be 1.5 times faster or slower than assumed for your air.',
    'Left out: plasticiser, the age of the jar, bare wood that soaks it up, draughts in corners.',
    'The data sheet and your own hand come before every time shown here.',
  ],
} as const;
