/** The tests of an old finish, weakest first: what a weak one answers, a strong one need not be asked. */
export const SPOT_SOLVENTS = ['water', 'naphtha', 'ethanol', 'xylene', 'lacquer-thinner', 'acetone'] as const;
export type SpotSolvent = (typeof SPOT_SOLVENTS)[number];

/** What the spot does within its time; smooths: it softens, and then lies smooth again. */
export const SPOT_READINGS = ['nothing', 'dulls', 'softens', 'smooths', 'dissolves', 'wrinkles'] as const;
export type SpotReading = (typeof SPOT_READINGS)[number];

/** How long a drop is left covered, s (common practice, no source). */
export const DWELL_S: { readonly [S in SpotSolvent]: number } = {
  water: 600,
  naphtha: 60,
  ethanol: 60,
  xylene: 60,
  'lacquer-thinner': 30,
  acetone: 30,
};

export interface SpotTest {
  readonly solvent: SpotSolvent;
  readonly dwellS: number;
  readonly reading: SpotReading;
}
