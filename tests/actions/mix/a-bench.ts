import { describeIngredient } from '../../../src/actions/mix/ingredient';
import { writeRecipe } from '../../../src/actions/mix/recipe';
import { beginWeighUp, pour, standingOf } from '../../../src/actions/mix/weigh-up';
import type { OpenShop } from '../../../src/actions/shop';
import type { TypedLine } from '../../../src/shop/recipe/batch';
import { done } from '../a-shop';

const fact = <Unit extends string>(text: string, unit: Unit) =>
  ({ value: { text, unit }, from: 'data-sheet' }) as const;
const gML = (text: string) => ({ density: fact(text, 'g/mL') });
const BLEND = {
  solvents: {
    value: [
      { solvent: 'toluene', share: 0.5 },
      { solvent: 'n-butyl-acetate', share: 0.5 },
    ],
    from: 'usual',
  },
} as const;
const DROP = { dropMass: { value: { text: '0.034', unit: 'g' }, from: 'measured' } } as const;

/** The ingredients of scenario E: white, thinner and three tinters whose drop weighs 0.034 g, and a clear. */
export async function aBench({ needs }: OpenShop) {
  const add = async (said: Parameters<typeof describeIngredient>[1]): Promise<string> =>
    done(await describeIngredient(needs, said)).ingredient;
  const tinter = (name: string, strength: 'weak' | 'medium' | 'strong') =>
    add({
      name,
      is: 'tinter',
      strength,
      ...gML('1.5'),
      ...DROP,
      ...BLEND,
      volumeSolids: fact('40', '%'),
      pigmentOfSolids: fact('50', '%'),
    });
  return {
    white: await add({
      name: 'White',
      is: 'white-base',
      finish: 'nitrocellulose',
      ...gML('1.15'),
      ...BLEND,
      volumeSolids: fact('26', '%'),
      pigmentOfSolids: fact('18', '%'),
    }),
    clear: await add({
      name: 'Clear',
      is: 'clear',
      finish: 'nitrocellulose',
      ...gML('0.95'),
      ...BLEND,
      volumeSolids: fact('22', '%'),
    }),
    thinner: await add({ name: 'Thinner', is: 'thinner', ...gML('0.84'), ...BLEND }),
    ochre: await tinter('Ochre', 'weak'),
    umber: await tinter('Umber', 'medium'),
    black: await tinter('Black', 'strong'),
  };
}

/** A line of a recipe in an amount that says itself. */
export const line = (ingredient: string, text: string, unit: 'g' | 'mL' | 'drops'): TypedLine => ({
  ingredient,
  amount: { text, unit },
});

/** Scenario E as written: 40 mL white, 20 mL thinner, 12 drops ochre, 5 umber, 1 black. */
export const agedWhite = (bench: Awaited<ReturnType<typeof aBench>>): readonly TypedLine[] => [
  line(bench.white, '40', 'mL'),
  line(bench.thinner, '20', 'mL'),
  line(bench.ochre, '12', 'drops'),
  line(bench.umber, '5', 'drops'),
  line(bench.black, '1', 'drops'),
];

/** Writes a recipe of these lines. */
export const writes = async ({ needs }: OpenShop, lines: readonly TypedLine[], previous?: string) =>
  done(
    await writeRecipe(needs, {
      name: 'Aged white',
      use: { as: 'opaque', over: 'white' },
      lines: lines as Parameters<typeof writeRecipe>[1]['lines'],
      ...(previous === undefined ? {} : { previous }),
    }),
  );

/** Begins a weigh-up of a plan. */
export const begins = async (
  { needs }: OpenShop,
  recipe: string,
  plan: readonly { ingredient: string; massKg: number }[],
  isTared = false,
) =>
  done(await beginWeighUp(needs, { recipe, plan, division: { text: '0.01', unit: 'g' }, isTared })).weighUp;

/** Pours what is next until nothing is: over by the share given for the n-th pour. */
export async function poursAll(open: OpenShop, id: string, over: readonly number[] = []): Promise<void> {
  for (let i = 0; i < 60; i++) {
    const weighUp = open.shop.value.weighUps.get(id);
    if (!weighUp) throw new Error('no such weigh-up');
    const { next, lines } = standingOf(weighUp);
    if (next === undefined) return;
    const massKg = (lines[next]?.toPourKg ?? 0) * (1 + (over[i] ?? 0));
    const scaleKg = weighUp.isTared ? massKg : weighUp.totalKg + massKg;
    done(await pour(open.needs, weighUp, next, (scaleKg * 1000).toFixed(6)));
  }
  throw new Error('the weigh-up never ends');
}
