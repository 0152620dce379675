// English text of reading a colour, by instrument or from its file.

export const READ_WORDS = {
  titles: {
    target: 'Read the target',
    card: 'Read a card',
    ground: 'Read what the toner goes over',
    toned: 'Read the toned card',
  },
  tint: (name: string): string => `Draw-down of ${name}`,
  how: 'The instrument gives',
  hows: { lab: 'L*a*b*', xyz: 'XYZ', hex: 'Hex', file: 'A file' },
  photo: 'By photo instead',
  light: 'Light and observer',
  lightOther: (light: string): string =>
    `This match is under ${light}. A reading under another light is kept, and cannot be compared.`,
  hexLight: 'Hex means D65, 2°.',
  reading: (number: number): string => `Reading ${number}`,
  another: 'Another reading',
  remove: 'Leave out',
  removeThis: (number: number): string => `Leave out reading ${number}`,
  parts: { L: 'L*', a: 'a*', b: 'b*', X: 'X', Y: 'Y', Z: 'Z' },
  hex: 'Hex',
  hexHint: 'Such as #e6dcc0. Rounded to a 256th: good for orientation.',
  mean: (lab: string): string => `Mean ${lab}`,
  spread: (spread: string): string => `spread ${spread} ΔE00`,
  single: 'Read it again, a little aside: three readings tell how sure it is.',
  wide: 'They lie far apart. Clean the place, set the instrument flat, and read again.',
  film: 'The film is',
  dry: { label: 'Dry', hint: 'overnight, or forced and cooled' },
  wet: { label: 'Wet', hint: 'kept; no target, no pass' },
  under: 'Read',
  bare: { label: 'Bare', hint: 'no clear' },
  clear: { label: 'Under clear', hint: 'the coats it will get' },
  coats: 'Coats of clear',
  share: 'Tinter in the mix with the base',
  shareHint: 'By weight of neat tinter: 5 % is 1 g in 19 g of base. Two shares tell more than one.',
  passes: 'Passes of toner on it',
  over: 'Over what, and how dried',
  overHint: 'Such as “white primer, two coats, overnight”.',
  when: 'When',
  far: (dE: string): string => `ΔE00 ${dE} apart: is it the same surface?`,
  farText: (lab: string): string =>
    `It read ${lab} before. If this is another card, say which; if it is the same, clean it, read it once more, and log it.`,
  farAmong: 'These readings are too far apart for one card. Check them, or log them as they are.',
  farOf: 'This reading is of',
  farSame: (title: string): string => `${title}: the same surface`,
  saveFar: 'Log it all the same',
  newer: (number: number): string => `Trial ${number} is newer and not read yet. Is this reading of it?`,
  save: 'Log the reading',
  saved: 'Reading logged.',
  file: 'CSV or CGATS file from the instrument',
  fileHint: 'Columns of L*a*b*, XYZ, or reflectance by wavelength. It is read on this phone only.',
  fileFound: (count: number): string =>
    count === 1
      ? 'One reading found. Tick what was read here.'
      : `${count} readings found. Tick what was read here.`,
  fileChoose: 'Readings in the file',
  fileWrong: 'This file cannot be read as it is',
  fileNone: 'Tick at least one reading.',
  fileMixed: 'These were taken under different lights. Log them one light at a time.',
  fileRow: (line: number, name: string): string => (name === '' ? `Line ${line}` : `${name} (line ${line})`),
  spectrum: 'spectrum',
  undoName: 'Reading',
  more: 'Over what, and when',
} as const;

export const READ_PROBLEMS = {
  hexLight: 'A hex colour is always under D65 and the 2° observer. Choose that light for it.',
  noColour: 'A spectrum must cover 400 to 700 nm in even steps, under D65, D50, A or LED-B3.',
  impossible: 'No surface has this colour. Look at the numbers again, and at the light they belong to.',
} as const;

/** A file's fault by its line. */
export const fileLine = (line: number, problem: string): string => `Line ${line}: ${problem}`;

export const FILE_PROBLEMS = {
  'too-large': () => 'the file is too large to be a list of readings. Export fewer.',
  'too-many-rows': () => 'more rows than can be read at once. Export fewer.',
  'too-many-columns': () => 'more columns than a reading has.',
  'no-readings': () => 'no readings follow. Export the measurements, not the settings.',
  'no-colour-columns': (found: string) =>
    `no columns of L*a*b*, XYZ or reflectance are named here${found === '' ? '' : ` (it says “${found}”)`}.`,
  unfinished: () => 'the file ends before its END_DATA. Export it again.',
  'open-quote': () => 'a quotation mark is never closed.',
  'wrong-cell-count': (found: string) => `this row has ${found} cells, and the heading has another number.`,
  'wrong-row-count': (found: string) => `NUMBER_OF_SETS and the rows do not agree (${found}).`,
  'not-a-number': (found: string) => `“${found}” is no number.`,
  'impossible-colour': (found: string) => `no surface can be ${found}.`,
  'unknown-light': (found: string) =>
    `the light “${found}” is not known here. Use D50, D65, A, C or another of the list.`,
  'spectrum-steps': () => 'the wavelengths are not in even steps of 1, 2, 5, 10 or 20 nm.',
  'spectrum-range': () => 'the spectrum must cover 400 to 700 nm.',
} as const;
