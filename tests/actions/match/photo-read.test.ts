import { describe, expect, test } from 'vitest';
import { readPhoto, scaleToRead } from '../../../src/actions/match/photo-read';
import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import { type Lab, labToXyz } from '../../../src/science/colour/lab';
import { chartXyz } from '../../../src/science/colour/photo/camera-fit';
import type { Corners, Photo } from '../../../src/science/colour/photo/photo-patch';
import { encodeSrgb, xyzToLinearRgb } from '../../science/colour/shown-srgb';

const [WIDTH, HEIGHT] = [480, 480];
const CREAM: Lab<'D65/2'> = { white: 'D65/2', L: 86.5, a: -0.6, b: 14.8 };
const square = (x0: number, y0: number, x1: number, y1: number): Corners => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];
const CHART = square(0, 0, 479, 320);
const SAMPLE = square(200, 360, 280, 440);

/** A shot of the chart over a sample, by a camera that shows sRGB at this exposure. */
function shot(exposure: number) {
  const patches = chartXyz('since-2014');
  const rgba = new Uint8ClampedArray(4 * WIDTH * HEIGHT);
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      const patch = y < 320 ? patches[6 * Math.floor(y / 80) + Math.floor(x / 80)] : labToXyz(CREAM);
      const light = patch ? xyzToLinearRgb(patch) : [0, 0, 0];
      light.forEach((channel, i) => {
        rgba[4 * (y * WIDTH + x) + i] = 255 * encodeSrgb(Math.min(Math.max(channel * exposure, 0), 1));
      });
    }
  }
  return { width: WIDTH, height: HEIGHT, rgba };
}

const chart = (corners = CHART) => ({ as: 'chart', edition: 'since-2014', corners }) as const;

test.each([{ exposure: 0.9 }, { exposure: 0.5 }])(
  'at exposure $exposure the sample is read within 0.5 of what it is, as the chart says how bright the light was',
  ({ exposure }) => {
    const read = readPhoto(shot(exposure), chart(), SAMPLE);
    if (read.kind !== 'read') throw new Error(read.fault);
    expect(deltaE00(read.lab, CREAM)).toBeLessThan(0.5); // eight bits a channel, and the chart's cyan lies outside sRGB
    expect(read.residualE00?.median).toBeLessThan(1);
  },
);

test('a grey card is one patch: as small as no chart could be it still serves', () => {
  const small = square(110, 270, 130, 290);
  const card = { as: 'grey-card', reflectance: 0.59, corners: small } as const;
  expect(readPhoto(shot(0.9), card, SAMPLE).kind).toBe('read');
  expect(readPhoto(shot(0.9), chart(small), SAMPLE)).toEqual({ kind: 'fault', fault: 'reference-too-small' });
});

test('a grey card alone tells no residual', () => {
  const card = { as: 'grey-card', reflectance: 0.59, corners: square(85, 245, 155, 315) } as const; // neutral 8, Y 59
  const read = readPhoto(shot(0.9), card, SAMPLE);
  expect(read).toMatchObject({ kind: 'read', residualE00: undefined });
});

describe('a photograph drawn smaller', () => {
  const times = (by: number, corners: Corners): Corners =>
    corners.map(({ x, y }) => ({ x: x * by, y: y * by })) as unknown as Corners;
  /** Every how-many-th pixel, as a drawing without smoothing takes them. */
  function thinned(photo: Photo, by: number): Photo {
    const [width, height] = [Math.ceil(photo.width * by), Math.ceil(photo.height * by)];
    const rgba = new Uint8ClampedArray(4 * width * height);
    for (let at = 0; at < width * height; at++) {
      const [x, y] = [Math.floor(((at % width) + 0.5) / by), Math.floor((Math.floor(at / width) + 0.5) / by)];
      const from = 4 * (Math.min(y, photo.height - 1) * photo.width + Math.min(x, photo.width - 1));
      for (let i = 0; i < 4; i++) rgba[4 * at + i] = photo.rgba[from + i] ?? 0;
    }
    return { width, height, rgba };
  }

  test('as far as the points looked at allow it is read as the whole is', () => {
    const by = scaleToRead(chart(), SAMPLE);
    expect(by).toBeCloseTo(64 / 80, 2); // 80 pixels a patch, 32 points in the middle half of it
    const whole = readPhoto(shot(0.9), chart(), SAMPLE);
    const small = readPhoto(thinned(shot(0.9), by), chart(times(by, CHART)), times(by, SAMPLE));
    if (whole.kind !== 'read' || small.kind !== 'read') throw new Error('Not read.');
    expect(deltaE00(small.lab, whole.lab)).toBeLessThan(0.05);
    expect(small.residualE00?.worst).toBeCloseTo(whole.residualE00?.worst ?? 0, 1);
  });

  test('is not, where a patch is small already', () => {
    expect(scaleToRead(chart(), square(200, 360, 230, 390))).toBe(1);
    expect(scaleToRead(chart(times(0.5, CHART)), SAMPLE)).toBe(1);
  });
});

describe('what cannot be used is said, and not read', () => {
  test.each([
    {
      what: 'a burnt-out chart',
      exposure: 1.6,
      against: chart(),
      sample: SAMPLE,
      fault: 'reference-clipped',
    },
    {
      what: 'a burnt-out sample',
      exposure: 1.6,
      against: { as: 'grey-card', reflectance: 0.2, corners: square(245, 245, 315, 315) } as const,
      sample: SAMPLE,
      fault: 'sample-clipped',
    },
    {
      what: 'a corner outside',
      exposure: 0.9,
      against: chart(square(0, 0, 600, 320)),
      sample: SAMPLE,
      fault: 'reference-outside',
    },
    {
      what: 'corners in the wrong order',
      exposure: 0.9,
      against: chart([CHART[0], CHART[3], CHART[2], CHART[1]]),
      sample: SAMPLE,
      fault: 'reference-crossed',
    },
    {
      what: 'a chart far away',
      exposure: 0.9,
      against: chart(square(10, 10, 40, 30)),
      sample: SAMPLE,
      fault: 'reference-too-small',
    },
    {
      what: 'a sample outside',
      exposure: 0.9,
      against: chart(),
      sample: square(400, 400, 500, 500),
      fault: 'sample-outside',
    },
  ])('$what: $fault', ({ exposure, against, sample, fault }) => {
    expect(readPhoto(shot(exposure), against, sample)).toEqual({ kind: 'fault', fault });
  });
});
