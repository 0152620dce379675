import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { acceptTrial } from '../../../src/actions/match/accept-trial';
import { describeMatch, type MatchSaid, putMatchAway } from '../../../src/actions/match/describe-match';
import { jarFromTrial } from '../../../src/actions/match/jar-from-trial';
import { mixTrial } from '../../../src/actions/match/mix-trial';
import { farFromBefore, readColour } from '../../../src/actions/match/read-colour';
import { describeIngredient, putIngredientAway } from '../../../src/actions/mix/ingredient';
import { putRecipeAway, writeRecipe } from '../../../src/actions/mix/recipe';
import { id } from '../../logbook/entries';
import { aShop, done } from '../a-shop';
import { bare, grams, matchOf, SAID } from './a-match';

/** A match with so much white mixed, and a little ochre let down ten times. */
async function mixed(said: MatchSaid = SAID) {
  const open = await aShop();
  const { match } = done(await describeMatch(open.needs, said));
  const { base, tinters } = matchOf(open, match);
  const added = [
    { ingredient: base, form: 'neat', mass: grams('200') },
    { ingredient: tinters[0]?.ingredient ?? '', form: 'let-down-10', mass: grams('10') },
  ] as const;
  done(await mixTrial(open.needs, { match, added: [...added] }));
  return { open, match: () => matchOf(open, match) };
}

describe('a match that is described', () => {
  test.each<{ what: string; said: Partial<MatchSaid>; kept: number }>([
    { what: 'piece', said: { piece: { name: '', base: 'sealed' } }, kept: 0 },
    { what: 'white', said: { base: { name: '' } }, kept: 0 },
    { what: 'clear', said: { clear: { name: '' } }, kept: 1 },
    { what: 'tinter', said: { tinters: [{ name: 'Ochre' }, { name: '' }] }, kept: 2 },
    { what: 'name of its own', said: { name: '' }, kept: 2 },
  ])('stops at a $what that the logbook refuses, and is not there', async ({ said, kept }) => {
    const open = await aShop();
    expect(await describeMatch(open.needs, { ...SAID, ...said })).toMatchObject({ ok: false });
    expect(open.shop.value.matches.size).toBe(0);
    expect(open.shop.value.entries.size).toBe(kept);
  });

  test('is of the piece that it names, and keeps what its tinters are like', async () => {
    const open = await aShop();
    const { piece } = done(await open.actions.startPiece({ name: 'Box', base: 'sealed' }));
    const tinters = [{ name: 'Ochre', like: 'ochre' }, { name: 'Mud' }] as MatchSaid['tinters'];
    const { match } = done(await describeMatch(open.needs, { ...SAID, piece: { piece }, tinters }));
    expect(matchOf(open, match).piece).toBe(piece);
    expect(matchOf(open, match).tinters.map(({ like }) => like)).toEqual(['ochre', undefined]);
    expect(open.shop.value.pieces.size).toBe(1);
    const again = done(await describeMatch(open.needs, { ...SAID, tinters: [] as never }, match));
    expect(again.match).toBe(match);
    expect(matchOf(open, match).piece).toBeUndefined();
    done(await putMatchAway(open.needs, match));
    expect(matchOf(open, match).putAwayMs).toBeDefined();
  });
});

describe('a trial that is accepted', () => {
  test('carries the clear of its let-downs as an ingredient where it has one, else in its note', async () => {
    const bareOf = await mixed();
    const noted = done(await acceptTrial(bareOf.open.needs, bareOf.match(), 1));
    expect(bareOf.open.shop.value.recipes.get(noted.recipe)?.note).toContain('9 g of clear');
    const { open, match } = await mixed({ ...SAID, clear: { name: 'Clear lacquer' } });
    const { recipe } = done(await acceptTrial(open.needs, match(), 1));
    const kept = open.shop.value.recipes.get(recipe);
    expect(kept?.lines.map(({ ingredient, amount }) => [ingredient, amount.typed.text])).toContainEqual([
      match().clear,
      '9',
    ]);
    expect(kept?.note).not.toContain('of clear');
  });

  test('of which all went in neat says nothing of clear', async () => {
    const open = await aShop();
    const { match } = done(await describeMatch(open.needs, SAID));
    const added = [{ ingredient: matchOf(open, match).base, form: 'neat', mass: grams('200') }] as const;
    done(await mixTrial(open.needs, { match, added: [...added] }));
    const { recipe } = done(await acceptTrial(open.needs, matchOf(open, match), 1));
    expect(open.shop.value.recipes.get(recipe)?.note).not.toContain('clear');
  });

  test('follows the newest version, whoever wrote it; where that was undone it begins anew', async () => {
    const { open, match } = await mixed();
    const first = done(await acceptTrial(open.needs, match(), 1));
    const lines = [{ ingredient: match().base, amount: grams('7') }];
    const byHand = done(
      await writeRecipe(open.needs, {
        name: 'Cream',
        use: { as: 'opaque', over: 'white' },
        lines,
        previous: first.recipe,
      } as never),
    );
    const second = done(await acceptTrial(open.needs, match(), 1));
    expect(open.shop.value.recipes.get(second.recipe)).toMatchObject({ version: 3, previous: byHand.recipe });
    done(await putRecipeAway(open.needs, second.recipe));
    const third = done(await acceptTrial(open.needs, match(), 1));
    expect(open.shop.value.recipes.get(third.recipe)?.version).toBe(4);
  });

  test.each([
    ['a trial of a number that was never mixed', 2, undefined],
    ['a trial that was undone meanwhile', 1, 0],
  ])('of %s is refused, and nothing is written', async (_, number, undone) => {
    const { open, match } = await mixed();
    const seen = match();
    if (undone !== undefined) done(await open.actions.undo(seen.trials[undone]?.entry ?? ''));
    const before = open.shop.value.entries.size;
    expect(await acceptTrial(open.needs, seen, number)).toMatchObject({
      ok: false,
      failure: { sentence: expect.stringContaining('This trial is not in the logbook') },
    });
    expect(open.shop.value.entries.size).toBe(before);
  });

  test('of which nothing was weighed in is no recipe and is not accepted', async () => {
    const open = await aShop();
    const { match } = done(await describeMatch(open.needs, SAID));
    expect(await acceptTrial(open.needs, matchOf(open, match), 1)).toMatchObject({ ok: false });
    expect([open.shop.value.recipes.size, matchOf(open, match).accepted]).toEqual([0, undefined]);
  });
});

