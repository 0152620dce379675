// English text of the jars: filling one, what is in it, its label.

import type { UnitSystem } from '../quantities';

/** Where lives are counted, and what doubles their pace. */
const LIFE_AT: Record<UnitSystem, string> = { metric: '20 °C', us: '68 °F' };
const DOUBLES: Record<UnitSystem, string> = { metric: '10 °C', us: '18 °F' };

export const FINISH_NAMES = {
  nitrocellulose: { label: 'Nitrocellulose', hint: 'lacquer' },
  acrylic: { label: 'Acrylic', hint: 'lacquer' },
  cab: { label: 'CAB-acrylic', hint: 'non-yellowing lacquer' },
  shellac: { label: 'Shellac', hint: 'in alcohol' },
  waterborne: { label: 'Waterborne', hint: 'lacquer' },
  precatalysed: { label: 'Pre-catalysed', hint: 'cures in the can too' },
  conversion: { label: 'Conversion', hint: 'acid catalyst' },
  urethane: { label: 'Two-pack urethane', hint: 'isocyanate hardener' },
} as const;

export const JAR_FORM = {
  title: { jar: 'What is in the jar', can: 'What is in the can' },
  lead: {
    jar: 'Usual values are filled in. Change what your data sheet says, then fill the jar.',
    can: 'Usual values are filled in. Change what your data sheet says, then add the can.',
  },
  product: 'The finish',
  comesAs: 'It comes as',
  vessels: {
    jar: { label: 'Jar or tin', hint: 'thinned by you' },
    can: { label: 'Spray can', hint: 'nothing to add' },
  },
  canName: (finish: string): string => `${finish} spray can`,
  canText: 'Solids as they leave the nozzle; nothing is added.',
  solidsBy: 'Its strength is given as',
  solidsBys: {
    cut: { label: 'Cut', hint: 'flakes in alcohol' },
    solids: { label: 'Volume solids', hint: 'from a sheet' },
  },
  cut: 'Cut: flakes in the alcohol',
  cutHint: 'A 2 lb cut is 2 lb to a US gallon, 240 g/L.',
  mixedOn: 'Mixed on',
  mixedOnHint: 'Left empty: today. Its life counts from then.',
  finish: 'Kind of finish',
  name: { jar: 'Name of the jar', can: 'Name of the can' },
  nameHint: 'As you would write it on the lid.',
  noName: 'Give it a name.',
  solids: {
    jar: 'Volume solids as sold',
    can: 'Volume solids as sprayed',
  },
  solidsHint: (usual: string): string => `Usual: ${usual} %. Go by the data sheet.`,
  thinnerTitle: (finish: string, comesAs: 'jar' | 'can'): string => {
    if (comesAs === 'can') return 'What is in it';
    return finish === 'waterborne' ? 'Water' : finish === 'shellac' ? 'Alcohol' : 'Thinner and retarder';
  },
  thinnerMore: 'Which thinner, and a retarder',
  thinner: 'Thinner',
  thinnerSorts: {
    usual: { label: 'Usual', hint: 'for this finish' },
    fast: { label: 'Fast', hint: 'cold, dry shop' },
    slow: { label: 'Slow', hint: 'warm or humid' },
    own: { label: 'My own', hint: 'name and blend' },
  },
  thinnerNames: {
    usual: (finish: string): string => `Usual thinner, ${finish}`,
    fast: () => 'Fast lacquer thinner',
    slow: () => 'Slow lacquer thinner',
  },
  keptThinner: 'A thinner used before',
  keptPrompt: 'A new one',
  thinnerName: 'Name of the thinner',
  noThinnerName: 'Give the thinner a name.',
  blend: 'What it is made of, by volume',
  solvent: (number: number): string => `Solvent ${number}`,
  chooseSolvent: 'Choose a solvent.',
  share: (number: number): string => `Share ${number}`,
  addSolvent: 'Add a solvent',
  takeOut: (number: number): string => `Remove solvent ${number}`,
  twice: 'A solvent is listed twice; add its shares together.',
  shareAboveNought: 'Give every solvent a share above 0 %.',
  addUp: 'The shares must add up to 100 %.',
  blendSum: (sum: string): string => `${sum} % of 100 %`,
  thinning: 'How much thinner',
  of: 'That is a percentage',
  ofLacquer: { label: 'of the lacquer', hint: '10 % is 1 : 10' },
  ofMix: { label: 'of the mix', hint: '10 % is 1 : 9' },
  sameOfMix: (percent: string): string => `The same as ${percent} % of the finished mix.`,
  sameOfLacquer: (percent: string): string => `The same as ${percent} % of the lacquer.`,
  retarder: 'Retarder',
  noRetarder: 'None',
  withRetarder: 'Some',
  retarderSolvent: 'Which',
  retarderAmount: 'How much retarder, of the mix',
  retarderHint: 'Usual 5 to 10 %; 15 % is extreme.',
  pigmentTitle: 'Pigment',
  pigment: 'Colour in it',
  pigmentSorts: {
    none: { label: 'Clear', hint: 'or dye only' },
    grains: { label: 'Opaque', hint: 'grains' },
    flakes: { label: 'Metallic', hint: 'or pearl: flakes' },
  },
  pigmentShare: 'Pigment in the dry film, by volume',
  pigmentHint: 'Usual for an opaque white: 15 to 20 %.',
  moreTitle: 'How much, how long it keeps, tracer',
  amount: { jar: 'In the jar', can: 'In the can' },
  amountHint: 'Left empty: what is left is not counted.',
  life: {
    pot: (units: UnitSystem): string => `Pot life at ${LIFE_AT[units]}`,
    shelf: (units: UnitSystem): string => `Keeps, at ${LIFE_AT[units]}`,
  },
  lifeHint: (units: UnitSystem): string =>
    `Counted down twice as fast for every ${DOUBLES[units]} warmer (common practice).`,
  outcome: 'Ready to use',
  outcomeSolids: (percent: string, comesAs: 'jar' | 'can'): string =>
    `${percent} % volume solids ${comesAs === 'can' ? 'at the nozzle' : 'in the mix'}`,
  outcomeFilm: (wet: string, dry: string): string => `A wet coat of ${wet} dries to ${dry}.`,
  tooThin: 'Thinner and retarder leave no room for lacquer. Lower one of them.',
  submit: { jar: 'Fill the jar', can: 'Add the can' },
  filled: (name: string): string => `${name} is filled.`,
} as const;

