import { groupBy } from '../../group-by';
import { type EntryInSi, grewFrom, type Lines } from '../in-si';
import { onMarked } from './on-marked';

export type Coat = EntryInSi<'coat-laid'>;
export type Sanding = EntryInSi<'sanded'>;
export type Check = EntryInSi<'checked'>;
export type Ground = EntryInSi<'ground-laid'>;

type Description = Pick<EntryInSi<'piece-started'>, 'name' | 'base' | 'oldFilm' | 'area' | 'note'>;

/** A piece as it is now, with everything done to it in time order. */
export interface Piece extends Description {
  readonly id: string;
  readonly startedMs: number;
  readonly closedMs: number | undefined;
  readonly coats: readonly Coat[];
  readonly sandings: readonly Sanding[];
  readonly checks: readonly Check[];
  readonly grounds: readonly Ground[];
}

/** The pieces by id, and the ids of entries whose piece is not there: struck, or still on another phone. */
export function foldPieces(lines: Lines) {
  const pieces = new Map<string, Piece>();
  const changes = onPieces(lines.of('piece-changed'));
  const closings = onPieces(lines.of('piece-closed'));
  const coats = onPieces(lines.of('coat-laid'));
  const sandings = onPieces(lines.of('sanded'));
  const checks = onPieces(lines.of('checked'));
  const grounds = onPieces(lines.of('ground-laid'));
  const zones = onPieces(lines.of('zone-described'));
  for (const line of lines.of('piece-started')) {
    const { piece: id } = line;
    if (pieces.has(id)) continue;
    const of = <Line>(some: OfPieces<Line>) => some.get(id) ?? NONE;
    const work: Work = [
      of(changes),
      of(closings),
      of(coats),
      of(sandings),
      of(checks),
      of(grounds),
      of(zones),
    ];
    pieces.set(id, pieceFrom(line, work));
  }
  const unplaced = [changes, closings, coats, sandings, checks, grounds].flatMap((some) =>
    [...some].flatMap(([id, work]) => (pieces.has(id) ? [] : work.map((line) => line.id))),
  );
  return { pieces: pieces as ReadonlyMap<string, Piece>, unplaced: unplaced as readonly string[] };
}

type Work = readonly [
  changes: readonly EntryInSi<'piece-changed'>[],
  closings: readonly EntryInSi<'piece-closed'>[],
  coats: readonly Coat[],
  sandings: readonly Sanding[],
  checks: readonly Check[],
  grounds: readonly Ground[],
  zones: readonly EntryInSi<'zone-described'>[],
];
const folded = new WeakMap<EntryInSi<'piece-started'>, { readonly work: Work; readonly piece: Piece }>();

/** The piece that was begun so, with all the work on it; the same one as long as no work is added. */
function pieceFrom(begun: EntryInSi<'piece-started'>, work: Work): Piece {
  const known = folded.get(begun);
  if (known && work.every((lines, i) => lines === known.work[i])) return known.piece;
  const [changes, closings, coats, sandings, checks, grounds, zones] = work;
  const described = Object.assign({}, description(begun), ...changes.map(description)) as Description;
  const { piece: id, atMs: startedMs } = begun;
  const closedMs = closings.at(-1)?.atMs;
  const piece = {
    ...described,
    id,
    startedMs,
    closedMs,
    coats: onMarked(coats, zones),
    sandings: onMarked(sandings, zones),
    checks: onMarked(checks, zones),
    grounds: onMarked(grounds, zones),
  };
  folded.set(begun, { work, piece });
  return piece;
}

interface OnPiece {
  readonly id: string;
  readonly piece: string;
}
type OfPieces<Line> = ReadonlyMap<string, readonly Line[]>;
const NONE: readonly never[] = [];
const sorted = new WeakMap<readonly OnPiece[], OfPieces<OnPiece>>();

/** The lines of each piece, in time order. Of lines that have grown, which is nearly always, only what is new is sorted. */
function onPieces<Line extends OnPiece>(some: readonly Line[]): OfPieces<Line> {
  const known = sorted.get(some);
  if (known) return known as OfPieces<Line>;
  const before = grewFrom(some);
  const start = before && (sorted.get(before) as OfPieces<Line> | undefined);
  const pieces = start ? withMore(start, some.slice(before.length)) : groupBy(some, ({ piece }) => piece);
  sorted.set(some, pieces);
  return pieces;
}

function withMore<Line extends OnPiece>(pieces: OfPieces<Line>, more: readonly Line[]): OfPieces<Line> {
  const grown = new Map(pieces);
  for (const line of more) grown.set(line.piece, [...(grown.get(line.piece) ?? NONE), line]);
  return grown;
}

function description<Line extends Partial<Description>>(line: Line): Partial<Description> {
  const { name, base, oldFilm, area, note } = line;
  const given = Object.entries({ name, base, oldFilm, area, note }).filter(
    ([, value]) => value !== undefined,
  );
  return Object.fromEntries(given);
}
