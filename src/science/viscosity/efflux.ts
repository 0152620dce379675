import { fail, type Result, succeed } from '../../result';
import { assertWithin } from '../assert-within';
import type { Cup } from './cups';

const viscosityOf = ({ law }: Cup, seconds: number): number =>
  'K' in law ? law.K * (seconds - law.c) : law.a * seconds - law.b / seconds;

const secondsOf = ({ law }: Cup, mm2S: number): number =>
  'K' in law ? mm2S / law.K + law.c : (mm2S + Math.sqrt(mm2S ** 2 + 4 * law.a * law.b)) / (2 * law.a);

/** The thinnest and the thickest liquid that a cup may be used for, mm2/s. */
export const rangeMm2S = (cup: Cup): readonly [thinnest: number, thickest: number] => [
  viscosityOf(cup, cup.shortestS),
  viscosityOf(cup, cup.longestS),
];

/**
 * Kinematic viscosity of a liquid from its efflux time, mm2/s.
 *
 * Source: the cup's standard: ν = K (t - c) for ASTM cups, ν = a t - b/t for ISO and DIN cups.
 * Valid: Newtonian liquids at the cup's temperature, within the cup's times; refused outside, not extrapolated.
 * Accuracy: 1 % of the standard's law (3.5 % at most, 20 points of a viscosity-standard maker's table); 3 to 37 % between
 * generations of cups, and 33 % between laboratories for Zahn cups. Left out: thixotropy, a worn or dirty orifice.
 */
export function kinematicViscosityMm2S(cup: Cup, seconds: number): number {
  assertWithin(`Efflux time in the ${cup.id} cup`, seconds, cup.shortestS, cup.longestS, 's');
  return viscosityOf(cup, seconds);
}

/** Efflux time of a liquid of known kinematic viscosity, s: {@link kinematicViscosityMm2S} turned round, with the same limits. */
export function effluxS(cup: Cup, mm2S: number): number {
  const [thinnest, thickest] = rangeMm2S(cup);
  assertWithin(`Viscosity in the ${cup.id} cup`, mm2S, thinnest, thickest, 'mm2/s');
  return secondsOf(cup, mm2S);
}

export type CupFailure =
  /** The reading lies outside the times of its own cup. */
  | { readonly kind: 'outside-its-cup'; readonly cup: Cup }
  /** The liquid would run through the other cup too fast, or too slowly, for it to say anything. */
  | { readonly kind: 'too-thin-for-cup' | 'too-thick-for-cup'; readonly cup: Cup };

/** Kinematic viscosity, mm2/s, of a reading as a person typed it, or why the cup cannot tell. */
export function readCup(cup: Cup, seconds: number): Result<number, CupFailure> {
  const isRead = seconds >= cup.shortestS && seconds <= cup.longestS;
  return isRead ? succeed(kinematicViscosityMm2S(cup, seconds)) : fail({ kind: 'outside-its-cup', cup });
}

/** The time, s, that another cup would show for the same liquid, or why it cannot. */
export function betweenCups(from: Cup, seconds: number, to: Cup): Result<number, CupFailure> {
  const read = readCup(from, seconds);
  if (!read.ok) return read;
  const [thinnest, thickest] = rangeMm2S(to);
  if (read.value < thinnest) return fail({ kind: 'too-thin-for-cup', cup: to });
  if (read.value > thickest) return fail({ kind: 'too-thick-for-cup', cup: to });
  return succeed(effluxS(to, read.value));
}

/** Dynamic viscosity, mPa s, from kinematic viscosity, mm2/s, and density, kg/m3. */
export const dynamicViscosityMPaS = (mm2S: number, densityKgM3: number): number =>
  (mm2S * densityKgM3) / 1000;
