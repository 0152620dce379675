import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import { HAZARDS, type Hazard } from '../../reminders/cautions';
import type { Finish } from './own-solvents';

type Contents = Pick<Jar, 'id' | 'name' | 'product' | 'thinner' | 'thinning' | 'retarder'> &
  Partial<Pick<Jar, 'contains' | 'weighUp' | 'boxedFrom'>>;
type Content = NonNullable<Jar['contains']>[number];
type Shelf = Pick<Shop, 'jars' | 'ingredients' | 'weighUps'>;

/** What a finish brings with it, whatever its label leaves out. */
const OF_FINISH: { readonly [F in Finish]: readonly Hazard[] } = {
  nitrocellulose: ['nitrocellulose', 'solvent'],
  acrylic: ['solvent'],
  cab: ['solvent'],
  shellac: ['solvent'],
  waterborne: [],
  precatalysed: ['acid', 'solvent'],
  conversion: ['acid', 'solvent'],
  urethane: ['isocyanate', 'solvent'],
};
const OF_CONTENT: { readonly [C in Content]: Hazard } = {
  isocyanate: 'isocyanate',
  acid: 'acid',
  oil: 'oil',
  aerosol: 'aerosol',
};
/** Names that people give to a can under pressure. */
const NAMED_AEROSOL = /aerosol|(spray|rattle)\s*-?\s*can/i;
/** Names on cans that mean an isocyanate, where nobody ticked the box. A needless caution is the smaller fault. */
const NAMED_ISOCYANATE = /isocyan|\b(hdi|mdi|tdi|ipdi)\b|polyurethane hardener|2k (activator|hardener)/i;

/**
 * What in a jar calls for a caution: by its finish, by what was said of it, and by every ingredient it was made of: weighed up,
 * let down before, or poured together from other jars.
 */
export function jarHazards(jar: Contents, shelf: Shelf): readonly Hazard[] {
  const found = new Set<Hazard>();
  addJar(jar, shelf, found, new Set());
  return HAZARDS.filter((hazard) => found.has(hazard));
}

/** What in these ingredients, and in what they are made of, calls for a caution before they are mixed. */
export function ingredientHazards(ids: readonly string[], shelf: Shelf): readonly Hazard[] {
  const found = new Set<Hazard>();
  const seen = new Set<string>();
  for (const id of ids) addIngredient(id, shelf, found, seen);
  return HAZARDS.filter((hazard) => found.has(hazard));
}

function addJar(jar: Contents, shelf: Shelf, found: Set<Hazard>, seen: Set<string>): void {
  if (seen.has(jar.id)) return;
  seen.add(jar.id);
  addFinish(jar.product.finish, found);
  addContents(jar.contains, found);
  addNamed(jar.name, found);
  if (jar.thinning.percent.si > 0) addNamed(jar.thinner.name, found);
  addSolvents(jar.product.solvents ?? [], found);
  if (jar.thinning.percent.si > 0) addSolvents(jar.thinner.blend, found);
  if (jar.retarder) addSolvents([jar.retarder], found);
  const weighUp = jar.weighUp === undefined ? undefined : shelf.weighUps.get(jar.weighUp);
  for (const { ingredient } of weighUp?.plan ?? []) addIngredient(ingredient, shelf, found, seen);
  for (const { jar: other } of jar.boxedFrom ?? []) {
    const poured = shelf.jars.get(other);
    if (poured) addJar(poured, shelf, found, seen);
  }
}

function addIngredient(id: string, shelf: Shelf, found: Set<Hazard>, seen: Set<string>): void {
  const ingredient = shelf.ingredients.get(id);
  if (!ingredient || seen.has(id)) return;
  seen.add(id);
  if (ingredient.finish) addFinish(ingredient.finish, found);
  addContents(ingredient.contains, found);
  addSolvents(ingredient.solvents?.value ?? [], found);
  if (ingredient.is === 'thinner' || ingredient.is === 'retarder') {
    if (!ingredient.solvents) found.add('solvent');
  }
  addNamed(ingredient.name, found);
  for (const inner of ingredient.madeOf ?? []) addIngredient(inner.ingredient, shelf, found, seen);
}

function addNamed(name: string, found: Set<Hazard>): void {
  if (NAMED_ISOCYANATE.test(name)) found.add('isocyanate');
  if (NAMED_AEROSOL.test(name)) found.add('aerosol');
}

function addFinish(finish: Finish, found: Set<Hazard>): void {
  for (const hazard of OF_FINISH[finish]) found.add(hazard);
}

function addContents(contains: readonly Content[] = [], found: Set<Hazard>): void {
  for (const content of contains) found.add(OF_CONTENT[content]);
}

function addSolvents(blend: readonly { readonly solvent: string }[], found: Set<Hazard>): void {
  if (blend.some(({ solvent }) => solvent !== 'water')) found.add('solvent');
}
