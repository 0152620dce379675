import { describe, expect, test } from 'vitest';
import { clippedPatches } from '../../../src/science/colour/photo/camera-fit';
import {
  type Corners,
  cornersFault,
  samplePatches,
  scaleThatServes,
} from '../../../src/science/colour/photo/photo-patch';

/** A photograph, 300 by 220, all of one code. */
const plain = (code: number) => ({
  width: 300,
  height: 220,
  rgba: Uint8ClampedArray.from({ length: 300 * 220 * 4 }, () => code),
});
/** Corners of an upright field. */
const field = (left: number, top: number, width: number, height: number): Corners => [
  { x: left, y: top },
  { x: left + width, y: top },
  { x: left + width, y: top + height },
  { x: left, y: top + height },
];
const [A, B, C, D] = field(30, 20, 200, 150);

describe('corners of a chart, six by four', () => {
  test.each<{ why: string; corners: Corners; fault: string | undefined }>([
    { why: 'in the whole photograph', corners: field(0, 0, 299.9, 219.9), fault: undefined },
    { why: 'off its left edge', corners: field(-0.1, 0, 200, 150), fault: 'outside' },
    { why: 'off its top', corners: field(0, -0.1, 200, 150), fault: 'outside' },
    { why: 'off its right edge', corners: field(100, 0, 200, 150), fault: 'outside' },
    { why: 'off its bottom', corners: field(0, 70, 200, 150), fault: 'outside' },
    { why: 'crossed', corners: [B, A, C, D], fault: 'crossed' },
    { why: 'the wrong way round', corners: [A, D, C, B], fault: 'crossed' },
    {
      why: 'three on a line',
      corners: [A, { x: 130, y: 20 }, B, D],
      fault: 'crossed',
    },
    { why: 'eight pixels a patch', corners: field(10, 10, 48, 32), fault: undefined },
    { why: 'one less', corners: field(10, 10, 47, 32), fault: 'too-small' },
    {
      why: 'one corner nearly straight',
      corners: [
        field(10, 10, 100, 100)[0],
        field(10, 10, 100, 100)[1],
        field(10, 10, 100, 100)[2],
        { x: 59, y: 61 },
      ],
      fault: 'too-small',
    },
  ])('$why: $fault', ({ corners, fault }) => {
    expect(cornersFault(plain(0), corners, 6, 4)).toBe(fault);
  });
});

// 32 points across the middle half of a patch: 64 pixels across the whole keep a pixel for each.
test.each([
  { why: 'just enough pixels', corners: field(0, 0, 64 * 6, 64 * 4), scale: 1 },
  { why: 'fewer', corners: field(0, 0, 60, 40), scale: 1 },
  { why: 'twice as many both ways', corners: field(0, 0, 128 * 6, 128 * 4), scale: 0.5 },
  { why: 'many across and few down', corners: field(900, 700, 640 * 6, 80 * 4), scale: 0.8 },
  { why: 'few across and many down', corners: field(900, 700, 80 * 6, 640 * 4), scale: 0.8 },
  {
    why: 'few across at the far end',
    corners: [A, { x: 4000, y: 20 }, { x: 30 + 80 * 6, y: 3000 }, { x: 30, y: 3000 }] as const,
    scale: 0.8,
  },
])('a photograph is drawn smaller as far as serves: $why', ({ corners, scale }) => {
  expect(scaleThatServes(corners, 6, 4)).toBeCloseTo(scale, 12);
});

describe('a patch', () => {
  const patchOf = (code: number) => samplePatches(plain(code), field(20, 20, 256, 128), 4, 2)[0];

  test('of black alone has no light and no spread', () => {
    expect(patchOf(0)).toEqual({ rgb: [0, 0, 0], spread: 0, clippedFraction: 0 });
  });

  test('is looked at about its own middle: black to the left of it and white to the right are half and half', () => {
    const rgba = plain(0).rgba.map((_, i) => ((i >> 2) % 300 < 52 ? 0 : 255));
    const [patch] = samplePatches({ ...plain(0), rgba }, field(20, 20, 256, 128), 4, 2);
    expect(patch?.rgb).toEqual([0.5, 0.5, 0.5]);
  });

  // The last two codes of a channel are its end (judgement, no source).
  test.each([
    { code: 253, clippedFraction: 0 },
    { code: 254, clippedFraction: 1 },
    { code: 255, clippedFraction: 1 },
  ])('of code $code is clipped: $clippedFraction', ({ code, clippedFraction }) => {
    expect(patchOf(code)).toMatchObject({ clippedFraction });
  });

  test('spoils the fit with more than a hundredth of it clipped', () => {
    const patches = [0, 0.01, 0.011].map((clippedFraction) => ({
      rgb: [0.5, 0.5, 0.5] as const,
      spread: 0,
      clippedFraction,
    }));
    expect(clippedPatches(patches)).toEqual([2]);
  });
});
