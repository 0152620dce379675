import { assertWithin } from '../assert-within';

/** Volume of solvent held per volume of dry binder, from the solvent's weight fraction in the film. */
export function solventPerDryVolume(
  weightFraction: number,
  binderDensityKgM3: number,
  solventDensityKgM3: number,
): number {
  assertWithin('Solvent', weightFraction, 0, 0.99, 'of the film by weight');
  return ((weightFraction / (1 - weightFraction)) * binderDensityKgM3) / solventDensityKgM3;
}

/**
 * Fraction of its height that a film will still lose.
 *
 * Source: u/(1 + u) with u the solvent volume per dry volume; ideal volumes, shrinkage in height only.
 */
export const shrinkToCome = (perDryVolume: number): number => perDryVolume / (1 + perDryVolume);
