import type { Photo } from '../../../logbook/fold/piece/zones';

export type PhotoPoint = readonly [x: number, y: number];
/** Two points of a photo, as shares of its width and height. */
export type TwoPoints = readonly [PhotoPoint, PhotoPoint];
export type Side = 'under' | 'over';

/** Two photos that are laid over each other, and their points. */
export interface Pair {
  readonly under: Photo;
  readonly over: Photo;
  readonly marks: Readonly<Record<Side, TwoPoints>>;
}

/** Points in pixels of their photo. */
export const inPixels = ({ width, height }: Photo, [[ax, ay], [bx, by]]: TwoPoints): TwoPoints => [
  [ax * width, ay * height],
  [bx * width, by * height],
];
