// English text of the trials: weighing one in, looking at it, the jar and recipe it becomes.

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
