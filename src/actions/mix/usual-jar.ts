import { USUAL_LIFE } from '../../shop/jar/life';
import { type Finish, type Shares, USUAL_SOLVENTS } from '../../shop/jar/own-solvents';

/** What a product of a finish usually is, where nobody has read its data sheet (common practice, no source). */
export interface UsualJar {
  readonly volumeSolids: string;
  /** Thinner, % of the lacquer. */
  readonly thinning: string;
  readonly life: (typeof USUAL_LIFE)[Finish];
}

/** A spray can as it leaves the nozzle, % by volume: thinned in the can, nothing to add (common practice, no source). */
export const USUAL_SPRAY_CAN = { volumeSolids: '12' } as const;
/** What a can of lacquer is thinned with: slow, or it would dry on its way (common practice, no source). */
const IN_SPRAY_CAN: Shares = [
  { solvent: 'acetone', share: 0.3 },
  { solvent: 'toluene', share: 0.2 },
  { solvent: 'n-butyl-acetate', share: 0.3 },
  { solvent: '2-butoxyethanol', share: 0.2 },
];
/** A 2-pound cut (common practice, no source). */
export const USUAL_CUT = { us: { text: '2', unit: 'lb-cut' }, metric: { text: '240', unit: 'g/L' } } as const;

/** What a can of each is sold with and thinned to; the label outranks it (common practice, no source). */
export const USUAL_JARS: Record<Finish, UsualJar> = {
  nitrocellulose: { volumeSolids: '22', thinning: '50', life: USUAL_LIFE.nitrocellulose },
  acrylic: { volumeSolids: '22', thinning: '50', life: USUAL_LIFE.acrylic },
  cab: { volumeSolids: '22', thinning: '50', life: USUAL_LIFE.cab },
  shellac: { volumeSolids: '18', thinning: '0', life: USUAL_LIFE.shellac },
  waterborne: { volumeSolids: '30', thinning: '5', life: USUAL_LIFE.waterborne },
  precatalysed: { volumeSolids: '26', thinning: '10', life: USUAL_LIFE.precatalysed },
  conversion: { volumeSolids: '28', thinning: '10', life: USUAL_LIFE.conversion },
  urethane: { volumeSolids: '40', thinning: '20', life: USUAL_LIFE.urethane },
};

const THINNER_SORTS = ['usual', 'fast', 'slow'] as const;
export type ThinnerSort = (typeof THINNER_SORTS)[number];

// Common practice, no source.
const FAST: Shares = [
  { solvent: 'acetone', share: 0.4 },
  { solvent: 'mek', share: 0.15 },
  { solvent: 'toluene', share: 0.3 },
  { solvent: 'isobutyl-acetate', share: 0.15 },
];
const SLOW: Shares = [
  { solvent: 'acetone', share: 0.1 },
  { solvent: 'toluene', share: 0.3 },
  { solvent: 'isobutyl-acetate', share: 0.15 },
  { solvent: 'n-butyl-acetate', share: 0.35 },
  { solvent: '2-butoxyethanol', share: 0.1 },
];
const LACQUERS: readonly Finish[] = ['nitrocellulose', 'acrylic', 'cab'];
const THINNERS: Partial<Record<Finish, Shares>> = {
  shellac: [{ solvent: 'ethanol', share: 1 }],
  waterborne: [{ solvent: 'water', share: 1 }],
};

/** The sorts of thinner that are usual for a finish. */
export const thinnerSorts = (finish: Finish): readonly ThinnerSort[] =>
  LACQUERS.includes(finish) ? THINNER_SORTS : ['usual'];

/** The solvents of a spray can, where they are not those of a jar. */
export const canSolvents = (finish: Finish): { readonly solvents?: Shares } =>
  LACQUERS.includes(finish) ? { solvents: IN_SPRAY_CAN } : {};

/** What a sort of thinner is usually made of, by volume (common practice, no source). */
export function usualThinner(finish: Finish, sort: ThinnerSort): Shares {
  if (sort === 'fast') return FAST;
  if (sort === 'slow') return SLOW;
  return THINNERS[finish] ?? USUAL_SOLVENTS[finish];
}
