/** Bytes of a photo at most: more than any phone's camera writes (judgement, no source). */
export const MOST_PHOTO_BYTES = 50_000_000;

/** What a picture file says of itself before anything is decoded. */
export interface Outline {
  /** In pixels, as stored: a picture lying on its side is not turned yet. */
  readonly width: number;
  readonly height: number;
  /** Whether the file reaches its own end. */
  readonly isWhole: boolean;
}

/** The letters at a place in a file. */
export const lettersAt = (file: DataView, at: number, count: number): string =>
  String.fromCharCode(...Array.from({ length: count }, (_, i) => byteAt(file, at + i)));

/** The byte at a place, nought past the end: such a file is refused for its sizes, never for where it was read. */
export const byteAt = (file: DataView, at: number): number => (at < file.byteLength ? file.getUint8(at) : 0);
/** Two bytes, the higher first. */
export const twoBytesAt = (file: DataView, at: number): number =>
  byteAt(file, at) * 0x100 + byteAt(file, at + 1);
/** Four bytes, the highest first. */
export const fourBytesAt = (file: DataView, at: number): number =>
  twoBytesAt(file, at) * 0x1_0000 + twoBytesAt(file, at + 2);
