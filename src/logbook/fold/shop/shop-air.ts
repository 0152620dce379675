import type { EntryInSi, Lines } from '../in-si';

export type Room = EntryInSi<'room-described'>;
export type Spraying = EntryInSi<'spraying-ended'>;

/** A cartridge, prefilter or booth filter, with what it has worn since it was opened. */
export interface Filter
  extends Pick<EntryInSi<'filter-opened'>, 'part' | 'name' | 'wear' | 'open' | 'basis'> {
  readonly id: string;
  readonly openedMs: number;
  readonly thrownOutMs: number | undefined;
  readonly wornS: number;
}

/** The room, the sprayings in it, and the filters by id. */
export function foldShopAir(lines: Lines) {
  const sprayings = lines.of('spraying-ended');
  const filters = new Map<string, Filter>();
  for (const line of lines.of('filter-opened'))
    if (!filters.has(line.filter)) filters.set(line.filter, open(line, wornS(sprayings, line.filter)));
  for (const { filter, atMs } of lines.of('filter-thrown-out')) {
    const used = filters.get(filter);
    if (used) filters.set(filter, { ...used, thrownOutMs: atMs });
  }
  return {
    room: lines.of('room-described').at(-1),
    sprayings,
    filters: filters as ReadonlyMap<string, Filter>,
  };
}

const wornS = (sprayings: readonly Spraying[], filter: string): number =>
  sprayings.filter(({ filters }) => filters.includes(filter)).reduce((sum, { lasted }) => sum + lasted.si, 0);

function open(line: EntryInSi<'filter-opened'>, worn: number): Filter {
  const { filter, part, name, atMs } = line;
  return {
    id: filter,
    part,
    name,
    openedMs: atMs,
    thrownOutMs: undefined,
    wornS: worn,
    ...(line.wear && { wear: line.wear }),
    ...(line.open && { open: line.open }),
    ...(line.basis !== undefined && { basis: line.basis }),
  };
}