describe('the jar in which a trial was mixed', () => {
  test('is no jar of the shop before the trial is accepted, nor where nothing is left in it', async () => {
    const { open, match } = await mixed();
    expect(await jarFromTrial(open.needs, match(), 1, { name: 'Cream' })).toMatchObject({ ok: false });
    done(await acceptTrial(open.needs, match(), 1));
    for (const leftG of [0, -1, Number.NaN])
      expect(await jarFromTrial(open.needs, match(), 1, { name: 'Cream', leftG })).toMatchObject({
        ok: false,
        failure: { fields: { left: expect.any(String) } },
      });
    expect([open.shop.value.jars.size, open.shop.value.weighUps.size]).toEqual([0, 0]);
    done(await jarFromTrial(open.needs, match(), 1, { name: 'Cream', leftG: 210 * 1.02 }));
  });

  test('is thinned with the newest thinner that is not put away, else with the usual one', async () => {
    const { open, match } = await mixed();
    done(await acceptTrial(open.needs, match(), 1));
    const density = { value: { text: '0.8', unit: 'g/mL' }, from: 'measured' } as const;
    const solvents = { value: [{ solvent: 'toluene', share: 1 }], from: 'measured' } as const;
    const thinner = async (name: string) =>
      done(await describeIngredient(open.needs, { name, is: 'thinner', density, solvents })).ingredient;
    const [older, newer, away] = [await thinner('Older'), await thinner('Newer'), await thinner('Away')];
    done(await putIngredientAway(open.needs, away));
    const thinnerOf = async (thinnerG?: number) => {
      const jar = done(
        await jarFromTrial(open.needs, match(), 1, { name: 'Cream', ...(thinnerG && { thinnerG }) }),
      );
      const { plan = [] } =
        open.shop.value.weighUps.get(open.shop.value.jars.get(jar.jar)?.weighUp ?? '') ?? {};
      return plan.map(({ ingredient }) => ingredient).filter((one) => [older, newer, away].includes(one));
    };
    expect(await thinnerOf(20)).toEqual([newer]);
    expect(await thinnerOf()).toEqual([]);
  });
});

describe('a reading', () => {
  const read = (reading: object, white = 'D65/2') =>
    ({ match: '', of: { as: 'target' }, white, isDry: true, readings: [reading] }) as unknown as Parameters<
      typeof readColour
    >[1];
  const xyz = (X: string, Y: string, Z: string) => ({ as: 'xyz', X: bare(X), Y: bare(Y), Z: bare(Z) });
  const lab = (L: string) => ({ as: 'lab', L: bare(L), a: bare('1'), b: bare('8') });

  test('that can be is kept; one of its parts that is no number is named as that part', async () => {
    const { open, match } = await mixed();
    const keep = (reading: object, white?: string) =>
      readColour(open.needs, { ...read(reading, white), match: match().id });
    done(await keep(xyz('40', '42', '38')));
    done(await keep({ as: 'hex', hex: '#d8cbb0' }));
    done(await keep(lab('82')));
    expect(match().readings).toHaveLength(3);
    for (const part of ['X', 'Y', 'Z'] as const) {
      const refused = await keep({ ...xyz('40', '42', '38'), [part]: bare('much') });
      expect(refused.ok ? [] : Object.keys(refused.failure.fields)).toEqual([`readings.0.${part}`]);
    }
    const second = await readColour(open.needs, {
      ...read(lab('82')),
      match: match().id,
      readings: [lab('82'), xyz('0', '100', '0')] as never,
    });
    expect(second.ok ? [] : Object.keys(second.failure.fields)).toEqual(['readings.1']);
  });

  test('far off the one before of the same surface is asked about, one like it is not', async () => {
    const { open, match } = await mixed();
    done(await readColour(open.needs, { ...read(lab('82')), match: match().id }));
    expect(farFromBefore(match(), { ...read(lab('82.5')), match: match().id })).toBeUndefined();
    expect(farFromBefore(match(), { ...read(lab('30')), match: match().id })).toBeDefined();
  });
});

test('a match of an unknown id is no match', async () => {
  const open = await aShop();
  expect(await putMatchAway(open.needs, id(0xee))).toMatchObject({ ok: false });
});
