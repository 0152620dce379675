// English text of the clear shift, the tinters, hiding and the dye toner.

export const SHIFT_WORDS = {
  title: 'Clear shift',
  intro:
    'Clear makes a colour yellower and darker. Read one dry card bare, coat it with the clear it will get, read it again: the opaque is then aimed at the target less that shift.',
  none: 'Not read yet',
  usual:
    'Usual for 100 µm (4 mil) of nitrocellulose over white: b* +1 to +3.5, L* −0.3 to −1.2 (common practice, no source).',
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
  filmAxis: { metric: 'dry film, µm', us: 'dry film, mil' },
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
  'already-there': (dE: string): string => `On target already: ΔE00 ${dE}.`,
  'another-toner': 'Every pass of this toner leads away from the target. Take another.',
  needsTarget: 'Read the target first.',
} as const;
