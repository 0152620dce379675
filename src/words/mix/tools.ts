// English text of what can be worked out: how much to mix, the flow cup, the drop fill, a jar by its label.

import type { UnitSystem } from '../quantities';

const WET_HINT: Record<UnitSystem, string> = {
  metric: 'Usual 75 to 125 µm; about 150 µm sags.',
  us: 'Usual 3 to 5 mil; about 6 mil sags.',
};
const HAND_HINT: Record<UnitSystem, string> = {
  metric: 'Brushed 75 to 125 µm; a session with the pad about 12 µm.',
  us: 'Brushed 3 to 5 mil; a session with the pad about 0.5 mil.',
};
const HOLD_UP_HINT: Record<UnitSystem, string> = {
  metric: 'Usual 10 to 20 mL.',
  us: 'Usual 0.3 to 0.7 fl oz.',
};
const CONTAINERS = {
  quart: ['quart', 'quarts'],
  gallon: ['gallon', 'gallons'],
  litre: ['× 1 L can', '× 1 L cans'],
  'five-litres': ['× 5 L can', '× 5 L cans'],
  'spray-can': ['spray can of 400 mL (13.5 fl oz)', 'spray cans of 400 mL (13.5 fl oz)'],
} as const;

/** What a finish and what thins it are called in a sum. */
const namesOf = (finish: string): readonly [string, string] => {
  if (finish === 'waterborne') return ['finish', 'water'];
  return finish === 'shellac' ? ['shellac', 'alcohol'] : ['lacquer', 'thinner'];
};

export const AMOUNT_WORDS = {
  title: 'How much to mix',
  with: 'What with',
  source: 'Jar or recipe',
  usualOf: (finish: string): string => `${finish}, usual values`,
  sourceFacts: (solids: string, thinner: string | undefined): string =>
    `${solids} solids by volume${thinner ? `, thinned by ${thinner} of its volume` : ' in the mix'}.`,
  area: 'Area to coat',
  shape: 'Shape',
  shapes: {
    known: { label: 'I know the area' },
    panel: { label: 'Panel', hint: 'one side' },
    box: { label: 'Box', hint: 'all outside' },
    cylinder: { label: 'Turning', hint: 'round' },
    disc: { label: 'Disc', hint: 'one side' },
    sphere: { label: 'Ball' },
    body: { label: 'Solid body' },
    mandolin: { label: 'Mandolin size', hint: 'with neck' },
    'jewellery-box': { label: 'Jewellery box' },
    table: { label: 'Side table' },
  },
  piece: 'A piece on the bench',
  noPiece: 'None of them',
  knownArea: 'Area',
  length: 'Length',
  width: 'Width',
  height: 'Height',
  diameter: 'Diameter',
  sizeProblem: 'Enter a size above 0 and up to 10 m (33 ft).',
  slim: 'It is mostly',
  slims: {
    flat: { label: 'Flat faces', hint: 'as measured' },
    slim: { label: 'Slim legs or rails', hint: '1.5 to 2 times as much' },
  },
  way: 'It goes on',
  ways: {
    spray: { label: 'By spray' },
    hand: { label: 'By brush or pad', hint: 'nearly all stays on it' },
  },
  coats: 'Coats',
  coatsProblem: 'Enter a whole number of coats, 1 to 100.',
  by: 'A coat is given as',
  bys: {
    wet: { label: 'Wet film', hint: 'by gauge' },
    rate: { label: 'Spreading rate', hint: 'from the label' },
  },
  wetFilm: 'Wet film of a coat',
  wetHint: (units: UnitSystem, way: string): string => (way === 'hand' ? HAND_HINT : WET_HINT)[units],
  rate: 'It covers, in one coat',
  rateHint: 'As the label or data sheet says, usual losses included.',
  transfer: 'Of what is sprayed, this much lands on the piece',
  transferHint: 'Usual 25 to 45 % on thin things, 30 to 50 % on furniture.',
  transferProblem: 'Enter a percentage from 1 to 100.',
  holdUp: 'Stays in the gun at each filling',
  holdUpHint: (units: UnitSystem): string => HOLD_UP_HINT[units],
  fillings: 'Fillings of the gun',
  fillingsHint: 'Left empty: one for three coats, a day’s worth.',
  fillingsProblem: 'Enter a whole number of fillings, 0 to 200.',
  keepBack: 'Keep back for repairs',
  takes: 'It takes',
  mixed: (volume: string): string => `${volume} to mix`,
  needed: (volume: string): string => `${volume} to have ready`,
  perCoat: (volume: string): string => `${volume} a coat, `,
  flat: (volume: string): string => `${volume} in all`,
  slimmed: (volume: string): string => `With slim legs or rails ${volume}.`,
  withGun: (volume: string, kept: string): string => `${volume} stays in the gun, ${kept} is kept back.`,
  kept: (kept: string): string => `${kept} is kept back.`,
  buy: 'Buy',
  buyThinner: (finish: string, bought: string): string => `and ${bought} of ${namesOf(finish)[1]}`,
  bought: (some: readonly { readonly size: keyof typeof CONTAINERS; readonly count: number }[]): string =>
    some.map(({ size, count }) => `${count} ${CONTAINERS[size][count === 1 ? 0 : 1]}`).join(' and '),
  buyText: 'With what is kept back. Sizes differ by maker: check the label.',
  sprayCanText:
    'About 250 mL (8.5 fl oz) of a 400 mL (13.5 fl oz) can is lacquer; the rest is propellant (common practice).',
  parts: (finish: string, lacquer: string, thinner: string): string => {
    const [product, thin] = namesOf(finish);
    return `${lacquer} ${product} and ${thinner} ${thin}.`;
  },
  weighs: (grams: string): string => `It weighs about ${grams} g.`,
  film: (dry: string, total: string): string => `${dry} dry a coat, ${total} in all.`,
  inJars: 'What is in the jars',
  jarEnough: (left: string): string => `${left} left: enough.`,
  jarShort: (left: string, short: string): string => `${left} left: ${short} short.`,
  jarUnknown: 'How much is left is not known. Weigh what is in it.',
  noJars: 'No jar holds anything yet.',
  weigh: 'Weigh up this much',
} as const;

