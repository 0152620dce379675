import { mixFacts } from '../../../actions/mix/mix-facts';
import { USUAL_JARS } from '../../../actions/mix/usual-jar';
import type { Shop } from '../../../logbook/fold/fold';
import { jarHazards } from '../../../shop/jar/hazards';
import type { Finish } from '../../../shop/jar/own-solvents';
import { volumesInMix } from '../../../shop/jar/volumes-in-mix';
import { batchOfLines, typedLines } from '../../../shop/recipe/batch';

/** What the job is done with: a jar or a recipe of the shop, or a finish at its usual values. */
export type Source =
  | { readonly from: 'finish'; readonly finish: Finish }
  | { readonly from: 'jar' | 'recipe'; readonly id: string };

/** What of a source decides how much it takes. */
export interface SourceFacts {
  readonly finish: Finish;
  /** Of what is bought, before any thinner; a fraction. */
  readonly volumeSolids: number | undefined;
  /** Thinner over the lacquer that is bought; undefined for a recipe, whose lines say it. */
  readonly thinnerOfLacquer: number | undefined;
  readonly densityKgM3: number | undefined;
  readonly isSprayCan: boolean;
}

export const keyOf = (source: Source): string =>
  `${source.from}:${source.from === 'finish' ? source.finish : source.id}`;

export function sourceOf(key: string): Source {
  const [from = 'finish', rest = 'nitrocellulose'] = key.split(/:(.*)/s);
  return from === 'jar' || from === 'recipe'
    ? { from, id: rest }
    : { from: 'finish', finish: rest as Finish };
}

/** The facts of a source; undefined where it is no longer there. */
export function factsOf(source: Source, shop: Shop): SourceFacts | undefined {
  if (source.from === 'finish') return usualFacts(source.finish);
  return source.from === 'jar' ? jarFacts(source.id, shop) : recipeFacts(source.id, shop);
}

function usualFacts(finish: Finish): SourceFacts {
  const { volumeSolids, thinning } = USUAL_JARS[finish];
  return {
    finish,
    volumeSolids: Number(volumeSolids) / 100,
    thinnerOfLacquer: Number(thinning) / 100,
    densityKgM3: undefined,
    isSprayCan: false,
  };
}

function jarFacts(id: string, shop: Shop): SourceFacts | undefined {
  const jar = shop.jars.get(id);
  if (!jar) return undefined;
  const { lacquer, thinner } = volumesInMix(jar);
  return {
    finish: jar.product.finish,
    volumeSolids: jar.product.volumeSolids.si,
    thinnerOfLacquer: thinner / lacquer,
    densityKgM3: jar.density?.si,
    isSprayCan: jarHazards(jar, shop).includes('aerosol'),
  };
}

function recipeFacts(id: string, shop: Shop): SourceFacts | undefined {
  const recipe = shop.recipes.get(id);
  const batch = recipe && batchOfLines(typedLines(recipe), shop);
  const facts = batch?.ok ? mixFacts(batch.value, shop) : undefined;
  if (!facts?.ok) return undefined;
  const { finish, volumeSolids, densityKgM3 } = facts.value;
  return {
    finish,
    volumeSolids: volumeSolids.ok ? volumeSolids.value : undefined,
    thinnerOfLacquer: undefined,
    densityKgM3: densityKgM3.ok ? densityKgM3.value : undefined,
    isSprayCan: false,
  };
}
