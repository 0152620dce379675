import { adaptXyz } from '../bradford';
import { deltaE00 } from '../delta-e-00';
import { type Lab, labToXyz, type Xyz, xyzToLab } from '../lab';
import { type Matrix3, multiply, solve, type Triple } from '../linear';
import { linearRgbToXyz } from '../srgb';
import { CHART_LAB_D50, type ChartEdition, LIGHT_NEUTRALS } from './chart-24';
import type { PatchSample } from './photo-patch';

/** How to turn the camera's linear light into colour, and how well that did on what was known. */
export interface CameraFit {
  readonly matrix: Matrix3;
  /** deltaE00 on the chart's own patches; undefined for a single grey card, which cannot tell. */
  readonly residualE00: { readonly median: number; readonly worst: number } | undefined;
}

// Whites and creams are what is measured here, so an error on a light neutral counts five times, its square 25 times
// (see the simulated shots in tests).
const NEUTRAL_WEIGHT = 25;
/** A patch with more of its pixels at the end of a channel than this spoils the fit (judgement, no source). */
const MOST_CLIPPED_FRACTION = 0.01;

/** Numbers (from 0) of the patches whose highlights are clipped: the photograph must be taken again, darker. */
export function clippedPatches(samples: readonly PatchSample[]): number[] {
  return samples.flatMap(({ clippedFraction }, i) => (clippedFraction > MOST_CLIPPED_FRACTION ? [i] : []));
}

/** What the 24 patches should look like in daylight: the maker's D50 colours adapted to D65. */
export function chartXyz(edition: ChartEdition): Xyz<'D65/2'>[] {
  return CHART_LAB_D50[edition].map(([L, a, b]) => adaptXyz(labToXyz({ white: 'D50/2', L, a, b }), 'D65/2'));
}

/**
 * The 3x3 matrix from the camera's linear light to tristimulus values, by least squares over the chart's patches with the
 * light neutrals weighted; undefined when the patches do not span colour (all alike, or black).
 *
 * Source: linear colour correction as in Finlayson, Mackiewicz and Hurlbert 2015 (their 3x3 baseline); weights by
 * simulation. Valid: one light over the whole chart, no clipped patch.
 * Accuracy: about 1 deltaE00 on creams with half a percent of noise; phones' own tone curves add 1 to 4.
 * Left out: tone curves other than sRGB, uneven light, gloss.
 */
export function fitCamera(
  light: readonly Triple[],
  reference: readonly Xyz<'D65/2'>[],
  neutrals: readonly number[] = LIGHT_NEUTRALS,
): CameraFit | undefined {
  const weightOf = (patch: number): number => (neutrals.includes(patch) ? NEUTRAL_WEIGHT : 1);
  const normal = [0, 1, 2].map((i) =>
    [0, 1, 2].map((k) => light.reduce((sum, rgb, p) => sum + weightOf(p) * (rgb[i] ?? 0) * (rgb[k] ?? 0), 0)),
  );
  const rows = (['X', 'Y', 'Z'] as const).map((part) => {
    const right = [0, 1, 2].map((i) =>
      light.reduce((sum, rgb, p) => sum + weightOf(p) * (rgb[i] ?? 0) * (reference[p]?.[part] ?? 0), 0),
    );
    return solve(normal, right);
  });
  if (rows.includes(undefined)) return undefined;
  const matrix = rows as unknown as Matrix3;
  const residuals = reference.map((xyz, p) =>
    deltaE00(cameraLab({ matrix }, light[p] ?? [0, 0, 0]), xyzToLab(xyz)),
  );
  const sorted = residuals.sort((one, other) => one - other);
  const median = sorted[Math.floor(sorted.length / 2)] ?? 0;
  return { matrix, residualE00: { median, worst: sorted.at(-1) ?? 0 } };
}

/**
 * The fit from a single grey or white card: each channel scaled to the card, the rest taken as sRGB.
 * Accuracy: 3 to 4 deltaE00 on creams: for ranking only. Undefined when a channel saw nothing.
 * @param reflectance of the card, a fraction: 0.18 for a middle grey
 */
export function fitGreyCard(card: Triple, reflectance: number): CameraFit | undefined {
  if (card.some((channel) => !(channel > 0))) return undefined;
  const scaled = (i: 0 | 1 | 2): Xyz<'D65/2'> =>
    linearRgbToXyz([0, 1, 2].map((k) => (k === i ? reflectance / card[i] : 0)) as unknown as Triple);
  const [r, g, b] = [scaled(0), scaled(1), scaled(2)];
  return {
    matrix: [
      [r.X, g.X, b.X],
      [r.Y, g.Y, b.Y],
      [r.Z, g.Z, b.Z],
    ],
    residualE00: undefined,
  };
}

/** The colour that a fit gives to the camera's light. It can rank trials; it cannot pass one. */
export function cameraLab({ matrix }: Pick<CameraFit, 'matrix'>, light: Triple): Lab<'D65/2'> {
  const [X, Y, Z] = multiply(matrix, light);
  return xyzToLab({ white: 'D65/2', X, Y, Z });
}
