import { type Lab, labToXyz, type Xyz, xyzToLab } from './lab';
import { inverse, type Matrix3, multiply, type Triple } from './linear';
import { WHITE_POINTS, type White } from './white-points';

// Source: Lam 1985, as printed in ICC.1:2010 annex E (the Bradford cone-like responses).
const BRADFORD: Matrix3 = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];
const BACK = inverse(BRADFORD);

/**
 * The tristimulus values that look the same under another white.
 *
 * Source: the linear Bradford transform of ICC.1:2010, annex E. Valid: whites of everyday lights.
 * Accuracy: a judgement of appearance, not a measurement: a real surface may move otherwise (metamerism).
 * Left out: incomplete adaptation.
 */
export function adaptXyz<W extends White>({ white: from, X, Y, Z }: Xyz, to: W): Xyz<W> {
  const [l, m, s] = multiply(BRADFORD, [X, Y, Z]);
  const [lFrom, mFrom, sFrom] = multiply(BRADFORD, WHITE_POINTS[from]);
  const [lTo, mTo, sTo] = multiply(BRADFORD, WHITE_POINTS[to]);
  const adapted = multiply(BACK, [(l * lTo) / lFrom, (m * mTo) / mFrom, (s * sTo) / sFrom]);
  return { white: to, X: adapted[0], Y: adapted[1], Z: adapted[2] };
}

/** A CIELAB colour as it looks under another white: for a swatch or a chart, never for a verdict. See {@link adaptXyz}. */
export function adaptLab<W extends White>(lab: Lab, to: W): Lab<W> {
  return xyzToLab(adaptXyz(labToXyz(lab), to));
}

/** The cone-like responses of every white, kept because every prediction asks for them. */
const RESPONSES = new Map(
  Object.entries(WHITE_POINTS).map(([white, xyz]) => [white, multiply(BRADFORD, xyz)]),
);
const responseOf = (white: White): Triple => RESPONSES.get(white) as Triple; // every White is a row

/** Reflectance in three broad bands (long, middle, short wavelengths), each 1 for the perfect diffuser. */
export function xyzToBands({ white, X, Y, Z }: Xyz): Triple {
  const [l, m, s] = multiply(BRADFORD, [X, Y, Z]);
  const [lWhite, mWhite, sWhite] = responseOf(white);
  return [l / lWhite, m / mWhite, s / sWhite];
}

/** The colour of a surface with these reflectances in the three bands: the inverse of {@link xyzToBands}. */
export function bandsToXyz<W extends White>([l, m, s]: Triple, white: W): Xyz<W> {
  const [lWhite, mWhite, sWhite] = responseOf(white);
  const xyz = multiply(BACK, [l * lWhite, m * mWhite, s * sWhite]);
  return { white, X: xyz[0], Y: xyz[1], Z: xyz[2] };
}
