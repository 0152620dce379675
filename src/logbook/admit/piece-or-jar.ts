import type { Shop } from '../fold/fold';

type OfPiece = { readonly piece: string };

/** A piece, finished or not: a photo, a note or an outline may come years later. */
export const onPiece = ({ piece }: OfPiece, { pieces }: Shop): 'unknown-piece' | undefined =>
  pieces.has(piece) ? undefined : 'unknown-piece';

/** A piece that is being worked on. */
export const onOpenPiece = (entry: OfPiece, shop: Shop): 'unknown-piece' | 'piece-closed' | undefined =>
  onPiece(entry, shop) ?? (shop.pieces.get(entry.piece)?.closedMs === undefined ? undefined : 'piece-closed');

/** A jar, emptied or not. */
export const onJar = ({ jar }: { readonly jar: string }, { jars }: Shop): 'unknown-jar' | undefined =>
  jars.has(jar) ? undefined : 'unknown-jar';
