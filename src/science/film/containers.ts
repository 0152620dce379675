import { M3_PER_US_GALLON } from '../../units';

export type Container = 'quart' | 'gallon' | 'litre' | 'five-litres' | 'spray-can';
export type Bought = readonly { readonly size: Container; readonly count: number }[];

const QUARTS_A_GALLON = 4;
/** As lacquer is sold by the litre (common practice, no source). */
const LITRES_A_LARGE_CAN = 5;
/** Of a 400 mL spray can so much is lacquer; the rest is propellant (common practice, no source). */
export const LACQUER_A_SPRAY_CAN_M3 = 250e-6;
/** A quart more than three is a gallon, a litre more than three a large can: that is how it is sold (common practice, no source). */
const SMALL_AT_MOST = 2;

/** What to buy so that a volume is there, in the sizes that are sold; nothing for nothing. */
export function toBuy(m3: number, sold: 'us' | 'metric' | 'spray-can'): Bought {
  if (!(m3 > 0)) return [];
  if (sold === 'spray-can')
    return [{ size: 'spray-can', count: Math.ceil(m3 / LACQUER_A_SPRAY_CAN_M3 - EXACT) }];
  return sold === 'us'
    ? inTwoSizes(m3 / (M3_PER_US_GALLON / QUARTS_A_GALLON), QUARTS_A_GALLON, 'quart', 'gallon')
    : inTwoSizes(m3 / 1e-3, LITRES_A_LARGE_CAN, 'litre', 'five-litres');
}

// An exact quart needs no second one for rounding.
const EXACT = 1e-9;

function inTwoSizes(smallOnes: number, inLarge: number, small: Container, large: Container): Bought {
  const whole = Math.ceil(smallOnes - EXACT);
  const rest = whole % inLarge;
  const isLargeCheaper = rest > SMALL_AT_MOST;
  const counts = [
    { size: large, count: Math.floor(whole / inLarge) + (isLargeCheaper ? 1 : 0) },
    { size: small, count: isLargeCheaper ? 0 : rest },
  ];
  return counts.filter(({ count }) => count > 0);
}
