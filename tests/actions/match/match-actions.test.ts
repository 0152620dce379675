import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { acceptTrial } from '../../../src/actions/match/accept-trial';
import { jarFromTrial, trialBatch } from '../../../src/actions/match/jar-from-trial';
import { mixTrial } from '../../../src/actions/match/mix-trial';
import { type ReadingSaid, readColour } from '../../../src/actions/match/read-colour';
import { readHiding } from '../../../src/actions/match/read-hiding';
import { fillIn } from '../../../src/actions/mix/fill-in';
import { describeIngredient } from '../../../src/actions/mix/ingredient';
import type { OpenShop } from '../../../src/actions/shop';
import type { Match } from '../../../src/logbook/fold/piece/matches';
import { lackingIn } from '../../../src/shop/recipe/lacking';
import { aShop, done } from '../a-shop';
import { aMatch, bare, grams, matchOf, SAID } from './a-match';

const mix = async (
  open: OpenShop,
  match: Match,
  added: readonly [string, string, 'neat' | 'let-down-10'][],
) =>
  done(
    await mixTrial(open.needs, {
      match: match.id,
      added: added.map(([ingredient, mass, form]) => ({ ingredient, form, mass: grams(mass) })),
    }),
  ).trial;

test('what is new on the bench becomes an ingredient of the shop; what is in it is used', async () => {
  const open = await aShop();
  const first = await aMatch(open);
  expect([...open.shop.value.ingredients.values()].map(({ name, is }) => [name, is])).toEqual([
    ['White lacquer', 'white-base'],
    ['Ochre', 'tinter'],
  ]);
  const tinters = first.tinters.map(({ ingredient }) => ({ ingredient }));
  await aMatch(open, { ...SAID, base: { ingredient: first.base }, tinters });
  expect(open.shop.value.ingredients.size).toBe(2);
});

test('what comes into the shop with a match has the usual facts of its sort, marked as such; a new piece is started', async () => {
  const open = await aShop();
  const match = await aMatch(open, {
    ...SAID,
    piece: { name: 'Cabinet', base: 'old-closed' },
    clear: { name: 'Clear lacquer' },
  });
  expect(open.shop.value.pieces.get(match.piece ?? '')).toMatchObject({
    name: 'Cabinet',
    base: 'old-closed',
  });
  const { ingredients } = open.shop.value;
  const all = [match.base, match.clear ?? '', ...match.tinters.map(({ ingredient }) => ingredient)];
  expect(all.map((id) => ingredients.get(id)?.volumeSolids?.value.typed.text)).toEqual(['26', '22', '40']);
  expect(all.map((id) => ingredients.get(id)?.solvents?.from)).toEqual(['usual', 'usual', 'usual']);
  expect(
    lackingIn(
      all.map((ingredient) => ({ ingredient })),
      open.shop.value,
    ),
  ).toEqual([]);
});

