import { describe, expect, test } from 'vitest';
import { admit } from '../../../src/logbook/admit/admit';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { pouredKg } from '../../../src/logbook/fold/mix/weigh-ups';
import { correct, DAY_1_MS, entry, fillJar, id, inTurn, JAR, MINUTE_MS, strike } from '../entries';

const [CLEAR, WHITE, LET_DOWN, ALONE] = [id(0xe1), id(0xe2), id(0xe3), id(0xe4)];
const [RECIPE, NEXT, UNUSED] = [id(0xd1), id(0xd2), id(0xd3)];
const [BEGUN, POURED, FILLED, DROPPED] = [id(0xf1), id(0xf2), id(0xf3), id(0xf4)];
const [BOXED, FROM_WEIGH_UP] = [id(0xb2), id(0xb3)];
const NOWHERE = id(0xff);

const g = (text: string) => ({ text, unit: 'g' }) as const;
const ingredient = (of: string, ...madeOf: string[]): EntryBody => ({
  kind: 'ingredient-described',
  ingredient: of,
  name: of.slice(-2),
  is: 'clear',
  ...(madeOf.length > 0 && {
    madeOf: madeOf.map((one) => ({ ingredient: one, massFraction: 1 / madeOf.length })),
  }),
});
const recipe = (of: string, from: string, previous?: string): EntryBody => ({
  kind: 'recipe-written',
  recipe: of,
  name: 'Mix',
  use: { as: 'clear' },
  lines: [{ ingredient: from, amount: g('100') }],
  ...(previous !== undefined && { previous }),
});
const begun = (weighUp: string, by = RECIPE, of = CLEAR, isTared = true): EntryBody => ({
  kind: 'weigh-up-begun',
  weighUp,
  recipe: by,
  plan: [
    { ingredient: of, massKg: 0.1 },
    { ingredient: of, massKg: 0.05 },
  ],
  division: g('0.1'),
  isTared,
});
const pour = (weighUp: string, line = 0, grams = '100'): EntryBody => ({
  kind: 'poured',
  weighUp,
  line,
  scale: g(grams),
});
const drop = (weighUp: string): EntryBody => ({ kind: 'weigh-up-dropped', weighUp });
const jar = (of: string, more: object = {}): EntryBody => ({ ...fillJar(of), ...more }) as EntryBody;
const from = (...jars: string[]) => ({
  boxedFrom: jars.map((one) => ({ jar: one, volume: { text: '9', unit: 'mL' } })),
});

const BODIES: readonly EntryBody[] = [
  ingredient(CLEAR), // 1
  ingredient(WHITE), // 2
  ingredient(LET_DOWN, WHITE), // 3
  ingredient(ALONE), // 4
  recipe(RECIPE, CLEAR), // 5
  recipe(NEXT, CLEAR, RECIPE), // 6
  recipe(UNUSED, LET_DOWN), // 7
  begun(BEGUN), // 8
  begun(POURED), // 9
  pour(POURED), // 10
  pour(POURED, 1, '50'), // 11
  begun(FILLED), // 12
  pour(FILLED), // 13
  jar(FROM_WEIGH_UP, { weighUp: FILLED }), // 14
  begun(DROPPED), // 15
  drop(DROPPED), // 16
  fillJar(JAR), // 17
  jar(BOXED, from(JAR)), // 18
  ingredient(CLEAR), // 19: described anew
];
const shop = fold(BODIES.map(inTurn));
const nowMs = DAY_1_MS + 60 * MINUTE_MS;
const said = (body: EntryBody, to = shop) => {
  const admitted = admit(entry(40, body, nowMs), to, nowMs);
  return admitted.ok ? 'ok' : admitted.failure.kind;
};

