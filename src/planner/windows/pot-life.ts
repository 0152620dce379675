/** How long a pot lasts at a temperature, as the product says. */
export interface StatedLife {
  readonly minutes: number;
  readonly atC: number;
}

/** Temperature of the shop from a minute on, °C. */
export interface ShopAir {
  readonly from: number;
  readonly temperatureC: number;
}

/**
 * The minute at which a pot mixed at a minute is spent, while the shop has those temperatures; the first holds before its own beginning too.
 *
 * Source: common practice, no source: the product's pot life at its stated temperature, halved for every 10 K warmer.
 * Valid: 10 to 35 °C; the reaction of acid-catalysed finishes about doubles in 8 to 12 K.
 * Left out: the pot's own warmth, which makes it sooner in a large pot.
 */
export function potLifeEnd(
  mixedAt: number,
  { minutes, atC }: StatedLife,
  air: readonly ShopAir[],
  doublingK = 10,
): number {
  let left = minutes; // at the stated temperature
  let at = mixedAt;
  for (const [index, { temperatureC }] of air.entries()) {
    const until = air[index + 1]?.from ?? Number.POSITIVE_INFINITY;
    if (until <= at) continue;
    const speed = 2 ** ((temperatureC - atC) / doublingK);
    if (at + left / speed <= until) return Math.floor(at + left / speed);
    left -= (until - at) * speed;
    at = until;
  }
  return Math.floor(at + left); // nothing is known of the air: as stated
}
