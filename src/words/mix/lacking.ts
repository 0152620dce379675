// What is not known yet of an ingredient, asked before it is needed.

export const LACKING_WORDS = {
  title: 'Not known yet',
  lead: 'Usual values are filled in. Change what your label or data sheet says, or leave them.',
  facts: {
    density: 'Density',
    volumeSolids: 'Volume solids',
    pigmentOfSolids: 'Pigment in the dry film',
    dropMass: 'One drop weighs',
  },
  usual: 'Usual (common practice)',
  typed: 'Yours',
  solvents: 'Its solvents: the usual ones for its kind.',
} as const;
