import type { CautionAct } from '../../logbook/kinds/shop/caution-acts';
import type { Caution } from '../../words/air/cautions';
import { type ActionNeeds, type Logged, log } from '../log';

/** Logs that these cautions were read and seen to. */
export const confirmCautions = (
  needs: ActionNeeds,
  act: CautionAct,
  cautions: readonly Caution[],
): Logged<'cautions-read'> => log(needs, 'cautions-read', { act, cautions: cautions.map(({ id }) => id) });
