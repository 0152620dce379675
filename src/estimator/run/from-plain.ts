import type { EstimateRequest } from '../estimate';
import { filmSolvent } from '../film-solvents';
import type { StackHistory } from '../history';
import type { PlainHistory, PlainRequest } from './plain';

/** A history with its solvents filled in from the table. */
const historyFrom = (plain: PlainHistory): StackHistory => ({
  ...plain,
  solvents: plain.solvents.map(filmSolvent),
});

/** A request with its solvents filled in from the table. */
export const requestFrom = (plain: PlainRequest): EstimateRequest => ({
  ...plain,
  history: historyFrom(plain.history),
  whatIf: plain.whatIf.map(({ name, history }) => ({ name, history: historyFrom(history) })),
});

/** A card, or the plan of one, with its solvents filled in from the table. */
export const cardFrom = <Plain extends { readonly history: PlainHistory }>(
  plain: Plain,
): Omit<Plain, 'history'> & { readonly history: StackHistory } => ({
  ...plain,
  history: historyFrom(plain.history),
});
