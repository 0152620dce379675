/** Weights of backward differences: lead x next - fromNow x now + fromPast x past = step x rate. */
export interface Weights {
  readonly lead: number;
  readonly fromNow: number;
  readonly fromPast: number;
}

export const FIRST_ORDER: Weights = { lead: 1, fromNow: 1, fromPast: 0 };

/**
 * Weights for a step `ratio` times as long as the last: second order, or first where there is no last step (ratio 0).
 *
 * Source: second-order backward differentiation on changing steps (Hairer, Norsett and Wanner, Solving ODEs I, III.5).
 * Valid: stable while a step is at most 2.41 times the last.
 */
export function weightsFor(ratio: number): Weights {
  if (ratio === 0) return FIRST_ORDER;
  return { lead: (1 + 2 * ratio) / (1 + ratio), fromNow: 1 + ratio, fromPast: (ratio * ratio) / (1 + ratio) };
}
