import type { SolventId } from '../../science/solvents/solvents';
import type { EstimateRequest } from '../estimate';
import type { StackHistory } from '../history';

/** A history as data alone, so that it can be sent to a worker: the solvents by their names in the table. */
export type PlainHistory = Omit<StackHistory, 'solvents'> & { readonly solvents: readonly SolventId[] };

/** A request as data alone. */
export type PlainRequest = Omit<EstimateRequest, 'history' | 'whatIf'> & {
  readonly history: PlainHistory;
  readonly whatIf: readonly { readonly name: string; readonly history: PlainHistory }[];
};
