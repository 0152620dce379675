import type { WaitFor } from '../step';
import { atBench, hours, minutes, type StepDraft, wait } from './parts';

const FILLER_DRIES = hours(24, 48, 72);
export const SEALER_DRIES = hours(1, 2, 4);

/** The waits of what stands beside the finish, at 20 C: common practice, no source. The product's sheet outranks them. */
export const BESIDE_WAITS: Readonly<Partial<Record<WaitFor, ReturnType<typeof hours>>>> = {
  'filler-dry': FILLER_DRIES,
  'paste-soft': minutes(45, 60, 90),
  clamped: hours(12, 24, 24),
};

/** What open pores ask for on bare wood, before the first coat: filler with its days, sanded back, and a grain sealer. */
export const OPEN_PORES: readonly StepDraft[] = [
  atBench('pore-fill', 30),
  wait('filler-dry', FILLER_DRIES),
  atBench('scuff', 30),
  atBench('grain-seal', 15),
  wait('rest', SEALER_DRIES),
];
