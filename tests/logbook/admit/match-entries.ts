import type { EntryBody } from '../../../src/logbook/entry';
import { entry, id } from '../entries';

export const MATCH = id(0xd1);
export const TRIAL = id(0xd2);
export const WHITE = id(0xd3);
export const OCHRE = id(0xd4);
export const NOBODY = id(0xdf);

export const ingredient = (ingredient: string, is: 'white-base' | 'tinter'): EntryBody => ({
  kind: 'ingredient-described',
  ingredient,
  name: is,
  is,
});
export const describeMatch = (more: object = {}): EntryBody => ({
  kind: 'match-described',
  match: MATCH,
  name: 'Cream',
  place: 'edge',
  through: 'clear',
  white: 'D65/10',
  base: WHITE,
  tinters: [{ ingredient: OCHRE, like: 'ochre' }],
  division: { text: '0.01', unit: 'g' },
  letDowns: [],
  ...more,
});
export const mixTrial = (trial = TRIAL, ingredient = WHITE, match = MATCH): EntryBody => ({
  kind: 'trial-mixed',
  match,
  trial,
  added: [{ ingredient, form: 'neat', mass: { text: '200', unit: 'g' } }],
});
export const readColour = (
  of: Extract<EntryBody, { kind: 'colour-read' }>['of'],
  match = MATCH,
  L = '95.5',
): EntryBody => ({
  kind: 'colour-read',
  match,
  of,
  white: 'D65/10',
  isDry: true,
  readings: [
    {
      as: 'lab',
      L: { text: L, unit: 'ratio' },
      a: { text: '-0.8', unit: 'ratio' },
      b: { text: '2.2', unit: 'ratio' },
    },
  ],
});

export const BENCH = [entry(1, ingredient(WHITE, 'white-base')), entry(2, ingredient(OCHRE, 'tinter'))];
export const BEGUN = [...BENCH, entry(3, describeMatch())];
export const MIXED = [...BEGUN, entry(4, mixTrial())];
export const READ = [...MIXED, entry(5, readColour({ as: 'trial', trial: TRIAL }))];

export const RECIPE = id(0xd7);
export const written: EntryBody = {
  kind: 'recipe-written',
  recipe: RECIPE,
  name: 'Cream',
  use: { as: 'opaque', over: 'white' },
  lines: [{ ingredient: WHITE, amount: { text: '200', unit: 'g' } }],
};
export const ACCEPTABLE = [...MIXED, entry(6, written)];
export const accept = (more: object = {}): EntryBody =>
  ({ kind: 'trial-accepted', match: MATCH, trial: TRIAL, recipe: RECIPE, ...more }) as EntryBody;
export const field = { card: { text: '1', unit: 'ratio' }, coated: { text: '60', unit: 'ratio' } };
export const hiding = (more: object = {}): EntryBody =>
  ({
    kind: 'hiding-read',
    match: MATCH,
    dryFilm: { text: '25', unit: 'um' },
    in: 'Y',
    black: field,
    white: field,
    ...more,
  }) as EntryBody;