describe('what is said of mixes fits the shop', () => {
  test.each<readonly [what: string, body: EntryBody, is: string]>([
    ['an ingredient made of what is there', ingredient(NOWHERE, CLEAR, WHITE), 'ok'],
    ['one made of what is not', ingredient(ALONE, CLEAR, NOWHERE), 'unknown-ingredient'],
    ['one made of itself', ingredient(ALONE, ALONE), 'contains-itself'],
    ['one made of what is made of it', ingredient(WHITE, CLEAR, LET_DOWN), 'contains-itself'],
    ['putting away an ingredient', { kind: 'ingredient-put-away', ingredient: CLEAR }, 'ok'],
    ['putting away none', { kind: 'ingredient-put-away', ingredient: NOWHERE }, 'unknown-ingredient'],
    ['a recipe', recipe(NOWHERE, CLEAR), 'ok'],
    ['a new version', recipe(NOWHERE, CLEAR, NEXT), 'ok'],
    ['a version of none', recipe(NOWHERE, CLEAR, id(0xfe)), 'unknown-recipe'],
    ['a recipe of what is not there', recipe(NOWHERE, id(0xfe)), 'unknown-ingredient'],
    ['putting away a recipe', { kind: 'recipe-put-away', recipe: NEXT }, 'ok'],
    ['putting away none', { kind: 'recipe-put-away', recipe: NOWHERE }, 'unknown-recipe'],
    ['a photo of its card', { kind: 'card-photographed', recipe: NEXT, photo: id(0xfd) }, 'ok'],
    ['a photo of no card', { kind: 'card-photographed', recipe: NOWHERE, photo: id(0xfd) }, 'unknown-recipe'],
    ['a weigh-up', begun(NOWHERE), 'ok'],
    ['a weigh-up by no recipe', begun(NOWHERE, id(0xfe)), 'unknown-recipe'],
    ['a weigh-up of what is not there', begun(NOWHERE, RECIPE, id(0xfe)), 'unknown-ingredient'],
    ['a pour', pour(BEGUN), 'ok'],
    ['a pour of the last line', pour(BEGUN, 1), 'ok'],
    ['a pour of a line beyond it', pour(BEGUN, 2), 'no-such-line'],
    ['a pour into nothing', pour(NOWHERE), 'unknown-weigh-up'],
    ['a pour into what is a jar already', pour(FILLED), 'weigh-up-over'],
    ['a pour into what was given up', pour(DROPPED), 'weigh-up-over'],
    ['giving up a weigh-up', drop(BEGUN), 'ok'],
    ['giving it up twice', drop(DROPPED), 'weigh-up-over'],
    ['a jar of a weigh-up', jar(NOWHERE, { weighUp: POURED }), 'ok'],
    ['a second jar of it', jar(NOWHERE, { weighUp: FILLED }), 'weigh-up-over'],
    ['a jar that is there', jar(JAR), 'jar-there-already'],
    ['a jar of two', jar(NOWHERE, from(JAR, BOXED)), 'ok'],
    ['a jar of one that is not there', jar(NOWHERE, from(JAR, id(0xfe))), 'unknown-jar'],
    ['weighing a jar', { kind: 'jar-weighed', jar: JAR, mass: g('9'), missing: 'used' }, 'ok'],
    ['weighing none', { kind: 'jar-weighed', jar: NOWHERE, mass: g('9'), missing: 'used' }, 'unknown-jar'],
    ['testing a jar', { kind: 'jar-tested', jar: JAR, test: 'glass-plate', result: 'passes' }, 'ok'],
    [
      'testing none',
      { kind: 'jar-tested', jar: NOWHERE, test: 'glass-plate', result: 'passes' },
      'unknown-jar',
    ],
    ['drawing from a jar', { kind: 'jar-drawn', jar: JAR, volume: { text: '9', unit: 'mL' } }, 'ok'],
    [
      'drawing from none',
      { kind: 'jar-drawn', jar: NOWHERE, volume: { text: '9', unit: 'mL' } },
      'unknown-jar',
    ],
  ])('%s: %s', (_, body, is) => expect(said(body)).toBe(is));
});

test.each<readonly [what: string, body: EntryBody, beganAt: number]>([
  ['a pour', pour(BEGUN), 8],
  ['a jar weighed', { kind: 'jar-weighed', jar: JAR, mass: g('9'), missing: 'used' }, 17],
  ['a jar drawn from', { kind: 'jar-drawn', jar: JAR, volume: { text: '9', unit: 'mL' } }, 17],
])('%s is no earlier than what it is about', (_, body, beganAt) => {
  const at = (minutes: number) => admit(entry(40, body, DAY_1_MS + minutes * MINUTE_MS), shop, nowMs);
  expect(at(beganAt - 1)).toMatchObject({
    failure: { kind: 'too-early', earliestMs: DAY_1_MS + beganAt * MINUTE_MS },
  });
  expect(at(beganAt).ok).toBe(true);
});

