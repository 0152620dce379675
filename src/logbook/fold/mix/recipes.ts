import type { EntryInSi, Lines } from '../in-si';

type Written = Pick<EntryInSi<'recipe-written'>, 'name' | 'use' | 'lines' | 'previous' | 'note'>;

/** One version of a recipe. */
export interface Recipe extends Written {
  readonly id: string;
  /** The entry that wrote it. */
  readonly entry: string;
  readonly writtenMs: number;
  /** The version that was made from it, the newest where there are several. */
  readonly next: string | undefined;
  readonly version: number;
  readonly putAwayMs: number | undefined;
  /** Photos of dried cards, oldest first. */
  readonly photos: readonly string[];
}
type Growing = { -readonly [Key in keyof Recipe]: Key extends 'photos' ? string[] : Recipe[Key] };

/** Every version of every recipe by id, in the order they were written. */
export function foldRecipes(lines: Lines) {
  const recipes = new Map<string, Growing>();
  for (const line of lines.of('recipe-written')) {
    if (recipes.has(line.recipe)) continue;
    const previous = line.previous === undefined ? undefined : recipes.get(line.previous);
    if (previous) previous.next = line.recipe;
    recipes.set(line.recipe, write(line, (previous?.version ?? 0) + 1));
  }
  for (const { recipe, atMs } of lines.of('recipe-put-away'))
    Object.assign(recipes.get(recipe) ?? {}, { putAwayMs: atMs });
  for (const { recipe, photo } of lines.of('card-photographed')) recipes.get(recipe)?.photos.push(photo);
  return { recipes: recipes as ReadonlyMap<string, Recipe> };
}

const write = (line: EntryInSi<'recipe-written'>, version: number): Growing => ({
  id: line.recipe,
  entry: line.id,
  name: line.name,
  use: line.use,
  lines: line.lines,
  ...(line.previous === undefined ? {} : { previous: line.previous }),
  ...(line.note === undefined ? {} : { note: line.note }),
  writtenMs: line.atMs,
  next: undefined,
  version,
  putAwayMs: undefined,
  photos: [],
});
