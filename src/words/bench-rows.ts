import { VERDICT_WORDS } from './verdicts/words';

// English text of the rows of the bench and of the line above them.

/** What comes next for a piece, as it follows its word. */
const NEXT = {
  coat: 'recoat',
  'first-coat': 'coat 1',
  'flash-coat': 'flash coat',
  scuff: 'scuff',
  'level-sand': 'level-sand',
  'rub-out': 'rub out',
  promise: 'promise a date',
  'hand-over': 'hand over',
} as const;
type Act = keyof typeof NEXT;

export const ROW_WORDS = {
  ready: (act: Act, coat: number): string =>
    `${VERDICT_WORDS.ready} ${act === 'coat' ? `for coat ${coat}` : `to ${NEXT[act]}`}`,
  firstCoat: `${VERDICT_WORDS.ready} for its first coat`,
  later: (word: keyof typeof VERDICT_WORDS, act: Act, when: string): string =>
    `${VERDICT_WORDS[word]}: ${NEXT[act]} ${when}`.trimEnd(),
  tryIt: 'try it',
  failed: 'not calculated',
  inTime: (span: string): string => `in ${span}`,
  overAYear: 'over a year',
  coats: (count: number): string => (count === 0 ? 'no coat yet' : count === 1 ? '1 coat' : `${count} coats`),
  find: 'Find a piece',
  none: 'No piece of that name on the bench.',
  axis: ['now', '1 h', '1 day', '1 wk', '1 mo'],
} as const;

/** The one line above the rows. */
export const NOTICE_LINE = {
  nothing: 'Nothing due',
  fire: 'Rags and filters, end of day',
  fireShort: 'Rags and filters',
  dayEnd: 'End of the day',
  due: (title: string, more: number): string => (more === 0 ? title : `${title} and ${more} more`),
} as const;
