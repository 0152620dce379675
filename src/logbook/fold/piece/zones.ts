import type { Entry, Kind } from '../../entry';
import { groupBy } from '../../group-by';
import type { Shop } from '../fold';
import { type EntryInSi, entryInSi } from '../in-si';
import { onMarked } from './on-marked';

export type ZoneDescription = EntryInSi<'zone-described'>;
export type Outline = EntryInSi<'zone-drawn'>['outline'];
export type Photo = EntryInSi<'photographed'>;
export type Alignment = EntryInSi<'photos-aligned'>;
export type PieceNote = EntryInSi<'piece-noted'>;
export type Wording = EntryInSi<'record-worded'>;
export type Toner = EntryInSi<'toner-described'>;
export type PieceReading = EntryInSi<'colour-read'>;

/** A place on a piece, as it was last described. */
export interface Zone extends ZoneDescription {
  /** When it was marked. */
  readonly markedMs: number;
  /** Its newest outline on each photo that it is drawn on. */
  readonly outlines: ReadonlyMap<string, Outline>;
}

/** What was marked, photographed, written and read on a piece. */
export interface Documented {
  /** In the order in which they were marked. */
  readonly zones: readonly Zone[];
  readonly photos: readonly Photo[];
  readonly alignments: readonly Alignment[];
  readonly notes: readonly PieceNote[];
  readonly wording: Wording | undefined;
  /** Each as it was last described. */
  readonly toners: readonly Toner[];
  /** Colours read on the piece itself. */
  readonly readings: readonly PieceReading[];
}

type Of = Pick<Shop, 'records' | 'struck'>;
interface Known extends Pick<Of, 'struck'> {
  readonly all: Documented;
}
const known = new WeakMap<readonly Entry[], Known>();
const NONE: readonly Entry[] = [];

/**
 * What is documented of a piece, from its own entries. Only who looks at a piece asks, so that thousands of photos cost the start
 * nothing; worked out once for the same entries.
 */
export function documented(piece: string, { records, struck }: Of): Documented {
  const entries = records.get(piece) ?? NONE;
  const before = known.get(entries);
  if (before?.struck === struck) return before.all;
  const all = read(entries.filter(({ id }) => !struck.has(id)));
  known.set(entries, { struck, all });
  return all;
}

/** The zones of a piece, in the order in which they were marked. */
export const zonesOf = (piece: string, shop: Of): readonly Zone[] => documented(piece, shop).zones;

function read(entries: readonly Entry[]): Documented {
  const kinds = groupBy(entries, ({ kind }) => kind);
  const of = <K extends Kind>(kind: K): EntryInSi<K>[] =>
    (kinds.get(kind) ?? []).map((entry) => entryInSi(entry) as unknown as EntryInSi<K>);
  const described = of('zone-described');
  const photos = onMarked(of('photographed'), described);
  // What was drawn on a photo goes with it: one that is undone, or was of another piece, shows nothing here.
  const isHere = (id: string): boolean => photos.some(({ photo }) => photo === id);
  const toners = onMarked(of('toner-described'), described);
  return {
    zones: zonesFrom(
      described,
      of('zone-drawn').filter(({ photo }) => isHere(photo)),
    ),
    photos,
    alignments: of('photos-aligned').filter(({ under, over }) => isHere(under) && isHere(over)),
    notes: onMarked(of('piece-noted'), described),
    wording: of('record-worded').at(-1),
    toners: [...new Map(toners.map((toner) => [toner.toner, toner])).values()],
    readings: onMarked(of('colour-read'), described),
  };
}

function zonesFrom(described: readonly ZoneDescription[], drawn: readonly EntryInSi<'zone-drawn'>[]): Zone[] {
  const zones = new Map<string, Zone>();
  for (const line of described) {
    const { zoneId, atMs } = line;
    const markedMs = zones.get(zoneId)?.markedMs ?? atMs;
    const outlines = drawn
      .filter((one) => one.zoneId === zoneId)
      .map((one) => [one.photo, one.outline] as const);
    zones.set(zoneId, { ...line, markedMs, outlines: new Map(outlines) });
  }
  return [...zones.values()];
}
