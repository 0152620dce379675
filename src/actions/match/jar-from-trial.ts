import type { Match } from '../../logbook/fold/matches';
import { type Result, succeed } from '../../result';
import { partsOf } from '../../shop/colour/jar-content';
import { type ActionNeeds, log } from '../log';
import { beginWeighUp } from '../mix/weigh-up';
import type { Refused } from '../refused';
import { gramsText } from './accept-trial';

/** Makes the jar of an accepted trial a weigh-up that is poured already, ready to be filled; gives its id. */
export async function jarFromTrial(
  needs: ActionNeeds,
  match: Match,
  trialNumber: number,
  recipe: string,
): Promise<Result<string, Refused>> {
  const parts = partsOf(match, trialNumber);
  const begun = await beginWeighUp(needs, {
    recipe,
    plan: parts.map(([ingredient, grams]) => ({ ingredient, massKg: grams / 1000 })),
    division: match.division.typed as { text: string; unit: 'g' },
    isTared: true,
  });
  if (!begun.ok) return begun;
  const { weighUp } = begun.value;
  for (const [line, [, grams]] of parts.entries()) {
    const scale = { text: gramsText(grams), unit: 'g' } as const;
    const poured = await log(needs, 'poured', { weighUp, line, scale });
    if (!poured.ok) return poured;
  }
  return succeed(weighUp);
}
