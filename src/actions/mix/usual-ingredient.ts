import type { ShopIngredient } from '../../logbook/fold/mix/ingredients';
import { USUAL_DENSITY } from '../../shop/jar/amount';
import {
  CARRIER,
  DYE_CARRIER,
  type Finish,
  type Shares,
  USUAL_RETARDER,
  USUAL_SOLVENTS,
} from '../../shop/jar/own-solvents';
import { USUAL_JARS, usualThinner } from './usual-jar';

export type IngredientSort = ShopIngredient['is'];

/** What an ingredient of a sort usually is, as a person would type it (common practice, no source). */
export interface UsualIngredient {
  /** g/mL */
  readonly density?: string;
  /** % by volume */
  readonly volumeSolids?: string;
  /** % of the dry film by volume */
  readonly pigmentOfSolids?: string;
  readonly criticalPigment?: string;
  readonly solvents?: Shares;
  readonly strength?: 'weak' | 'medium' | 'strong';
}

const gPerMl = (kgM3: number): string => String(kgM3 / 1000);

const FIXED: Partial<Record<IngredientSort, UsualIngredient>> = {
  tinter: {
    density: '1.5',
    volumeSolids: '40',
    pigmentOfSolids: '50',
    criticalPigment: '55',
    solvents: CARRIER,
    strength: 'medium',
  },
  dye: { density: '0.92', volumeSolids: '4', solvents: DYE_CARRIER, strength: 'strong' },
  flatting: {
    density: '1',
    volumeSolids: '20',
    pigmentOfSolids: '30',
    criticalPigment: '45',
    solvents: CARRIER,
    strength: 'weak',
  },
  retarder: { density: '0.9', solvents: [{ solvent: USUAL_RETARDER, share: 1 }] },
  'let-down': {},
};

/** The usual facts of a sort of ingredient, for a finish. */
export function usualIngredient(is: IngredientSort, finish: Finish): UsualIngredient {
  const solvents = USUAL_SOLVENTS[finish];
  const { volumeSolids } = USUAL_JARS[finish];
  if (is === 'clear')
    return {
      density: finish === 'waterborne' ? '1.03' : gPerMl(USUAL_DENSITY.clear),
      volumeSolids,
      solvents,
    };
  if (is === 'white-base')
    return {
      density: gPerMl(USUAL_DENSITY.pigmented),
      volumeSolids: '26',
      pigmentOfSolids: '18',
      criticalPigment: '50',
      solvents,
    };
  if (is === 'thinner')
    return { density: finish === 'waterborne' ? '1' : '0.84', solvents: usualThinner(finish, 'usual') };
  return FIXED[is] ?? {};
}
