import type { Jar } from '../../logbook/fold/mix/jars';
import type { SolventId } from '../../science/solvents/solvents';

export type Finish = Jar['product']['finish'];
/** Solvents by their names in the table; the shares are of the volume and add up to one. */
export type Shares = readonly { readonly solvent: SolventId; readonly share: number }[];

/** What a lacquer is slowed with (common practice, no source). */
export const USUAL_RETARDER = '2-butoxyethanol' satisfies SolventId;
/** What pastes and dyes come in (common practice, no source). */
export const CARRIER: Shares = [
  { solvent: 'n-butyl-acetate', share: 0.6 },
  { solvent: 'pma', share: 0.4 },
];
export const DYE_CARRIER: Shares = [
  { solvent: 'pm', share: 0.7 },
  { solvent: 'acetone', share: 0.3 },
];
// Common practice, no source, as all blends below.
const LACQUER: Shares = [
  { solvent: 'acetone', share: 0.25 },
  { solvent: 'mek', share: 0.1 },
  { solvent: 'toluene', share: 0.3 },
  { solvent: 'isobutyl-acetate', share: 0.2 },
  { solvent: 'n-butyl-acetate', share: 0.1 },
  { solvent: '2-butoxyethanol', share: 0.05 },
];
const TWO_PACK: Shares = [
  { solvent: 'n-butyl-acetate', share: 0.5 },
  { solvent: 'xylene-mixed', share: 0.3 },
  { solvent: 'pma', share: 0.2 },
];
const ACID_CURING: Shares = [
  { solvent: 'n-butyl-acetate', share: 0.35 },
  { solvent: 'toluene', share: 0.3 },
  { solvent: 'isobutanol', share: 0.2 },
  { solvent: 'xylene-mixed', share: 0.15 },
];

/** What a can usually holds besides its solids, where nobody has read its data sheet (common practice, no source). */
export const USUAL_SOLVENTS: { readonly [F in Finish]: Shares } = {
  nitrocellulose: LACQUER,
  acrylic: LACQUER,
  cab: LACQUER,
  shellac: [
    { solvent: 'ethanol', share: 0.95 },
    { solvent: 'isopropanol', share: 0.05 },
  ],
  waterborne: [
    { solvent: 'water', share: 0.88 },
    { solvent: 'dpnb', share: 0.06 },
    { solvent: 'dpm', share: 0.06 },
  ],
  precatalysed: ACID_CURING,
  conversion: ACID_CURING,
  urethane: TWO_PACK,
};
