// English text of the record that goes out with a piece.

const list = (some: readonly string[]): string =>
  some.length < 2 ? some.join('') : `${some.slice(0, -1).join(', ')} and ${some.at(-1)}`;

/** Beside the section, where the lozenges stand. */
export const tracedWords = (layers: readonly string[], nm: number): string =>
  `◆ Tracer in ${list(layers).toLowerCase()}, seen at ${nm} nm.`;

export const RECORD = {
  title: 'Treatment record',
  preview: 'This is what goes out. Read it before you share it.',
  coming: 'Thickness and dates are being worked out. In a moment it can go out.',
  print: 'Print',
  save: 'Save as a file',
  share: 'Share',
  saved: 'Saved as one file that opens anywhere.',
  failed: 'The file could not be made. Try again.',
  withUndone: 'Show what was undone',
  privateOut: (count: number): string =>
    count === 1 ? '1 private note stays out.' : `${count} private notes stay out.`,
  edit: 'Write the record',
  fileName: (piece: string): string =>
    `${
      piece
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-|-$/g, '')
        .toLowerCase() || 'piece'
    }-record.html`,
  written: (when: string): string => `Written ${when} from the logbook alone.`,
  started: 'Started',
  finished: 'Finished',
  inWork: 'Still in work',
  condition: 'Condition and tests',
  base: 'Under the first coat',
  area: 'Area',
  oldFinish: 'Old finish',
  layers: 'Layers seen',
  tests: 'Spot tests',
  lead: 'Lead',
  leadLine: (finding: string, method: string | undefined): string =>
    method ? `${finding}, by ${method}` : `${finding}, method not noted`,
  leadFindings: {
    'none-found': 'none found',
    found: 'found',
    'treat-as-lead': 'not tested, treated as lead',
    untested: 'not tested',
  },
  asked: 'What was asked',
  proposed: 'What was proposed',
  photos: 'Photos',
  zones: 'What was done, place by place',
  whole: 'All of it',
  zone: (number: number, name: string): string => `${number}. ${name}`,
  overspray: (width: string): string => `New material reaches ${width} over sound finish.`,
  original: (text: string): string => `Original: ${text}.`,
  baseTexts: {
    'bare-wood': 'the wood, bare when work began',
    sealed: 'the wood, under a new sealer',
    'old-redissolves': 'the old finish below, which the new coats melted into',
    'old-closed': 'the old finish below, which the new coats lie on',
  },
  colours: {
    untouched: 'Clear only; colour untouched.',
    toned: 'Colour brought on with a transparent toner.',
    opaque: 'Colour covered with an opaque coat.',
  },
  nothing: 'No coat was put on here.',
  sandedOff: (coats: number): string =>
    coats === 1 ? '1 coat was sanded off again.' : `${coats} coats were sanded off again.`,
  layer: 'Layer',
  material: 'Material',
  how: 'How',
  now: 'Thickness now',
  when: 'When',
  layersAdded: 'Layers added, first one first',
  materials: 'Materials',
  notWeighed: 'as bought or as filled; not weighed up',
  weighed: (grams: string, name: string, lot: string | undefined): string =>
    `${grams} g ${name}${lot ? `, lot ${lot}` : ''}`,
  tracer: (coats: readonly string[], nm: number): string => `Tracer in ${list(coats)}, seen at ${nm} nm.`,
  coat: (number: number): string => `coat ${number}`,
  filmNew: (film: string, isOverWhole: boolean): string =>
    `New film once dry${isOverWhole ? ', with the coats on all of it' : ''}, estimated: ${film}.`,
  colour: 'Colour',
  toned: (place: string, passes: number): string =>
    `${place}, after ${passes === 1 ? '1 pass' : `${passes} passes`} of toner`,
  colourLine: (name: string, target: string, last: string, dE: string, light: string): string =>
    `${name}: target ${target}, last reading ${last}, difference ${dE} (deltaE00, ${light}).`,
  air: 'Air',
  airLine: (temperature: string, humidity: string): string =>
    `${temperature}, ${humidity} while coats went on.`,
  checks: 'Checks',
  holds: 'Holds set aside, with the reason',
  undoing: 'How to undo it',
  openedBy: (material: string, solvent: string): string => `${material}: ${solvent}.`,
  solvents: {
    nitrocellulose: 'opened by lacquer thinner or acetone',
    acrylic: 'opened by lacquer thinner or acetone',
    cab: 'opened by lacquer thinner or acetone',
    shellac: 'opened by alcohol',
    waterborne: 'swollen by acetone or alcohol; then lifted by hand',
    precatalysed: 'swollen by strong solvent; then lifted by hand',
    conversion: 'not opened by solvent; taken off by hand',
    urethane: 'not opened by solvent; taken off by hand',
  },
  undoingCaveat: 'Common practice, no source: try it on a hidden spot first.',
  disclosure: 'Disclosure',
  care: 'Care',
  notes: 'Notes',
  history: 'Everything that was logged',
  undone: 'undone',
  corrected: 'corrected',
  columns: { when: 'When', what: 'What', how: 'How' },
} as const;

/** The disclosure and the care sheet as the facts give them, before anybody edits them. */
export const FROM_FACTS = {
  place: (name: string, what: string, coats: number, materials: readonly string[]): string =>
    coats === 0
      ? `${name}: ${what}; nothing added.`
      : `${name}: ${what}; ${coats === 1 ? '1 application' : `${coats} applications`} of ${list(materials)}.`,
  all: (coats: number, materials: readonly string[]): string =>
    `All of it: ${coats === 1 ? '1 coat' : `${coats} coats`} of ${list(materials)}.`,
  lead: (finding: string): string => `Lead in the old finish: ${finding}.`,
  layers: (seen: string): string => `Layers of it: ${seen}.`,
  none: 'No new material is recorded.',
  soft: (date: string, isFully: boolean): string =>
    `The finish is ${isFully ? 'fully hardened' : 'hard'} by about ${date}. Until then no pressure, no straps, nothing left standing on it.`,
  softFound: 'When it was last tried it was still soft: treat it as soft.',
  softUnknown: 'The finish is new. Its hardening has not been worked out; treat it as soft.',
  softLong: (likely: string | undefined): string =>
    likely === undefined
      ? 'The finish may stay soft for over a year: treat it as soft.'
      : `The finish is most likely hard by about ${likely}, and may stay soft for over a year: treat it as soft until it has been tried.`,
  rubber: 'No stand or strap of rubber or vinyl for 6 months: it softens the finish for good.',
  cloth: 'Dust it with a soft dry cloth. No alcohol, no silicone polish.',
  cold: 'Keep it from frost and sudden cold; after transport leave it in its closed case for 12 to 24 h.',
} as const;

export const RECORD_FORM = {
  title: 'Write the record',
  asked: 'What was asked',
  proposed: 'What was proposed',
  undoing: 'How to undo it',
  disclosure: 'Disclosure for a sale',
  disclosureHint: 'Filled from the logbook and follows it, until you change it.',
  care: 'Care sheet',
  emptyHint: 'Left empty, the record says what the logbook knows.',
  save: 'Save',
  saved: 'Record saved.',
  what: 'The words of the record',
  note: 'Note',
  noteTitle: 'Add a note',
  isPrivate: 'Private: stays out of whatever is shared',
  saveNote: 'Save the note',
  noteSaved: 'Note saved.',
} as const;