export const CUP_WORDS = {
  title: 'Flow cup',
  read: 'A reading',
  cup: 'Cup',
  seconds: 'Time',
  secondsHint: (from: number, to: number): string => `This cup is good from ${from} to ${to} s.`,
  notSeconds: 'Enter the seconds, such as 24.',
  is: (mm2s: string, units: UnitSystem): string => `${mm2s} ${units === 'us' ? 'cSt' : 'mm²/s'}`,
  atC: (temperature: string): string => `At ${temperature}, as its standard asks.`,
  mPas: (value: string, units: UnitSystem): string =>
    units === 'us' ? `About ${value} cP at 7.9 lb/gal.` : `About ${value} mPa·s at 0.95 g/mL.`,
  spread: (percent: string): string => `Cups of this kind differ by ${percent} between generations.`,
  zahn: 'Zahn cups: two readings of one person differ by up to 11 %, two shops’ by up to 33 %.',
  others: 'The same in other cups',
  otherCup: 'Cup',
  otherTime: 'Time',
  tooThin: 'too thin for it',
  tooThick: 'too thick for it',
  outside: (from: number, to: number): string =>
    `This cup does not measure that. Use a cup that runs between ${from} and ${to} s.`,
  target: 'Thinner to a time',
  targetText:
    'Read the cup at two thinnings of the same lacquer at the same temperature; the rest is learned from them.',
  first: 'First thinning, of the lacquer',
  firstSeconds: 'Its time',
  second: 'Second thinning, of the lacquer',
  secondSeconds: 'Its time then',
  wanted: 'Wanted time',
  answer: (ofLacquer: string, ofMix: string): string =>
    `Thin to ${ofLacquer} % of the lacquer, which is ${ofMix} % of the mix.`,
  add: (thinner: string, volume: string): string =>
    `To ${volume} at the second thinning add ${thinner} of thinner.`,
  addLacquer: (thinner: string, volume: string): string =>
    `To ${volume} at the second thinning that is more than it needs: ${thinner} of thinner too much.`,
  extrapolated: 'It is outside the two readings, so try it on a little first.',
  have: 'Amount of the second',
  failures: {
    'outside-its-cup': 'A time is outside what the cup is good for.',
    'too-thin-for-cup': 'It would run through the cup too fast to say anything.',
    'too-thick-for-cup': 'It would run through the cup too slowly to say anything.',
    'thinned-alike': 'Both readings are at one thinning. Thin a little further and read again.',
    'thicker-with-thinner': 'The more thinned one took longer. One of them is off, or warmer: read again.',
    'thinner-than-target': 'The lacquer runs faster than that without any thinner.',
    'out-of-reach': 'That would take more thinner than the two readings can say.',
  },
} as const;

