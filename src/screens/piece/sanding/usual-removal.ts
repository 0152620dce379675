import type { Sanding } from '../../../logbook/fold/piece/pieces';
import { metresToUm, umToMil } from '../../../units';
import { USUAL_REMOVAL_M } from '../../../verdicts/sanding';

/** What a stage of sanding takes off as a rule, as it would be typed: nobody measures it. */
export function usualRemoval<U extends 'um' | 'mil'>(stage: Sanding['stage'], unit: U) {
  const um = metresToUm(USUAL_REMOVAL_M[stage].usual);
  return { text: unit === 'mil' ? umToMil(um).toFixed(1) : String(Math.round(um)), unit };
}
