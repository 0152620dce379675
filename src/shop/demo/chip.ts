import { DEMO_CHIP } from '../../words/demo';
import type { Pen } from './pen';

/** Drawn by the app, so that it was made from no file. */
const NO_ORIGINAL = '0'.repeat(64);
/** Size of the pictures of the demo, px. */
export const DEMO_PHOTO = { width: 960, height: 720 } as const;
/** The chip as it lies on the pictures, as shares of width and height. */
export const CHIP_OUTLINE = [
  [0.4, 0.46],
  [0.47, 0.42],
  [0.57, 0.44],
  [0.62, 0.51],
  [0.55, 0.57],
  [0.44, 0.55],
] as const;

/** A chip found on a lower edge, photographed in three lights and drawn, ready to be filled drop by drop. */
export function markChip(pen: Pen, piece: string): void {
  const zoneId = pen.newId();
  const mm = (text: string) => ({ text, unit: 'mm' }) as const;
  pen.write(
    {
      kind: 'zone-described',
      piece,
      zoneId,
      name: DEMO_CHIP.name,
      is: 'chip',
      length: mm('14'),
      width: mm('6'),
      depth: mm('0.18'),
      note: DEMO_CHIP.note,
    },
    pen.daysAgo(1, 15),
  );
  const lights = [
    { light: 'plain' },
    { light: 'raking', rakingFrom: 'left' },
    { light: 'uv', text: DEMO_CHIP.uv },
  ] as const;
  lights.forEach((seen, i) => {
    const photo = pen.newId();
    const said = { piece, zoneId, photo, stage: 'before', ...DEMO_PHOTO, original: NO_ORIGINAL } as const;
    pen.write({ kind: 'photographed', ...said, ...seen }, pen.daysAgo(1, 15, 5 + i));
    const outline = CHIP_OUTLINE.map(([x, y]): [number, number] => [x, y]);
    if (i === 0) pen.write({ kind: 'zone-drawn', piece, zoneId, photo, outline }, pen.daysAgo(1, 15, 10));
  });
}
