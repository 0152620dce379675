// Why a mix cannot be worked out, each saying what to do. The name is the ingredient's.

const percent = (fraction: number): string => `${Math.round(fraction * 1000) / 10} %`;

export const MIX_FAILURES = {
  empty: () => 'Enter at least one ingredient with an amount.',
  'not-positive': () => 'Enter an amount above 0.',
  'unknown-ingredient': () =>
    'An ingredient of this mix is not in the shop. Choose another, or add it first.',
  'no-density': ({ name }: Named) => `${name} has no density yet. Give it one, or give its amount in grams.`,
  'no-drop-mass': ({ name }: Named) =>
    `How heavy a drop of ${name} is has not been said. Weigh 20 drops once and note it with the ingredient.`,
  'no-solids': ({ name }: Named) => `The solids of ${name} are not known. Note them with the ingredient.`,
  'no-solvents': ({ name }: Named) =>
    `What ${name} is dissolved in is not known. Note its solvents with the ingredient.`,
  'no-pigment-share': ({ name }: Named) =>
    `How much pigment ${name} holds is not known. Note it with the ingredient.`,
  'no-critical-pigment': ({ name }: Named) =>
    `The critical pigment concentration of ${name} is not known. Note it with the ingredient.`,
  'contains-itself': ({ path }: { readonly path: readonly string[] }) =>
    `This mix would be made of itself: ${path.join(', in which is ')}. Take one of them out.`,
  'parts-with-amounts': () =>
    'Parts stand beside grams or millilitres here, so how much a part is stays open. Use one or the other.',
  'parts-of-two-kinds': () => 'Parts by weight stand beside parts by volume. Use one of them.',
  'no-lacquer': () =>
    'A percentage of the lacquer needs a clear or a white base in the mix, given by amount or parts.',
  'shares-over-whole': () =>
    'The percentages of the mix leave nothing for the rest. They must stay under 100 % together.',
  'shares-do-not-add-up': ({ sum }: { readonly sum: number }) =>
    `The percentages make ${percent(sum)}, not 100 %.`,
} as const;

interface Named {
  readonly name: string;
}
