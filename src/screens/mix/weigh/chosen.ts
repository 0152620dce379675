import { remembered } from '../../../parts/kept/remembered';

export const DIVISIONS = ['0.001', '0.01', '0.1', '1'] as const;
export type Division = (typeof DIVISIONS)[number];
export const TARINGS = ['running', 'tared'] as const;
export type Taring = (typeof TARINGS)[number];

/** The scale of this bench, as it was last said. */
export const division = remembered<Division>('coatwait-scale', '0.01', (text): text is Division =>
  (DIVISIONS as readonly string[]).includes(text),
);
/** Whether the scale is tared between ingredients. */
export const taring = remembered<Taring>('coatwait-taring', 'running', (text): text is Taring =>
  (TARINGS as readonly string[]).includes(text),
);
