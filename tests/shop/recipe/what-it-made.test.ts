import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { coatedFrom, jarsOfRecipe } from '../../../src/shop/recipe/what-it-made';
import { entry, fillJar, id, layCoat, startPiece } from '../../logbook/entries';

const [RECIPE, OTHER, CLEAR] = [id(0x1), id(0x2), id(0x3)];
const [WEIGH_UP, OTHER_WEIGH_UP] = [id(0x11), id(0x12)];
const [MIXED, PLAIN, BOXED, FROM_OTHER] = [id(0x21), id(0x22), id(0x23), id(0x24)];
const [BOX, CHAIR, TRAY] = [id(0x31), id(0x32), id(0x33)];

const begun = (weighUp: string, recipe: string): EntryBody => ({
  kind: 'weigh-up-begun',
  weighUp,
  recipe,
  plan: [{ ingredient: CLEAR, massKg: 0.1 }],
  division: { text: '0.1', unit: 'g' },
  isTared: true,
});
const filled = (jar: string, more: object): EntryBody => ({ ...fillJar(jar), ...more }) as EntryBody;
const boxedFrom = (...jars: string[]) => ({
  boxedFrom: jars.map((jar) => ({ jar, volume: { text: '50', unit: 'mL' } })),
});
const SHOP: readonly EntryBody[] = [
  begun(WEIGH_UP, RECIPE),
  begun(OTHER_WEIGH_UP, OTHER),
  filled(MIXED, { weighUp: WEIGH_UP }),
  filled(PLAIN, {}),
  filled(FROM_OTHER, { weighUp: OTHER_WEIGH_UP }),
  filled(BOXED, boxedFrom(MIXED, PLAIN)),
  ...[BOX, CHAIR, TRAY].map((piece) => startPiece(piece)),
  layCoat(BOX, MIXED),
  layCoat(BOX, PLAIN),
  layCoat(CHAIR, BOXED),
  layCoat(CHAIR, MIXED),
  layCoat(TRAY, PLAIN),
];
const shopOf = (bodies: readonly EntryBody[]) => fold(bodies.map((body, i) => entry(0x100 + i, body)));
const idsOf = (jars: readonly { readonly id: string }[]) => jars.map((jar) => jar.id);

describe('where a recipe went', () => {
  const shop = shopOf(SHOP);

  test('are the jars weighed up by it, and those that such a jar was boxed into', () => {
    expect(idsOf(jarsOfRecipe(RECIPE, shop))).toEqual([MIXED, BOXED]);
    expect(idsOf(jarsOfRecipe(OTHER, shop))).toEqual([FROM_OTHER]);
    expect(jarsOfRecipe(id(0x9), shop)).toEqual([]);
  });

  test('are the pieces with a coat from such a jar, the one coated last first', () => {
    const coated = coatedFrom(jarsOfRecipe(RECIPE, shop), shop);
    expect(coated.map(({ piece, coats }) => [piece.id, coats])).toEqual([
      [CHAIR, 2],
      [BOX, 1],
    ]);
  });

  test('is answered for jars that are said to be boxed into each other', () => {
    const tangled = [filled(MIXED, boxedFrom(PLAIN)), filled(PLAIN, boxedFrom(MIXED))];
    expect(jarsOfRecipe(RECIPE, shopOf(tangled))).toEqual([]);
  });
});