describe('an accepted trial', () => {
  test('is a recipe of white and neat tinter, and the next accepted one its new version', async () => {
    const open = await aShop();
    const match = await aMatch(open);
    const ochre = match.tinters[0]?.ingredient ?? '';
    await mix(open, match, [[match.base, '200', 'neat']]);
    await mix(open, match, [
      [ochre, '2.5', 'neat'],
      [ochre, '1.5', 'let-down-10'],
    ]);
    const first = done(await acceptTrial(open.needs, matchOf(open, match.id), 2));
    const recipe = open.shop.value.recipes.get(first.recipe);
    // 2.5 g neat and a tenth of 1.5 g; the 1.35 g of clear has no ingredient here, so the note has it.
    expect(recipe?.lines.map(({ ingredient, amount }) => [ingredient, amount.typed.text])).toEqual([
      [match.base, '200'],
      [ochre, '2.65'],
    ]);
    expect(recipe?.note).toContain('1.35 g of clear');
    expect(matchOf(open, match.id).accepted?.recipe).toBe(first.recipe);

    await mix(open, match, [[match.base, '10', 'neat']]);
    const second = done(await acceptTrial(open.needs, matchOf(open, match.id), 3));
    expect(open.shop.value.recipes.get(second.recipe)).toMatchObject({ version: 2, previous: first.recipe });
  });

  async function acceptedTrial(open: OpenShop): Promise<Match> {
    const match = await aMatch(open);
    const ochre = match.tinters[0]?.ingredient ?? '';
    await mix(open, match, [[match.base, '200', 'neat']]);
    await mix(open, match, [[ochre, '2.5', 'neat']]);
    done(await acceptTrial(open.needs, matchOf(open, match.id), 2));
    return matchOf(open, match.id);
  }
  const jarOf = ({ shop }: OpenShop, id: string) => shop.value.jars.get(id);

  test('is a jar at once, from what was weighed in, its weigh-up poured already', async () => {
    const open = await aShop();
    const match = await acceptedTrial(open);
    const filled = done(await jarFromTrial(open.needs, match, 2, { name: 'Cream' }));
    const jar = jarOf(open, filled.jar);
    // White 1.15 g/mL, 26 % solids, 18 % of them pigment; ochre 1.5 g/mL, 40 %, 50 %: the usual ones, by hand.
    const [whiteMl, ochreMl] = [200 / 1.15, 2.5 / 1.5];
    const solidsMl = whiteMl * 0.26 + ochreMl * 0.4;
    expect(jar?.amount?.si).toBeCloseTo((whiteMl + ochreMl) * 1e-6, 10);
    expect(jar?.product.volumeSolids.si).toBeCloseTo(solidsMl / (whiteMl + ochreMl), 5);
    expect(jar?.pigment?.shareOfSolids.si).toBeCloseTo(
      (whiteMl * 0.26 * 0.18 + ochreMl * 0.4 * 0.5) / solidsMl,
      5,
    );
    const weighUp = open.shop.value.weighUps.get(jar?.weighUp ?? '');
    expect(weighUp).toMatchObject({ recipe: match.accepted?.recipe, jar: filled.jar });
    expect(weighUp?.pours.map(({ massKg }) => massKg)).toEqual([0.2, 0.0025]);
  });

  test('is as much as was left in the jar, and thinner stirred in thins it', async () => {
    const open = await aShop();
    const match = await acceptedTrial(open);
    const filled = done(
      await jarFromTrial(open.needs, match, 2, { name: 'Cream', leftG: 101.25, thinnerG: 42 }),
    );
    const jar = jarOf(open, filled.jar);
    const half = (200 / 1.15 + 2.5 / 1.5) / 2; // 101.25 of 202.5 g
    expect(jar?.amount?.si).toBeCloseTo((half + 50) * 1e-6, 9); // thinner 0.84 g/mL: 42 g are 50 mL
    const names = [...open.shop.value.ingredients.values()].map(({ name }) => name);
    expect(names).toContain('Lacquer thinner');
    const again = done(await jarFromTrial(open.needs, match, 2, { name: 'Cream', thinnerG: 42 }));
    expect(jarOf(open, again.jar)?.amount?.si).toBeCloseTo((2 * half + 50) * 1e-6, 9);
    expect(open.shop.value.ingredients.size).toBe(names.length); // the thinner of the shop is used again
  });

  test('more left than was weighed in is refused at its field, and nothing is logged', async () => {
    const open = await aShop();
    const match = await acceptedTrial(open);
    const refused = await jarFromTrial(open.needs, match, 2, { name: 'Cream', leftG: 210 });
    expect(refused).toMatchObject({
      ok: false,
      failure: { fields: { left: expect.stringMatching(/^202.5 g were weighed in/) } },
    });
    expect(open.shop.value.weighUps.size).toBe(0);
    done(await jarFromTrial(open.needs, match, 2, { name: 'Cream', leftG: 203 })); // within the scale's doubt
  });

  test('of ingredients whose facts nobody gave is refused with the way to the first, and goes through once they are filled in', async () => {
    const open = await aShop();
    const white = done(
      await describeIngredient(open.needs, { name: 'Old white', is: 'white-base', lot: '7' }),
    );
    const match = await aMatch(open, { ...SAID, base: { ingredient: white.ingredient } });
    await mix(open, match, [[match.base, '200', 'neat']]);
    done(await acceptTrial(open.needs, matchOf(open, match.id), 1));
    const now = () => matchOf(open, match.id);
    expect(await jarFromTrial(open.needs, now(), 1, { name: 'White' })).toMatchObject({
      ok: false,
      failure: { way: ['mix', 'ingredient', white.ingredient, 'change'] },
    });
    const lacking = lackingIn(trialBatch(now(), 1), open.shop.value);
    expect(lacking.map(({ facts }) => facts)).toEqual([
      ['density', 'volumeSolids', 'pigmentOfSolids', 'solvents'],
    ]);
    done(await fillIn(open.needs, lacking, { [white.ingredient]: { volumeSolids: '30' } }));
    expect(open.shop.value.ingredients.get(white.ingredient)).toMatchObject({
      name: 'Old white',
      lot: '7',
      density: { value: { typed: { text: '1.15', unit: 'g/mL' } }, from: 'usual' },
      volumeSolids: { value: { typed: { text: '30', unit: '%' } }, from: 'measured' },
      solvents: { from: 'usual' },
    });
    expect(lackingIn(trialBatch(now(), 1), open.shop.value)).toEqual([]);
    const filled = done(await jarFromTrial(open.needs, now(), 1, { name: 'White' }));
    expect(jarOf(open, filled.jar)?.product.volumeSolids.si).toBeCloseTo(0.3, 6);
  });

  test('is undone by striking its two entries', async () => {
    const open = await aShop();
    const match = await aMatch(open);
    await mix(open, match, [[match.base, '200', 'neat']]);
    const { entries, recipe } = done(await acceptTrial(open.needs, matchOf(open, match.id), 1));
    for (const entry of entries) done(await open.actions.undo(entry));
    expect(open.shop.value.recipes.has(recipe)).toBe(false);
    expect(matchOf(open, match.id).accepted).toBeUndefined();
  });
});

