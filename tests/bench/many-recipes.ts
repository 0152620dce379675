import type { EntryBody } from '../../src/logbook/entry';
import { id } from '../logbook/entries';

const WORDS = ['aged', 'white', 'cream', 'tobacco', 'burst', 'amber', 'ivory', 'grey', 'ebony', 'honey'];
const word = (n: number): string => WORDS[n % WORDS.length] ?? '';

/** Ten tinters, and so many recipes of four of them each, every one with a name and a note of its own. */
export const manyRecipes = (count: number): EntryBody[] => [
  ...WORDS.map(
    (name, n): EntryBody => ({
      kind: 'ingredient-described',
      ingredient: id(n + 1),
      name: `Tinter ${name}`,
      is: 'tinter',
    }),
  ),
  ...Array.from(
    { length: count },
    (_, n): EntryBody => ({
      kind: 'recipe-written',
      recipe: id(100 + n),
      name: `${word(n)} ${word(Math.floor(n / 10))} ${n}`,
      use: { as: 'opaque', over: 'white' },
      note: `For ${word(n + 3)} pieces, three coats, dried card number ${n}`,
      lines: [1, 2, 3, 4].map((k) => ({
        ingredient: id(((n + k) % WORDS.length) + 1),
        amount: { text: String(k), unit: 'g' },
      })),
    }),
  ),
];
