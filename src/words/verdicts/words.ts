// The four words of the judge, apart from its reasons, so that the first screen need not bring those. One word for one thing on every page.

/** The four words. */
export const VERDICT_WORDS = { ready: 'Ready', perhaps: 'Perhaps', wait: 'Wait', hold: 'Held' } as const;

type Word = keyof typeof VERDICT_WORDS;

/** What an act is called after its word. */
const ACTS = {
  coat: ['for a coat', 'coat'],
  'flash-coat': ['for a flash coat', 'flash coat'],
  scuff: ['to scuff', 'scuffing'],
  'level-sand': ['to level-sand', 'level-sanding'],
  'rub-out': ['to rub out', 'rubbing out'],
  promise: ['to promise a date', 'promising a date'],
  'hand-over': ['to hand over', 'handing over'],
} as const;

/** "Ready to level-sand", "Held: level-sanding". */
export const verdictWords = (word: Word, act: keyof typeof ACTS): string =>
  word === 'ready' || word === 'wait'
    ? `${VERDICT_WORDS[word]} ${ACTS[act][0]}`
    : `${VERDICT_WORDS[word]}: ${ACTS[act][1]}`;