describe('a reading that cannot be is refused, in words', () => {
  const nothing = new Array<number>(5).fill(0.5);
  test.each<{ what: string; reading: ReadingSaid; white?: 'F11/2'; says: RegExp }>([
    {
      what: 'L* over 100',
      reading: { as: 'lab', L: bare('104'), a: bare('0'), b: bare('2') },
      says: /from 0 to 100/,
    },
    {
      what: 'XYZ that no surface has',
      reading: { as: 'xyz', X: bare('0'), Y: bare('100'), Z: bare('0') },
      says: /No surface has this colour/,
    },
    { what: 'hex under another light', reading: { as: 'hex', hex: '#fff' }, says: /D65 and the 2° observer/ },
    {
      what: 'a spectrum that is too short',
      reading: { as: 'spectrum', startNm: 400, stepNm: 10, reflectance: nothing },
      says: /400 to 700 nm/,
    },
    {
      what: 'a spectrum under a light without weights',
      reading: { as: 'spectrum', startNm: 400, stepNm: 10, reflectance: new Array<number>(31).fill(0.5) },
      white: 'F11/2',
      says: /under D65, D50, A or LED-B3/,
    },
  ])('$what', async ({ reading, white, says }) => {
    const open = await aShop();
    const { id: match } = await aMatch(open);
    const read = await readColour(open.needs, {
      match,
      of: { as: 'target' },
      white: white ?? 'D65/10',
      isDry: true,
      readings: [reading],
    });
    expect(read.ok ? '' : read.failure.sentence).toMatch(says);
    expect(matchOf(open, match).readings).toEqual([]);
  });
});

describe('a draw-down over black and white', () => {
  const said = (black: string, white: string) => ({
    dryFilm: { text: '25', unit: 'um' } as const,
    in: 'Y' as const,
    black: { card: bare('0.5'), coated: bare(black) },
    white: { card: bare('80'), coated: bare(white) },
  });
  test.each([
    { what: 'lets the card show', black: '60', white: '72', isKept: true },
    { what: 'reads the same over both', black: '72', white: '72', isKept: false },
    { what: 'reads brighter over black', black: '75', white: '72', isKept: false },
  ])('that $what: kept $isKept', async ({ black, white, isKept }) => {
    const open = await aShop();
    const { id: match } = await aMatch(open);
    const read = await readHiding(open.needs, { match, ...said(black, white) });
    expect(read.ok).toBe(isKept);
    expect(matchOf(open, match).hiding).toHaveLength(isKept ? 1 : 0);
  });
});
