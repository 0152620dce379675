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
  describe: (name: string, coats: number, film: { um: string; wet: string } | undefined): string => {
    if (coats === 0) return `${name}, cut through: no coat yet.`;
    const laid = `${name}, cut through: ${coats === 1 ? '1 coat' : `${coats} coats`}`;
    return film
      ? `${laid}, ${film.um} of new film, ${film.wet} of it still solvent.`
      : `${laid}, not worked out yet.`;
  },
  pick: 'Tap a coat to read about it.',
  figure: 'The finish, cut through and drawn to scale.',
} as const;