export const JAR_WORDS = {
  usualThinner: 'Lacquer thinner',
  moreThanIn: (grams: string): string =>
    `${grams} g were weighed in, so more than that cannot be left. Weigh the jar again, less its own weight.`,
  title: 'Jar',
  inIt: 'What is in it',
  usualFor: (names: string): string => `Usual values (common practice) are assumed for ${names}.`,
  toIngredients: 'Enter your own',
  finish: 'Finish',
  solids: 'Volume solids, ready to use',
  solidsNow: (percent: string): string =>
    `Volume solids are ${percent} now. Coats logged since it was weighed use that.`,
  density: 'Density',
  pigment: 'Pigment in the dry film',
  thinner: 'Thinner',
  retarder: 'Retarder',
  thinnedOf: (percent: string, of: 'lacquer' | 'mix'): string => `${percent} % of the ${of}`,
  filled: 'Filled',
  code: 'Code on the lid',
  contains: 'Contains',
  lay: 'Log a coat from it',
  label: 'Print a label',
  empty: 'Mark as empty',
  emptied: 'Marked as empty.',
  isEmptied: (when: string): string => `Empty since ${when}.`,
  refill: 'Fill another',
  anotherCan: 'Another can like it',
  left: 'What is left',
  leftFigure: (volume: string, grams: string): string => `${volume}, about ${grams} g`,
  leftUnknown: 'Not known. Weigh what is in it, and every coat counts from then on.',
  isLow: 'Only what is kept back for repairs is left.',
  keptBack: (volume: string): string => `${volume} of it kept back for repairs`,
  laid: (volume: string): string =>
    `${volume} used by coats, assuming 35 % of the spray lands on the piece (common practice)`,
  uncounted: (count: number): string =>
    count === 1
      ? '1 coat is not counted: the area of its piece is not known.'
      : `${count} coats are not counted: the area of their pieces is not known.`,
  evaporated: (grams: string): string =>
    `${grams} g of solvent gone. To bring it back, add as much thinner and weigh it again as “Evaporated”.`,
  doubts: {
    'heavier-than-expected':
      'It weighs more than it could: something was poured in, or a coat took less than assumed. The weight counts.',
    'lost-more-than-solvent':
      'More is missing than there was solvent: a coat was not logged, or something was spilled. The weight counts.',
  },
  weigh: 'Weigh it',
  weight: 'It weighs, without the jar',
  missing: 'What is missing was',
  missingIs: {
    used: { label: 'Used', hint: 'more than assumed' },
    evaporated: { label: 'Evaporated', hint: 'the lid was not tight' },
  },
  weighed: 'Weight logged.',
  tested: 'Test logged.',
  note: 'Log it',
  draw: 'Take some out',
  drawn: 'Taken out',
  drawnDone: 'Logged.',
  box: 'Box it with another jar',
  boxText:
    'Both are poured together into a new jar, so that the colour changes nowhere in the middle of a piece.',
  boxWith: 'With which',
  boxPrompt: 'Choose a jar',
  boxDo: 'Pour them together',
  boxed: (name: string): string => `${name} is filled.`,
  boxedFrom: 'Poured together from',
  life: { pot: 'Pot life', shelf: 'Shelf life' },
  until: (when: string): string => `until about ${when}`,
  leftOfLife: (span: string): string => `${span} left`,
  over: {
    pot: 'Its pot life is over. Don’t use it: it may gel in the gun, or cure badly.',
    shelf: 'It is past its time. Try it on a card first.',
  },
  lifeFromSheet: (span: string, temperature: string): string =>
    `${span} at ${temperature}, from the data sheet you entered.`,
  warm: (units: UnitSystem, when: string): string =>
    `At ${LIFE_AT[units]} it would have kept until ${when}; this shop was warmer.`,
  cool: (units: UnitSystem, when: string): string =>
    `At ${LIFE_AT[units]} it would have kept until ${when}; this shop was cooler.`,
  mixedOn: 'Mixed',
  cut: 'Cut',
  plateTitle: 'Glass-plate test',
  plateText:
    'Past its time. Before it goes on a piece, wipe a thin smear on glass: it must be dry and not sticky in 15 to 30 min. If it stays sticky, mix fresh.',
  platePasses: 'Dry, not sticky',
  plateFails: 'Still sticky',
  plateFound: {
    passes: (when: string): string => `On glass it dried hard, ${when}.`,
    fails: (when: string): string => `On glass it stayed sticky, ${when}. Mix fresh; this one stays soft.`,
  },
  howMuch: 'How much is needed',
  canLid: 'Code',
  lifeText: (units: UnitSystem): string =>
    `Worked out from your air readings, then the forecast: twice as fast for ${DOUBLES[units]} more (common practice).`,
  recipe: 'Its exact recipe',
  toRecipe: (name: string): string => `The recipe: ${name}`,
  toMatch: (name: string): string => `Match: ${name}`,
  pouredOf: (grams: string, share: string): string => `${grams} g, ${share}`,
  coats: 'Coats from it',
  coatCount: (count: number): string =>
    count === 0 ? 'none yet' : count === 1 ? '1 coat' : `${count} coats`,
  noCoats: 'None yet.',
  coatOn: (piece: string): string => `On ${piece}`,
  nothingPoured: 'Nothing has been poured yet. Pour at least one ingredient, then fill the jar.',
  ownMix: 'Nothing added',
  boxFinishes: 'Two different kinds of finish are not poured together. Choose a jar of the same kind.',
  boxAmounts: 'How much is left in both jars must be known first. Weigh what is in them.',
  boxedName: (names: readonly string[]): string =>
    new Set(names).size === 1 ? `${names[0]}, boxed` : names.join(' and '),
  undo: 'Undo the filling',
} as const;

export const LABEL_WORDS = {
  title: 'Label',
  print: 'Print it',
  lead: 'Printed at 62 by 45 mm (2.4 by 1.8 in). The code and the link lead back to this jar without a network.',
  qr: (code: string): string => `QR code that leads to jar ${code}`,
  ratio: (percent: string, of: 'lacquer' | 'mix'): string => `Thinner ${percent} % of the ${of}`,
  mixed: (count: number): string => `Mixed from ${count}`,
  solids: (percent: string): string => `${percent} % solids by volume`,
  use: (when: string): string => `Use by ${when}`,
  /** Signal words and hazards in plain words; the safety data sheet holds the full text. */
  hazards: {
    solvent: 'Flammable liquid and vapour',
    nitrocellulose: 'Nitrocellulose: residue burns fiercely',
    isocyanate: 'ISOCYANATES: trained, supplied air',
    acid: 'Acid: burns skin and eyes',
    oil: 'Oily rags heat themselves',
    aerosol: 'Under pressure',
    'old-opaque': 'Old pigment: may hold lead',
  },
  danger: 'DANGER',
  mind: 'WARNING',
  sheet: 'See the safety data sheet.',
} as const;
