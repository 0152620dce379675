import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../../src/logbook/entry';
import { fold } from '../../../../src/logbook/fold/fold';
import { DAY_1_MS, fillJar, id, inTurn, MINUTE_MS } from '../../entries';

const [TINTER, RECIPE, SECOND, THIRD, OTHER_JAR, NOWHERE] = [
  id(0xe1),
  id(0xd1),
  id(0xd2),
  id(0xd3),
  id(0xb2),
  id(0xff),
];
const atMs = (n: number): number => DAY_1_MS + n * MINUTE_MS;
const g = (text: string) => ({ text, unit: 'g' }) as const;
const shopOf = (...bodies: readonly EntryBody[]) => fold(bodies.map(inTurn));

describe('a recipe', () => {
  const written = (recipe: string, previous?: string, more: object = {}): EntryBody => ({
    kind: 'recipe-written',
    recipe,
    name: 'Cream',
    use: { as: 'clear' },
    lines: [{ ingredient: TINTER, amount: { text: '100', unit: 'g' } }],
    ...(previous && { previous }),
    ...more,
  });

  test('has a version more than the one it was made from, which names the newest made of it', () => {
    const { recipes } = shopOf(
      written(RECIPE),
      written(SECOND, RECIPE),
      written(THIRD, SECOND),
      written(id(0xd4), RECIPE),
      written(id(0xd5), NOWHERE),
    );
    expect([...recipes.values()].map(({ version, next }) => [version, next])).toEqual([
      [1, id(0xd4)],
      [2, THIRD],
      [3, undefined],
      [2, undefined],
      [1, undefined],
    ]);
  });

  test('stands as it was first written, with what was said later of it', () => {
    const { recipes } = shopOf(
      written(RECIPE, undefined, { note: 'Warm.' }), // 1
      written(SECOND, RECIPE), // 2
      written(RECIPE, SECOND, { name: 'Another' }), // 3: an id that is there already
      { kind: 'recipe-put-away', recipe: RECIPE }, // 4
      { kind: 'recipe-put-away', recipe: NOWHERE }, // 5
      { kind: 'card-photographed', recipe: RECIPE, photo: id(0xf1) }, // 6
      { kind: 'card-photographed', recipe: RECIPE, photo: id(0xf2) }, // 7
      { kind: 'card-photographed', recipe: NOWHERE, photo: id(0xf3) }, // 8
    );
    const [first, second, ...more] = [...recipes.values()].map(({ lines: told, ...recipe }) => {
      expect(told).toMatchObject([{ ingredient: TINTER, amount: { typed: { text: '100', unit: 'g' } } }]);
      return recipe;
    });
    expect(more).toEqual([]);
    expect(first).toEqual({
      id: RECIPE,
      entry: id(1),
      name: 'Cream',
      use: { as: 'clear' },
      note: 'Warm.',
      writtenMs: atMs(1),
      next: SECOND,
      version: 1,
      putAwayMs: atMs(4),
      photos: [id(0xf1), id(0xf2)],
    });
    expect(second).toMatchObject({ previous: RECIPE, version: 2, putAwayMs: undefined, photos: [] });
    expect(second).not.toHaveProperty('note');
    expect(first).not.toHaveProperty('previous');
  });
});

describe('a weigh-up', () => {
  const begun: EntryBody = {
    kind: 'weigh-up-begun',
    weighUp: id(0xf1),
    recipe: RECIPE,
    plan: [{ ingredient: TINTER, massKg: 0.1 }],
    division: g('0.01'),
    isTared: true,
  };

  test('stands as it was first begun, and what goes into none is nowhere', () => {
    const pour: EntryBody = { kind: 'poured', weighUp: id(0xf1), line: 0, scale: g('20') };
    const { weighUps } = shopOf(
      begun,
      { ...begun, isTared: false, recipe: SECOND },
      pour,
      { ...pour, weighUp: NOWHERE },
      { kind: 'weigh-up-dropped', weighUp: NOWHERE },
      { ...fillJar(), weighUp: NOWHERE } as EntryBody,
      fillJar(OTHER_JAR),
    );
    expect([...weighUps.values()]).toEqual([
      {
        id: id(0xf1),
        recipe: RECIPE,
        plan: [{ ingredient: TINTER, massKg: 0.1 }],
        isTared: true,
        divisionKg: 1e-5,
        begunMs: atMs(1),
        pours: [{ entry: id(3), line: 0, massKg: 0.02, atMs: atMs(3) }],
        totalKg: 0.02,
        jar: undefined,
        droppedMs: undefined,
      },
    ]);
  });
});