export const FILL_WORDS = {
  title: 'Drop fill of a chip',
  lead: 'Each drop sits as a mound and dries to its solids, so a chip takes several. Let each dry before the next.',
  sizes: 'Size of the chip',
  depth: 'Depth',
  length: 'Length',
  width: 'Width',
  size: 'Or its area',
  sizeHint: 'Where it is no rectangle.',
  solids: 'Volume solids of the fill',
  solidsHint: 'Unthinned lacquer: usual 20 to 25 %.',
  solidsProblem: 'Enter a percentage from 0.1 to 65.',
  mound: 'Mound of each drop',
  mounds: {
    '1': { label: 'Flush' },
    '1.25': { label: 'Slight' },
    '1.5': { label: 'Full', hint: 'the most that stays' },
  },
  rest: 'Left unfilled at the end',
  restProblem: 'Enter a percentage from 0.1 to 99.',
  fromJar: 'From the jar',
  noJar: 'None: I give the solids',
  answer: (count: number): string => (count === 1 ? '1 application' : `${count} applications`),
  rhythm: (days: string): string =>
    `At 2 to 3 a day, 3 to 5 h apart (common practice): ${days}. Then 7 to 30 days before it is levelled.`,
  days: (from: number, to: number): string =>
    from === to ? `${from} day${from === 1 ? '' : 's'}` : `${from} to ${to} days`,
  takes: (volume: string): string => `It takes ${volume} in all, without what stays on the brush.`,
} as const;

export const FIND_WORDS = {
  title: 'Find a jar',
  lead: 'Type the code from the lid, or show its label to the camera.',
  code: 'Code on the label',
  codeHint: 'Six letters and digits, such as K7Q-2MD.',
  noCode: 'A code has six letters and digits, such as K7Q-2MD.',
  unknown: 'No jar of this shop has this code. Restore a backup from the phone that filled it.',
  find: 'Find it',
  camera: 'Use the camera',
  cannotRead:
    'This browser cannot read labels by itself. The phone’s own camera app opens the link on the label; or type the code.',
  looking: 'Hold the label in the picture.',
  foreign: 'This label is not of this app.',
} as const;

export const CUP_NAMES = {
  'ford-1': 'Ford 1 (ASTM D1200)',
  'ford-2': 'Ford 2 (ASTM D1200)',
  'ford-3': 'Ford 3 (ASTM D1200)',
  'ford-4': 'Ford 4 (ASTM D1200)',
  'ford-5': 'Ford 5 (ASTM D1200)',
  'zahn-1': 'Zahn 1 (ASTM D4212)',
  'zahn-2': 'Zahn 2 (ASTM D4212)',
  'zahn-3': 'Zahn 3 (ASTM D4212)',
  'zahn-4': 'Zahn 4 (ASTM D4212)',
  'zahn-5': 'Zahn 5 (ASTM D4212)',
  'iso-3mm': 'ISO 2431, 3 mm',
  'iso-4mm': 'ISO 2431, 4 mm',
  'iso-5mm': 'ISO 2431, 5 mm',
  'iso-6mm': 'ISO 2431, 6 mm',
  'din-4mm': 'DIN 53211, 4 mm',
} as const;
