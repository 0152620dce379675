import { type ActionNeeds, type Logged, log, type Said } from './log';

/** Marks a coat, now or at the instant given. */
export const layCoat = (needs: ActionNeeds, said: Said<'coat-laid'>, atMs?: number): Logged<'coat-laid'> =>
  log(needs, 'coat-laid', said, atMs);

/** Marks filler, filler paste, grain sealer or glue. */
export const layGround = (
  needs: ActionNeeds,
  said: Said<'ground-laid'>,
  atMs?: number,
): Logged<'ground-laid'> => log(needs, 'ground-laid', said, atMs);

/** Marks a sanding and what it took off. */
export const sand = (needs: ActionNeeds, said: Said<'sanded'>, atMs?: number): Logged<'sanded'> =>
  log(needs, 'sanded', said, atMs);

/** Marks what the film did when it was tried. */
export const logCheck = (needs: ActionNeeds, said: Said<'checked'>, atMs?: number): Logged<'checked'> =>
  log(needs, 'checked', said, atMs);
