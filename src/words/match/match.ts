// English text of the Match place: its list, its front page, its verdicts.

type Size = 'hint' | 'little' | 'clearly' | 'far';
type Direction = 'light' | 'dark' | 'yellow' | 'blue' | 'red' | 'green' | 'clean' | 'dirty';

const SIZE: Record<Size, string> = {
  hint: 'a hint too',
  little: 'a little too',
  clearly: 'clearly too',
  far: 'far too',
};

/** "Clearly too light, a hint too red." At most two remarks, the larger first. */
export function painterWords(
  remarks: readonly { readonly size: Size; readonly direction: Direction }[],
): string {
  if (remarks.length === 0) return 'Nothing that a word would name.';
  const said = remarks.map(({ size, direction }) => `${SIZE[size]} ${direction}`).join(', ');
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

export const MATCH_WORDS = {
  title: 'Match',
  back: 'Match',
  start: 'Start a match',
  empty: 'No match yet',
  emptyText:
    'Read the old colour, mix a trial, read it dry: you are told how far off it is and what to add next, in grams.',
  needs: 'You need an instrument that gives L*a*b*, or a phone photo to rank trials.',
  open: 'In progress',
  away: 'Archived',
  notHere: 'No such match',
  notHereText: 'It may have been undone.',
  toList: 'All matches',
  places: { 'open-panel': 'Open panel', edge: 'Edge', hidden: 'Hidden' },
  placeHints: {
    'open-panel': 'ΔE00 0.6: plain, well lit',
    edge: 'ΔE00 0.8: chips, edges',
    hidden: 'ΔE00 1.8: inside, behind',
  },
  through: { bare: 'bare', clear: 'through clear' },
  line: (place: string, tolerance: string, light: string): string =>
    `${place}, within ΔE00 ${tolerance}, under ${light}`,
  cameOfIt: 'What came of it',
  recipe: (name: string, version: number): string => `Recipe: ${name}, version ${version}`,
  jar: (name: string): string => `Jar: ${name}`,
  match: (name: string): string => `Match: ${name}`,
  coatsOn: (piece: string, coats: number): string => `${coats} ${coats === 1 ? 'coat' : 'coats'} on ${piece}`,
  onPiece: (piece: string): string => `On ${piece}`,
  stand: 'Result so far',
  next: 'What to add next',
  trials: 'Target and trials',
  earlierTrials: (count: number): string => `${count} earlier`,
  more: 'More tools',
  change: 'Change this match',
  changeHint: 'Place, tinters, scale, let-downs',
  putAway: 'Archive this match',
  putAwayDone: 'Archived. What was read stays.',
  target: 'Target',
  targetNone: 'Not read yet',
  readTarget: 'Read the target',
  trial: (number: number): string => (number === 1 ? 'Trial 1, the base' : `Trial ${number}`),
  trialShort: (number: number): string => `Trial ${number}`,
  trialUnread: 'Not read yet',
  readTrial: (number: number): string => `Read trial ${number}`,
  readTrialAgain: (number: number): string => `Read trial ${number} again`,
} as const;

/** A light and observer: "D65, 10°". */
export const lightWords = (white: string): string => {
  const [light = '', angle = ''] = white.split('/');
  return `${light}, ${angle}°`;
};

export const VERDICT_WORDS = {
  pass: 'Within tolerance',
  'not-yet': 'Not yet',
  'measure-again': 'Too close to call: read it again',
  wet: 'Wet: no verdict',
  'camera-ranks-only': 'Photo: ranks, never passes',
} as const;
