import type { EntryOf } from '../../logbook/entry';
import { DEMO_INGREDIENTS } from '../../words/demo';
import { CARRIER, DYE_CARRIER, USUAL_RETARDER, USUAL_SOLVENTS } from '../jar/own-solvents';
import type { Pen } from './pen';
import { grams, percent } from './said';

export type DemoIngredient = keyof typeof DEMO_INGREDIENTS;
type Facts = Omit<
  EntryOf<'ingredient-described'>,
  'id' | 'v' | 'kind' | 'at' | 'zone' | 'ingredient' | 'name' | 'note'
>;

const sheet = <Value>(value: Value) => ({ value, from: 'data-sheet' as const });
const measured = <Value>(value: Value) => ({ value, from: 'measured' as const });
const usual = <Value>(value: Value) => ({ value, from: 'usual' as const });
const density = (text: string) => measured({ text, unit: 'g/mL' as const });
const { nitrocellulose: LACQUER } = USUAL_SOLVENTS;

/** A tinter of this shop: its density in g/mL, and what a drop from its bottle weighs, g. */
const tinter = (gPerMl: string, dropG: string, strength: 'weak' | 'medium' | 'strong'): Facts => ({
  is: 'tinter',
  density: density(gPerMl),
  dropMass: measured(grams(dropG)),
  volumeSolids: usual(percent(40)),
  pigmentOfSolids: usual(percent(50)),
  criticalPigment: usual(percent(55)),
  solvents: usual(CARRIER),
  strength,
});

/** Common practice of such products, no source. */
const FACTS: { readonly [I in DemoIngredient]: Facts } = {
  clear: {
    is: 'clear',
    finish: 'nitrocellulose',
    density: density('0.95'),
    volumeSolids: sheet(percent(22)),
    solvents: usual(LACQUER),
  },
  base: {
    is: 'white-base',
    finish: 'nitrocellulose',
    density: density('1.15'),
    volumeSolids: sheet(percent(26)),
    pigmentOfSolids: sheet(percent(18)),
    criticalPigment: usual(percent(50)),
    pigmentShape: 'grains',
    solvents: usual(LACQUER),
  },
  white: tinter('1.85', '0.037', 'weak'),
  ochre: tinter('1.5', '0.031', 'weak'),
  umber: tinter('1.45', '0.03', 'medium'),
  red: tinter('1.6', '0.032', 'medium'),
  black: tinter('1.3', '0.027', 'strong'),
  dye: {
    is: 'dye',
    density: density('0.92'),
    dropMass: measured(grams('0.019')),
    volumeSolids: usual(percent(4)),
    solvents: usual(DYE_CARRIER),
    strength: 'strong',
  },
  flatting: {
    is: 'flatting',
    density: density('1'),
    volumeSolids: usual(percent(20)),
    pigmentOfSolids: usual(percent(30)),
    criticalPigment: usual(percent(45)),
    solvents: usual(CARRIER),
    strength: 'weak',
  },
  thinner: { is: 'thinner', finish: 'nitrocellulose', density: density('0.84'), solvents: usual(LACQUER) },
  retarder: {
    is: 'retarder',
    density: density('0.9'),
    solvents: sheet([{ solvent: USUAL_RETARDER, share: 1 }]),
  },
};

/** Describes what stands on the shelf of the demo, and gives each thing's id. */
export function describeShelf(pen: Pen): { readonly [I in DemoIngredient]: string } {
  const describe = (key: DemoIngredient): string => {
    const ingredient = pen.newId();
    const said = { ...DEMO_INGREDIENTS[key], ...FACTS[key] };
    pen.write({ kind: 'ingredient-described', ingredient, ...said }, pen.daysAgo(40, 9));
    return ingredient;
  };
  const keys = Object.keys(FACTS) as DemoIngredient[];
  return Object.fromEntries(keys.map((key) => [key, describe(key)])) as Record<DemoIngredient, string>;
}
