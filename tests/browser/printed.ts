import { execFileSync } from 'node:child_process';

// A printed page, read by an outside reader: each word, and where it stands.

export interface Word {
  readonly page: number;
  readonly text: string;
  readonly box: readonly [left: number, top: number, right: number, bottom: number];
}
export interface Printed {
  readonly pages: readonly (readonly [width: number, height: number])[];
  readonly words: readonly Word[];
}

/** The words of a PDF with the boxes that they stand in, points (1/72 in). */
export function read(pdf: Buffer): Printed {
  const xml = execFileSync('pdftotext', ['-bbox', '-', '-'], { encoding: 'utf8', input: pdf });
  const pages: [number, number][] = [];
  const words: Word[] = [];
  const TAG =
    /<page width="([\d.]+)" height="([\d.]+)">|<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">([^<]*)</g;
  for (const [, width, height, left, top, right, bottom, text] of xml.matchAll(TAG))
    if (width !== undefined) pages.push([Number(width), Number(height)]);
    else
      words.push({
        page: pages.length - 1,
        text: plain(text ?? ''),
        box: [Number(left), Number(top), Number(right), Number(bottom)],
      });
  return { pages, words };
}
const plain = (text: string): string =>
  text.replace(
    /&(quot|apos|lt|gt|amp);/g,
    (_, name: string) => ({ quot: '"', apos: "'", lt: '<', gt: '>', amp: '&' })[name] ?? '',
  );

const MARGIN_PT = (14 / 25.4) * 72;
/** A box is as high as its letters could be; the ink is in its midst. */
const ink = ([left, top, right, bottom]: Word['box']): Word['box'] => {
  const slack = 0.2 * (bottom - top);
  return [left, top + slack, right, bottom - slack];
};
const overlaps = (one: Word, other: Word): boolean => {
  const [a, b] = [ink(one.box), ink(other.box)];
  const width = Math.min(a[2], b[2]) - Math.max(a[0], b[0]);
  const height = Math.min(a[3], b[3]) - Math.max(a[1], b[1]);
  return one.page === other.page && width > 1 && height > 0;
};

/** Whether a word stands within the margins of its page. */
export function isInside({ box, page }: Word, pages: Printed['pages']): boolean {
  const [width, height] = pages[page] ?? [0, 0];
  return (
    box[0] > MARGIN_PT - 1 &&
    box[2] < width - MARGIN_PT + 1 &&
    box[1] > MARGIN_PT - 6 &&
    box[3] < height - MARGIN_PT + 6
  );
}

/** The words that are printed over each other. */
export const overEachOther = (words: readonly Word[]): string[] =>
  words.flatMap((word, i) =>
    words
      .slice(i + 1)
      .filter((other) => overlaps(word, other))
      .map((other) => `${word.text} / ${other.text}`),
  );
