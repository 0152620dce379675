import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import { xyzToLab } from '../../../src/science/colour/lab';
import type { Triple } from '../../../src/science/colour/linear';
import {
  cameraLab,
  chartXyz,
  clippedPatches,
  fitCamera,
  fitGreyCard,
} from '../../../src/science/colour/photo/camera-fit';
import { CHART_LAB_D50 } from '../../../src/science/colour/photo/chart-24';
import {
  type Corners,
  fieldToPhoto,
  type Photo,
  samplePatches,
} from '../../../src/science/colour/photo/photo-patch';
import { spectrumToXyz } from '../../../src/science/colour/spectrum';
import chart from '../../reference/chart-24-patch.json';
import lights from '../../reference/cie-illuminants-10nm.json';
import ladders from '../../reference/film-ladders-and-mixtures.json';
import { encodeSrgb } from './shown-srgb';

const NM = chart.wavelengths_nm;
const patches = chart.patches.map(({ reflectance_iso17321 }) => reflectance_iso17321);
const d65 = (reflectance: readonly number[]) =>
  spectrumToXyz({ startNm: 380, stepNm: 10, reflectance }, 'D65/2');

// An invented camera: three bell-shaped channels (nm), broader and nearer to each other than the eye's.
const bell = (peakNm: number, widthNm: number) =>
  NM.map((nm) => Math.exp(-0.5 * ((nm - peakNm) / widthNm) ** 2));
const CHANNELS = [bell(600, 36), bell(540, 38), bell(460, 28)];

/** What that camera sees of a surface under a light, white balanced to the perfect diffuser. */
function shoot(reflectance: readonly number[], light: readonly number[]): Triple {
  const see = (surface: readonly number[]) =>
    CHANNELS.map((channel) =>
      channel.reduce((sum, c, i) => sum + c * (light[i] ?? 0) * (surface[i] ?? 0), 0),
    );
  const white = see(NM.map(() => 1));
  const [r = 0, g = 0, b = 0] = see(reflectance).map((channel, i) => channel / (white[i] ?? 1));
  return [r, g, b];
}

// Creams: white with a little raw sienna by single-constant Kubelka-Munk; the sienna is a measured film.
const sienna = ladders.ladders['raw sienna'][5]?.reflectance ?? [];
const creams = [0.002, 0.004, 0.008, 0.015, 0.025, 0.04].map((share) =>
  sienna.map((R) => {
    const ks = 0.006 + (share * (1 - R) ** 2) / (2 * R);
    return 1 + ks - Math.sqrt(ks * ks + 2 * ks);
  }),
);
const LIGHTS = ['D65', 'A', 'LED-B3'] as const;

/** The middle of the creams' errors under a light, in deltaE00. */
function medianCream(fit: ReturnType<typeof fitCamera>, light: readonly number[]): number {
  const errors = creams.map((R) => (fit ? deltaE00(cameraLab(fit, shoot(R, light)), xyzToLab(d65(R))) : 99));
  return errors.sort((one, other) => one - other)[3] ?? 99;
}
const fitUnder = (light: readonly number[], neutrals?: readonly number[]) =>
  fitCamera(
    patches.map((patch) => shoot(patch, light)),
    patches.map(d65),
    neutrals,
  );

describe('fitCamera on simulated shots of the chart', () => {
  test.each(LIGHTS)('creams under %s', (name) => {
    const light = lights.illuminants[name];
    const fit = fitUnder(light);
    // With a chart and weighted neutrals about 1: published simulation, 0.13 to 0.93 with another camera.
    expect(medianCream(fit, light)).toBeLessThan(1.2);
    // A 3x3 cannot fit the saturated patches of a lamp that is not daylight, and says so.
    expect(fit?.residualE00?.worst).toBeGreaterThan(1);
    // A grey card alone leaves the camera's own colours in: 3 to 4 on that camera.
    const card = fitGreyCard(shoot(patches[20] ?? [], light), 0.357);
    expect(medianCream(card, light)).toBeGreaterThan(1.5 * medianCream(fit, light));
  });

  test('weighting the light neutrals serves creams over all lights', () => {
    const sum = (neutrals?: readonly number[]): number =>
      LIGHTS.reduce((total, name) => {
        const light = lights.illuminants[name];
        return total + medianCream(fitUnder(light, neutrals), light);
      }, 0);
    expect(sum()).toBeLessThan(0.8 * sum([]));
  });

  test('a brighter or darker exposure changes nothing', () => {
    const light = lights.illuminants.A;
    const seen = patches.map(
      (patch) => shoot(patch, light).map((channel) => channel * 0.4) as unknown as Triple,
    );
    const fit = fitCamera(seen, patches.map(d65));
    expect(fit && cameraLab(fit, seen[19] ?? [0, 0, 0]).L).toBeCloseTo(xyzToLab(d65(patches[19] ?? [])).L, 0);
  });

  test('the published chart colours agree with its spectra', () => {
    // Two independent sources of the same chart (maker's Lab, ISO 17321 spectra) of different specimens.
    const differences = chartXyz('before-2014').map((xyz, i) =>
      deltaE00(xyzToLab(xyz), xyzToLab(d65(patches[i] ?? []))),
    );
    expect(differences).toHaveLength(24);
    expect(differences.sort((one, other) => one - other)[12]).toBeLessThan(2);
  });

  test.each([
    { edition: 'since-2014', said: chart.patches.map((patch) => patch.lab_d50_2deg_since_nov2014) },
    { edition: 'before-2014', said: chart.patches.map((patch) => patch.lab_d50_2deg_before_nov2014) },
  ] as const)('the chart $edition is the one its maker published', ({ edition, said }) => {
    expect(CHART_LAB_D50[edition]).toEqual(said);
  });

  test('a camera that sees as the eye does is fitted to nothing; one patch that is off is the worst, and hardly moves the middle', () => {
    const seen = chartXyz('since-2014').map(({ X, Y, Z }): Triple => [X / 100, Y / 100, Z / 100]);
    expect(fitCamera(seen, chartXyz('since-2014'))?.residualE00?.worst).toBeLessThan(1e-6);
    const soiled = seen.map((light, i): Triple => (i === 3 ? [light[0], light[1] / 2, light[2]] : light));
    const { median = 9, worst = 0 } = fitCamera(soiled, chartXyz('since-2014'))?.residualE00 ?? {};
    expect(worst).toBeGreaterThan(10);
    expect(median).toBeLessThan(3);
    expect(median).toBeGreaterThan(0);
  });

  test('a grey card alone comes out grey, as light as it is said to be', () => {
    const card: Triple = [0.2, 0.3, 0.1];
    const fit = fitGreyCard(card, 0.18) ?? expect.unreachable();
    const lab = cameraLab(fit, card);
    expect(lab.L).toBeCloseTo(116 * Math.cbrt(0.18) - 16, 3); // from the definition of L*
    expect(Math.hypot(lab.a, lab.b)).toBeLessThan(0.02);
    expect(fit.residualE00).toBeUndefined();
  });

  test('patches that are all alike fit nothing', () => {
    expect(
      fitCamera(
        patches.map(() => [0.5, 0.5, 0.5]),
        patches.map(d65),
      ),
    ).toBeUndefined();
    expect(fitGreyCard([0.2, 0, 0.2], 0.18)).toBeUndefined();
  });
});

