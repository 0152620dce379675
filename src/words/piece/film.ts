// English text of the cross-section of a finish.

export const FILM_WORDS = {
  oldFinish: 'Old finish',
  coat: (number: number): string => `Coat ${number}`,
  woods: {
    'bare-wood': 'Wood',
    sealed: 'Sealed',
    'old-redissolves': 'Wood',
    'old-closed': 'Wood',
  },
  describe: (name: string, coats: number, um: string, wet: string): string =>
    coats === 0
      ? `${name}, cut through: no coat yet.`
      : `${name}, cut through: ${coats === 1 ? '1 coat' : `${coats} coats`}, ${um} of new film, ${wet} of it still solvent.`,
  pick: 'Tap a coat to read about it.',
  figure: 'The finish, cut through and drawn to scale.',
} as const;
