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
  const pieces = new Map<string, Growing<Piece>>();
  const unplaced: string[] = [];
  for (const line of lines.of('piece-started'))
    if (!pieces.has(line.piece)) pieces.set(line.piece, start(line));

  const place = <Line extends OnPiece>(
    some: readonly Line[],
    put: (piece: Growing<Piece>, line: Line) => void,
  ) => {
    for (const line of some) {
      const piece = pieces.get(line.piece);
      if (piece) put(piece, line);
      else unplaced.push(line.id);
    }
  };
  place(lines.of('piece-changed'), (piece, line) => Object.assign(piece, description(line)));
  place(lines.of('piece-closed'), (piece, { atMs }) => Object.assign(piece, { closedMs: atMs }));
  place(lines.of('coat-laid'), (piece, line) => piece.coats.push(line));
  place(lines.of('sanded'), (piece, line) => piece.sandings.push(line));
  place(lines.of('checked'), (piece, line) => piece.checks.push(line));
  return { pieces: pieces as ReadonlyMap<string, Piece>, unplaced: unplaced as readonly string[] };
}

interface OnPiece {
  readonly id: string;
  readonly piece: string;
}
type Growing<T> = {
  -readonly [Key in keyof T]: T[Key] extends readonly (infer Item)[] ? Item[] : T[Key];
};

const start = (line: Told<'piece-started'>): Growing<Piece> => ({
  ...(description(line) as Description),
  id: line.piece,
  startedMs: line.atMs,
  closedMs: undefined,
  coats: [],
  sandings: [],
  checks: [],
});

function description<Line extends Partial<Description>>(line: Line): Partial<Description> {
  const { name, base, oldFilm, area, note } = line;
  const given = Object.entries({ name, base, oldFilm, area, note }).filter(
    ([, value]) => value !== undefined,
  );
  return Object.fromEntries(given);
}
