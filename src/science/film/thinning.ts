import { assertWithin } from '../assert-within';

/** Thinner added per volume of lacquer: 10 % of the lacquer is 0.1 L of thinner to 1 L of lacquer. */
export interface ThinnedOfLacquer {
  readonly of: 'lacquer';
  readonly fraction: number;
}

/** Thinner's share of the finished mix: 10 % of the mix is 0.1 L of thinner in 1 L ready to spray. */
export interface ThinnedOfMix {
  readonly of: 'mix';
  readonly fraction: number;
}

/** "Thinned ten per cent" means nothing until it says of what. */
export type Thinning = ThinnedOfLacquer | ThinnedOfMix;

/** A thinning said as a fraction of the lacquer's volume; 1 is one to one. */
export function thinnedOfLacquer(fraction: number): ThinnedOfLacquer {
  assertWithin('Thinner', fraction, 0, 99, 'of the lacquer'); // 99 to 1: as far as the mix may go
  return { of: 'lacquer', fraction };
}

/** A thinning said as a fraction of the mix's volume. */
export function thinnedOfMix(fraction: number): ThinnedOfMix {
  assertWithin('Thinner', fraction, 0, 0.99, 'of the mix');
  return { of: 'mix', fraction };
}

/** The same thinning, said of the lacquer. */
export const asOfLacquer = ({ of, fraction }: Thinning): ThinnedOfLacquer =>
  thinnedOfLacquer(of === 'lacquer' ? fraction : fraction / (1 - fraction));

/** The same thinning, said of the mix. */
export const asOfMix = ({ of, fraction }: Thinning): ThinnedOfMix =>
  thinnedOfMix(of === 'mix' ? fraction : fraction / (1 + fraction));
