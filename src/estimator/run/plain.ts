import type { SolventId } from '../../science/solvents/solvents';
import type { Card } from '../card/card';
import type { CardPlan } from '../card/foretell';
import type { EstimateRequest } from '../estimate';
import type { StackHistory } from '../history';

/** A history as data alone, so that it can be sent to a worker: the solvents by their names in the table. */
export type PlainHistory = Omit<StackHistory, 'solvents'> & { readonly solvents: readonly SolventId[] };

/** A request as data alone. */
export type PlainRequest = Omit<EstimateRequest, 'history' | 'whatIf'> & {
  readonly history: PlainHistory;
  readonly whatIf: readonly { readonly name: string; readonly history: PlainHistory }[];
};

/** A test card as data alone, to be weighed up. */
export interface PlainCardRequest {
  readonly card: Card<PlainHistory>;
}

/** A test card that is yet to be made: what can it tell? */
export interface PlainCardPlan {
  readonly plan: CardPlan<PlainHistory>;
}
