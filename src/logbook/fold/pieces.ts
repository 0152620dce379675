import type { Lines, Told } from './told';

export type Coat = Told<'coat-laid'>;
export type Sanding = Told<'sanded'>;
export type Check = Told<'checked'>;

type Description = Pick<Told<'piece-started'>, 'name' | 'base' | 'oldFilm' | 'area' | 'note'>;

/** A piece as it is now, with everything done to it in time order. */
export interface Piece extends Description {
  readonly id: string;
  readonly startedMs: number;
  readonly closedMs: number | undefined;
  readonly coats: readonly Coat[];
  readonly sandings: readonly Sanding[];
  readonly checks: readonly Check[];
}

/** The pieces by id, and the ids of entries whose piece is not there: struck, or still on another phone. */
export function foldPieces(lines: Lines) {
  const pieces = new Map<string, Piece>();
  const changes = onPieces(lines.of('piece-changed'));
  const closings = onPieces(lines.of('piece-closed'));
  const coats = onPieces(lines.of('coat-laid'));
  const sandings = onPieces(lines.of('sanded'));
  const checks = onPieces(lines.of('checked'));
  for (const line of lines.of('piece-started')) {
    const { piece: id, atMs: startedMs } = line;
    if (pieces.has(id)) continue;
    const described = Object.assign({}, description(line), ...(changes.get(id) ?? NONE).map(description));
    pieces.set(id, {
      ...(described as Description),
      id,
      startedMs,
      closedMs: closings.get(id)?.at(-1)?.atMs,
      coats: coats.get(id) ?? NONE,
      sandings: sandings.get(id) ?? NONE,
      checks: checks.get(id) ?? NONE,
    });
  }
  const unplaced = [changes, closings, coats, sandings, checks].flatMap((some) =>
    [...some].flatMap(([id, work]) => (pieces.has(id) ? [] : work.map((line) => line.id))),
  );
  return { pieces: pieces as ReadonlyMap<string, Piece>, unplaced: unplaced as readonly string[] };
}

interface OnPiece {
  readonly id: string;
  readonly piece: string;
}
const NONE: readonly never[] = [];
const sorted = new WeakMap<readonly OnPiece[], ReadonlyMap<string, readonly OnPiece[]>>();

/** The lines of each piece, in time order. Lines that have not changed, which is most of ten years, are sorted once. */
function onPieces<Line extends OnPiece>(some: readonly Line[]): ReadonlyMap<string, readonly Line[]> {
  const known = sorted.get(some);
  if (known) return known as ReadonlyMap<string, readonly Line[]>;
  const pieces = new Map<string, Line[]>();
  for (const line of some) {
    const others = pieces.get(line.piece);
    if (others) others.push(line);
    else pieces.set(line.piece, [line]);
  }
  sorted.set(some, pieces);
  return pieces;
}

function description<Line extends Partial<Description>>(line: Line): Partial<Description> {
  const { name, base, oldFilm, area, note } = line;
  const given = Object.entries({ name, base, oldFilm, area, note }).filter(
    ([, value]) => value !== undefined,
  );
  return Object.fromEntries(given);
}
