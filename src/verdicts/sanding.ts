import type { Sanding } from '../logbook/fold/piece/pieces';
import { umToMetres } from '../units';
import type { Act } from './act';

/** What a sanding takes off as a rule, m: nobody measures it (common practice, no source). */
export const USUAL_REMOVAL_M: {
  readonly [S in Sanding['stage']]: { readonly usual: number; readonly most: number };
} = {
  scuff: { usual: umToMetres(3), most: umToMetres(4) },
  level: { usual: umToMetres(15), most: umToMetres(25) },
  'rub-out': { usual: umToMetres(5), most: umToMetres(8) },
};

/** The act that a stage of sanding is. */
export const SANDING_ACTS: { readonly [S in Sanding['stage']]: Act } = {
  scuff: 'scuff',
  level: 'level-sand',
  'rub-out': 'rub-out',
};

export const stageOf = (act: Act): Sanding['stage'] | undefined =>
  (Object.keys(SANDING_ACTS) as Sanding['stage'][]).find((stage) => SANDING_ACTS[stage] === act);
