import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { lackingIn } from '../../../src/shop/recipe/lacking';
import { id, inTurn } from '../../logbook/entries';

const [WHOLE, BARE, DYE, LET_DOWN, RING] = [id(1), id(2), id(3), id(4), id(5)];
const fact = <U extends string>(text: string, unit: U) =>
  ({ value: { text, unit }, from: 'measured' }) as const;
const KNOWN = {
  density: fact('0.95', 'g/mL'),
  volumeSolids: fact('20', '%'),
  solvents: { value: [{ solvent: 'toluene', share: 1 }], from: 'measured' },
};
const ingredient = (of: string, is: string, more: object): EntryBody =>
  ({ kind: 'ingredient-described', ingredient: of, name: of, is, ...more }) as EntryBody;
const madeOf = (...of: string[]) => ({
  madeOf: of.map((one) => ({ ingredient: one, massFraction: 1 / of.length })),
});
const SHOP = [
  ingredient(WHOLE, 'clear', KNOWN),
  ingredient(BARE, 'white-base', {}),
  ingredient(DYE, 'dye', { ...KNOWN, dropMass: fact('0.03', 'g') }),
  ingredient(LET_DOWN, 'let-down', madeOf(WHOLE, BARE)),
  ingredient(RING, 'let-down', madeOf(RING, BARE)),
];
const shop = fold(SHOP.map(inTurn));
const lacking = (...used: Parameters<typeof lackingIn>[0]) =>
  lackingIn(used, shop).map(({ ingredient, facts }) => [ingredient.id, ...facts]);

describe('what is lacking of a mix', () => {
  test.each<{ what: string; used: Parameters<typeof lackingIn>[0]; lacks: readonly (readonly string[])[] }>([
    { what: 'of an ingredient that is known', used: [{ ingredient: WHOLE }], lacks: [] },
    {
      what: 'of one of which nothing is known',
      used: [{ ingredient: BARE }],
      lacks: [[BARE, 'density', 'volumeSolids', 'pigmentOfSolids', 'solvents']],
    },
    { what: 'of one in drops whose drop is known', used: [{ ingredient: DYE, inDrops: true }], lacks: [] },
    {
      what: 'of one in drops whose drop is not',
      used: [{ ingredient: WHOLE, inDrops: true }],
      lacks: [[WHOLE, 'dropMass']],
    },
    {
      what: 'of both at once',
      used: [{ ingredient: BARE, inDrops: true }],
      lacks: [[BARE, 'density', 'volumeSolids', 'pigmentOfSolids', 'solvents', 'dropMass']],
    },
    {
      what: 'of one in drops on another line',
      used: [{ ingredient: WHOLE }, { ingredient: WHOLE, inDrops: true }],
      lacks: [[WHOLE, 'dropMass']],
    },
    {
      what: 'of a let-down: what it is made of, and nothing of itself',
      used: [{ ingredient: LET_DOWN }],
      lacks: [[BARE, 'density', 'volumeSolids', 'pigmentOfSolids', 'solvents']],
    },
    {
      what: 'of a let-down in drops',
      used: [{ ingredient: LET_DOWN, inDrops: true }],
      lacks: [
        [LET_DOWN, 'dropMass'],
        [BARE, 'density', 'volumeSolids', 'pigmentOfSolids', 'solvents'],
      ],
    },
    {
      what: 'of one that is made of itself',
      used: [{ ingredient: RING }],
      lacks: [[BARE, 'density', 'volumeSolids', 'pigmentOfSolids', 'solvents']],
    },
    { what: 'of one that is not there', used: [{ ingredient: id(9) }], lacks: [] },
  ])('$what', ({ used, lacks }) => {
    expect(lacking(...used)).toEqual(lacks);
  });
});
