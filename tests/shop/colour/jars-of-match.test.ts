import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { jarsOfMatch, matchOfJar, matchOfRecipe } from '../../../src/shop/colour/jars-of-match';
import { fillJar, id, inTurn } from '../../logbook/entries';
import { MATCH, trialId, WHITE } from './a-match';

const [FIRST, SECOND, BY_HAND] = [id(0xd1), id(0xd2), id(0xd3)];
const [OTHER_MATCH, WEIGHED, ANEW, HAND_WEIGHED] = [id(0x140), id(0x141), id(0x142), id(0x143)];
const [OLD, NEW, PLAIN, OF_HAND] = [id(0xb1), id(0xb2), id(0xb3), id(0xb4)];

const described = (match: string): EntryBody => ({
  kind: 'match-described',
  match,
  name: 'Cream',
  place: 'edge',
  through: 'bare',
  white: 'D65/10',
  base: WHITE,
  tinters: [],
  division: { text: '0.01', unit: 'g' },
  letDowns: [],
});
const mixed = (match: string, n: number): EntryBody => ({
  kind: 'trial-mixed',
  match,
  trial: trialId(n),
  added: [{ ingredient: WHITE, form: 'neat', mass: { text: '100', unit: 'g' } }],
});
const recipe = (of: string, previous?: string): EntryBody => ({
  kind: 'recipe-written',
  recipe: of,
  name: 'Cream',
  use: { as: 'opaque', over: 'white' },
  lines: [{ ingredient: WHITE, amount: { text: '100', unit: 'g' } }],
  ...(previous !== undefined && { previous }),
});
const accepted = (match: string, n: number, of: string): EntryBody => ({
  kind: 'trial-accepted',
  match,
  trial: trialId(n),
  recipe: of,
});
const begun = (weighUp: string, of: string): EntryBody => ({
  kind: 'weigh-up-begun',
  weighUp,
  recipe: of,
  plan: [{ ingredient: WHITE, massKg: 0.1 }],
  division: { text: '0.1', unit: 'g' },
  isTared: true,
});
const filled = (jar: string, weighUp: string): EntryBody => ({ ...fillJar(jar), weighUp }) as EntryBody;

const START: readonly EntryBody[] = [
  { kind: 'ingredient-described', ingredient: WHITE, name: 'White', is: 'white-base' },
  described(MATCH),
  mixed(MATCH, 1),
  recipe(FIRST),
  accepted(MATCH, 1, FIRST),
  recipe(SECOND, FIRST),
  recipe(BY_HAND),
  begun(WEIGHED, FIRST),
  begun(ANEW, FIRST),
  begun(HAND_WEIGHED, BY_HAND),
  filled(OLD, WEIGHED),
  filled(NEW, ANEW),
  fillJar(PLAIN),
  filled(OF_HAND, HAND_WEIGHED),
];
const shopOf = (...more: readonly EntryBody[]) => fold([...START, ...more].map(inTurn));
const shop = shopOf();

describe('the jars of a match', () => {
  test('hold the recipe that it became, the newest first', () => {
    expect(jarsOfMatch(shop.matches.get(MATCH) ?? expect.unreachable(), shop).map((jar) => jar.id)).toEqual([
      NEW,
      OLD,
    ]);
    expect(jarsOfMatch({ accepted: undefined }, shop)).toEqual([]);
  });

  test.each([
    { what: 'a jar weighed up by its recipe', jar: OLD, is: MATCH },
    { what: 'a jar by a recipe written by hand', jar: OF_HAND, is: undefined },
    { what: 'a jar filled by hand', jar: PLAIN, is: undefined },
  ])('$what is of $is', ({ jar, is }) => {
    expect(matchOfJar(shop.jars.get(jar) ?? expect.unreachable(), shop)?.id).toBe(is);
  });
});

describe('the match of a recipe', () => {
  test('is that of any version before it', () => {
    expect(matchOfRecipe(FIRST, shop)?.id).toBe(MATCH);
    expect(matchOfRecipe(SECOND, shop)?.id).toBe(MATCH);
    expect(matchOfRecipe(BY_HAND, shop)).toBeUndefined();
    expect(matchOfRecipe(id(0xff), shop)).toBeUndefined();
  });

  test('is the newest of several', () => {
    const more = shopOf(described(OTHER_MATCH), mixed(OTHER_MATCH, 2), accepted(OTHER_MATCH, 2, SECOND));
    expect(matchOfRecipe(SECOND, more)?.id).toBe(OTHER_MATCH);
    expect(matchOfRecipe(FIRST, more)?.id).toBe(MATCH);
  });

  test('is found where two versions of another phone name each other', () => {
    const looped = fold([described(MATCH), recipe(FIRST, SECOND), recipe(SECOND, FIRST)].map(inTurn));
    expect(matchOfRecipe(SECOND, looped)).toBeUndefined();
  });
});
