import type { ColourDifference } from './delta-e-00';

/** What a painter would say of a sample beside its target. */
export type PainterDirection = 'light' | 'dark' | 'yellow' | 'blue' | 'red' | 'green' | 'clean' | 'dirty';
export type PainterSize = 'hint' | 'little' | 'clearly' | 'far';

/** One remark: "a little too yellow" is `{ size: 'little', direction: 'yellow' }`. */
export interface PainterRemark {
  readonly size: PainterSize;
  readonly direction: PainterDirection;
  /** Size of this part of the difference, in deltaE00 units. */
  readonly amountE00: number;
}

// Under this part of a difference a remark would be noise (common practice, no source).
const SMALLEST_REMARK_E00 = 0.2;
/** More at once help nobody (judgement, no source). */
const MOST_REMARKS = 2;

/** The size word of a part. Common practice, no source: hint under 0.7, a little to 1.5, clearly to 3, far beyond. */
export function painterSize(amountE00: number): PainterSize {
  if (amountE00 < 0.7) return 'hint';
  if (amountE00 <= 1.5) return 'little';
  return amountE00 <= 3 ? 'clearly' : 'far';
}

function remark(amount: number, more: PainterDirection, less: PainterDirection): PainterRemark {
  const amountE00 = Math.abs(amount);
  return { size: painterSize(amountE00), direction: amount > 0 ? more : less, amountE00 };
}

/** Lighter with more colour is cleaner, darker with less is dirtier: one remark when the two go together. */
function goTogether({ dL, dC }: ColourDifference): boolean {
  return dL * dC > 0 && Math.min(Math.abs(dL), Math.abs(dC)) >= Math.max(Math.abs(dL), Math.abs(dC)) / 2;
}

/** What a painter would say of the sample: at most two remarks, the larger first; none when nothing can be told. */
export function paintersWords(difference: ColourDifference): PainterRemark[] {
  const { dL, dC, redward, yellowward } = difference;
  const remarks = goTogether(difference)
    ? [remark(Math.sign(dL) * Math.hypot(dL, dC), 'clean', 'dirty'), hueRemark(difference)]
    : [remark(dL, 'light', 'dark'), remark(yellowward, 'yellow', 'blue'), remark(redward, 'red', 'green')];
  return remarks
    .filter(({ amountE00 }) => amountE00 >= SMALLEST_REMARK_E00)
    .sort((one, other) => other.amountE00 - one.amountE00)
    .slice(0, MOST_REMARKS);
}

/** The hue part alone, said on whichever of the two axes it mostly lies. */
function hueRemark({ dH, hueDeg }: ColourDifference): PainterRemark {
  const redward = -dH * Math.sin((hueDeg * Math.PI) / 180);
  const yellowward = dH * Math.cos((hueDeg * Math.PI) / 180);
  return Math.abs(redward) >= Math.abs(yellowward)
    ? remark(redward, 'red', 'green')
    : remark(yellowward, 'yellow', 'blue');
}