const CORNERS: Corners = [
  { x: 30, y: 20 },
  { x: 280, y: 40 },
  { x: 260, y: 200 },
  { x: 15, y: 170 },
];

/** A photograph, 300 by 220, with the chart lying in it as the corners say; patch i has the given light. */
function paint(light: readonly Triple[]): Photo {
  const rgba = new Uint8ClampedArray(300 * 220 * 4);
  const toPhoto = fieldToPhoto(CORNERS);
  for (let i = 0; i < 600; i++)
    for (let k = 0; k < 400; k++) {
      const { x, y } = toPhoto((i + 0.5) / 600, (k + 0.5) / 400);
      const patch = light[Math.floor(k / 100) * 6 + Math.floor(i / 100)] ?? [0, 0, 0];
      rgba.set(
        patch.map((channel) => Math.round(255 * encodeSrgb(Math.min(channel, 1)))),
        4 * (Math.floor(y) * 300 + Math.floor(x)),
      );
    }
  return { width: 300, height: 220, rgba };
}

describe('samplePatches', () => {
  test('the field has the marked corners', () => {
    const toPhoto = fieldToPhoto(CORNERS);
    const places = [toPhoto(0, 0), toPhoto(1, 0), toPhoto(1, 1), toPhoto(0, 1)];
    for (const [i, place] of places.entries()) {
      expect(place.x).toBeCloseTo(CORNERS[i]?.x ?? 0, 9);
      expect(place.y).toBeCloseTo(CORNERS[i]?.y ?? 0, 9);
    }
  });

  test('finds the light of every patch of a tilted chart', () => {
    const light = patches.map((patch) => shoot(patch, lights.illuminants.D65));
    const samples = samplePatches(paint(light), CORNERS, 6, 4);
    expect(samples).toHaveLength(24);
    for (const [i, { rgb, spread }] of samples.entries()) {
      // Half a code of 255 near white is 0.0045 of light.
      for (const channel of [0, 1, 2] as const)
        expect(Math.abs(rgb[channel] - (light[i]?.[channel] ?? 0))).toBeLessThan(0.0045);
      expect(spread).toBeLessThan(1e-6);
    }
    expect(clippedPatches(samples)).toEqual([]);
  });

  test('tells how uneven a patch is: half white and half black spreads as much as its mean', () => {
    const rgba = Uint8ClampedArray.from({ length: 300 * 220 * 4 }, (_, i) => (((i >> 2) % 300) % 2) * 255);
    const [sample] = samplePatches(
      { width: 300, height: 220, rgba },
      [
        { x: 20, y: 20 },
        { x: 276, y: 20 },
        { x: 276, y: 148 },
        { x: 20, y: 148 },
      ],
      4,
      2,
    );
    // One point a pixel across the middle 32 of a patch: every other one is white.
    expect(sample?.rgb[1]).toBeCloseTo(0.5, 9);
    expect(sample?.spread).toBeCloseTo(1, 9);
    expect(sample?.clippedFraction).toBeCloseTo(0.5, 9);
  });

  test('names the patches whose highlights are clipped', () => {
    const light = patches.map(
      (patch) => shoot(patch, lights.illuminants.D65).map((c) => c * 1.3) as unknown as Triple,
    );
    expect(clippedPatches(samplePatches(paint(light), CORNERS, 6, 4))).toEqual([18]);
  });
});
