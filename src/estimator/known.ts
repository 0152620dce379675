import type { Estimate, RawEstimate } from './estimate';

/** Something that should be a number is none. */
export class NotKnownError extends RangeError {
  override name = 'NotKnownError';
}

/**
 * What is said of a stack, with every number in it looked at: nothing that is no number leaves the estimator.
 * @throws NotKnownError naming the place of one that is none
 */
export function known<Further extends object>(estimate: RawEstimate & Further): Estimate & Further {
  lookInto(estimate, 'estimate');
  return estimate as Estimate & Further;
}

/** Looks at every number in a tree of plain data. */
export function lookInto(value: unknown, place: string): void {
  if (typeof value === 'number') {
    if (Number.isNaN(value)) throw new NotKnownError(`No number: ${place}`);
  } else if (value && typeof value === 'object')
    for (const [name, inner] of Object.entries(value)) lookInto(inner, `${place}.${name}`);
}