test('a weigh-up is corrected to have begun no later than its first pour', () => {
  const to = (minutes: number) =>
    correct(id(9), { at: new Date(DAY_1_MS + minutes * MINUTE_MS).toISOString() });
  expect([said(to(10)), said(to(11)), said(to(-5))]).toEqual(['ok', 'after-its-work', 'ok']);
});

describe('what is undone takes the ground from nothing', () => {
  test.each<readonly [what: string, entry: number, is: string]>([
    ['a weigh-up into which nothing was poured', 8, 'ok'],
    ['a weigh-up into which something was', 9, 'still-used'],
    ['a pour under another', 10, 'not-last-pour'],
    ['the last pour', 11, 'ok'],
    ['the last pour of what is a jar already', 13, 'still-used'],
    ['a jar of a weigh-up', 14, 'ok'],
    ['a weigh-up given up', 16, 'ok'],
    ['a jar that was poured into another', 17, 'still-used'],
    ['the jar that it was poured into', 18, 'ok'],
    ['a recipe with a newer version', 5, 'still-used'],
    ['the newest version, by which nothing was weighed', 6, 'ok'],
    ['a recipe that nobody used', 7, 'ok'],
    ['an ingredient of a let-down', 2, 'still-used'],
    ['an ingredient of a recipe', 3, 'still-used'],
    ['an ingredient of nothing', 4, 'ok'],
    ['one description of an ingredient that has another', 1, 'ok'],
    ['the other', 19, 'ok'],
  ])('%s: %s', (_, n, is) => expect(said(strike(id(n)))).toBe(is));

  test('an ingredient in a weigh-up alone is still used, and so is the last description that stands', () => {
    const bodies = [ingredient(CLEAR), ingredient(ALONE), recipe(RECIPE, CLEAR), begun(BEGUN, RECIPE, ALONE)];
    const small = fold(bodies.map(inTurn));
    expect(said(strike(id(2)), small)).toBe('still-used');
    expect(said(strike(id(3)), small)).toBe('still-used'); // weighed by it
    const struck = fold([...[...BODIES].map(inTurn), entry(30, strike(id(19)))]);
    expect(said(strike(id(1)), struck)).toBe('still-used');
  });
});

describe('a weigh-up', () => {
  const shopOf = (...bodies: EntryBody[]) => fold(bodies.map(inTurn));

  test('that is undone is not there, and its pours with it', () => {
    const undone = shopOf(...BODIES.slice(0, 7), begun(BEGUN), pour(BEGUN), strike(id(8)));
    expect(undone.weighUps.size).toBe(0);
    expect(shopOf(...BODIES.slice(0, 7), begun(BEGUN), pour(BEGUN)).weighUps.get(BEGUN)?.pours).toHaveLength(
      1,
    );
  });

  test('whose jar is undone goes on, and so does one whose giving up is undone', () => {
    const all = BODIES.map(inTurn);
    const weighUps = (n: number) => fold([...all, entry(30, strike(id(n)))]).weighUps;
    expect(shop.weighUps.get(FILLED)?.jar).toBe(FROM_WEIGH_UP);
    expect(weighUps(14).get(FILLED)?.jar).toBeUndefined();
    expect(shop.weighUps.get(DROPPED)?.droppedMs).toBe(DAY_1_MS + 16 * MINUTE_MS);
    expect(weighUps(16).get(DROPPED)?.droppedMs).toBeUndefined();
  });

  test('counts each pour by what the scale shows more, or alone where it is tared', () => {
    const pours = [pour(BEGUN, 0, '100'), pour(BEGUN, 1, '130'), pour(BEGUN, 0, '120')];
    const told = (isTared: boolean) =>
      shopOf(...BODIES.slice(0, 7), begun(BEGUN, RECIPE, CLEAR, isTared), ...pours).weighUps.get(BEGUN);
    const grams = (isTared: boolean) => told(isTared)?.pours.map(({ massKg }) => Math.round(massKg * 1000));
    expect(grams(true)).toEqual([100, 130, 120]);
    expect(grams(false)).toEqual([100, 30, 0]); // less than before is nothing more
    expect(told(true)?.totalKg).toBeCloseTo(0.35, 9);
    expect(pouredKg(told(true) ?? expect.unreachable())).toEqual([
      expect.closeTo(0.22, 9),
      expect.closeTo(0.13, 9),
    ]);
    const [first] = [told(true)?.plan ?? []];
    expect(pouredKg({ plan: first, pours: [] })).toEqual([undefined, undefined]);
  });
});
