import type { Entry } from '../entry';
import { inOrder } from '../order';
import { union } from '../union';
import { foldAir } from './air';
import { foldCautions } from './cautions';
import { foldDataSheets } from './data-sheets';
import { foldIngredients } from './ingredients';
import { foldJars } from './jars';
import { foldMatches } from './matches';
import { foldOldFinishes } from './old-finishes';
import { foldPieces } from './pieces';
import { foldPlans } from './plans';
import { foldRecipes } from './recipes';
import { foldReminders } from './reminders';
import { foldSettings } from './settings';
import { foldShopAir } from './shop-air';
import { struckIds } from './strikes';
import { linesOf } from './told';
import { foldWeighUps } from './weigh-ups';

/** The shop as it is now, from the entries in whatever order they come; an entry that comes twice counts once. */
export function fold(logged: Iterable<Entry>) {
  const all = [...union(logged).values()].sort(inOrder);
  const entries = new Map(all.map((entry) => [entry.id, entry]));
  const struck = struckIds(all);
  const lines = linesOf(all.filter(({ id }) => !struck.has(id)));
  return {
    /** Every entry by id, struck ones too, in time order: the treatment record. */
    entries: entries as ReadonlyMap<string, Entry>,
    struck,
    ...foldPieces(lines),
    ...foldJars(lines),
    ...foldIngredients(lines),
    ...foldRecipes(lines),
    ...foldWeighUps(lines),
    ...foldMatches(lines),
    ...foldAir(lines),
    ...foldShopAir(lines),
    ...foldCautions(lines),
    ...foldOldFinishes(lines),
    ...foldDataSheets(lines),
    ...foldPlans(lines),
    ...foldReminders(lines),
    ...foldSettings(lines),
  };
}

export type Shop = Readonly<ReturnType<typeof fold>>;
