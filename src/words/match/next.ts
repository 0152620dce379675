// English text of how a match stands, and of what to add next.

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
  underClear: 'Now under clear',
  underClearText: (dE: string): string =>
    `Bare it is within the tolerance: ΔE00 ${dE}. Coat its card with the clear, let it dry, and read it: that decides.`,
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
