import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Marks a sanding and what it took off. */
export const sand = (needs: ActionNeeds, said: Said<'sanded'>, atMs?: number): Logged<'sanded'> =>
  log(needs, 'sanded', said, atMs);
