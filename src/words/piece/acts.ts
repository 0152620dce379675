// English text of the next act of a piece.

/** The act that comes next, on its button. */
export const NEXT_ACT_WORDS = {
  'level-sand': 'Level-sand',
  'rub-out': 'Rub out',
} as const;

/** Logging one coat on several pieces. */
export const ROUND_WORDS = {
  also: 'On these too',
  none: 'none',
  same: (count: number): string => `Same ${count} pieces as last round`,
  log: (coat: number, piece: string): string => `Log it: coat ${coat} on ${piece}`,
  logAll: (count: number): string => `Log it: a coat on ${count} pieces`,
  logged: (count: number): string => `A coat logged on ${count} pieces.`,
  others: (count: number): string => (count === 1 ? 'and on 1 more piece' : `and on ${count} more pieces`),
} as const;

/** The history of a piece, folded after its newest lines. */
export const HISTORY_FOLD = {
  more: (count: number): string => `${count} earlier`,
  last: (what: string, when: string): string => `${what}, ${when}`,
} as const;

/** Words within the section. */
export const FILM_FACTS = {
  asLaid: 'as laid',
  flash: 'flash',
  /** "−3 scuff": what it took, in the unit of the ruler. */
  sanded: {
    scuff: (taken: string): string => `−${taken} scuff`,
    level: (taken: string): string => `−${taken} level`,
    'rub-out': (taken: string): string => `−${taken} rub`,
  },
  marks: (marks: readonly string[]): string => ` On it: ${marks.join(', ')}.`,
} as const;
