import type { Corners, Point } from '../../../science/colour/photo/photo-patch';

/** Marks in a photo as fractions of its width and height: four corners of the reference, then the sample's middle. */
export type Marks = readonly [Point, Point, Point, Point, Point];
export const SAMPLE_MARK = 4;

/** Where the marks begin: a chart in the upper part, the sample below it. */
export const FIRST_MARKS: Marks = [
  { x: 0.2, y: 0.15 },
  { x: 0.8, y: 0.15 },
  { x: 0.8, y: 0.55 },
  { x: 0.2, y: 0.55 },
  { x: 0.5, y: 0.8 },
];

/** Which marks still lie where they began: nobody has said that they are right there. */
export const unmoved = (marks: Marks): readonly number[] =>
  FIRST_MARKS.flatMap((mark, i) => (marks[i] === mark ? [i] : []));

/** Half a side of the sample's square, as a part of the photo's shorter side. */
export const SAMPLE_SIZES = { small: 0.02, medium: 0.05, large: 0.1 } as const;
export type SampleSize = keyof typeof SAMPLE_SIZES;

export interface PixelSize {
  readonly width: number;
  readonly height: number;
}

const within = (value: number): number => Math.min(Math.max(value, 0), 1);

/** The marks with one of them elsewhere, kept inside the photo. */
export const moved = (marks: Marks, at: number, { x, y }: Point): Marks =>
  marks.map((mark, i) => (i === at ? { x: within(x), y: within(y) } : mark)) as unknown as Marks;

/** The reference's corners in pixels of the photo. */
export function referenceCorners(marks: Marks, { width, height }: PixelSize): Corners {
  const place = ({ x, y }: Point): Point => ({
    x: Math.min(x * width, width - 1),
    y: Math.min(y * height, height - 1),
  });
  return [place(marks[0]), place(marks[1]), place(marks[2]), place(marks[3])];
}

/** The square of the sample in pixels of the photo. */
export function sampleCorners(marks: Marks, size: SampleSize, { width, height }: PixelSize): Corners {
  const half = SAMPLE_SIZES[size] * Math.min(width, height);
  const x = Math.min(Math.max(marks[SAMPLE_MARK].x * width, half), width - 1 - half);
  const y = Math.min(Math.max(marks[SAMPLE_MARK].y * height, half), height - 1 - half);
  return [
    { x: x - half, y: y - half },
    { x: x + half, y: y - half },
    { x: x + half, y: y + half },
    { x: x - half, y: y + half },
  ];
}
