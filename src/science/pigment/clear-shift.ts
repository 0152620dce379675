import type { Lab } from '../colour/lab';
import type { White } from '../colour/white-points';

/** What the clear coats do to the colour below them: a colour read under clear minus the same bare. */
export interface ClearShift<W extends White = White> {
  readonly white: W;
  readonly dL: number;
  readonly da: number;
  readonly db: number;
}

/** What clear coats did to a card read with and without them, under one light. */
export function clearShift<W extends White>(withClear: Lab<W>, bare: NoInfer<Lab<W>>): ClearShift<W> {
  if (withClear.white !== bare.white)
    throw new RangeError(
      `A reading under ${withClear.white} cannot be compared with one under ${bare.white}.`,
    );
  return {
    white: withClear.white,
    dL: withClear.L - bare.L,
    da: withClear.a - bare.a,
    db: withClear.b - bare.b,
  };
}

/**
 * The colour at which to aim the bare opaque, so that it is the target once under clear: target minus shift.
 * Valid: targets near the card's colour. Accuracy: the shift of another colour or build differs: measure it again.
 * Left out: that the new clear will itself go on yellowing; aim slightly light when that is accepted.
 */
export function bareAim<W extends White>(target: Lab<W>, shift: NoInfer<ClearShift<W>>): Lab<W> {
  if (target.white !== shift.white)
    throw new RangeError(`A shift under ${shift.white} does not hold for a target under ${target.white}.`);
  return { white: target.white, L: target.L - shift.dL, a: target.a - shift.da, b: target.b - shift.db };
}
