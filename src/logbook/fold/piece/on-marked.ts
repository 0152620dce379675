interface Placed {
  readonly zoneId?: string;
}

/** The same without the place that it names. */
export function withoutPlace<Line extends object>(line: Line): Omit<Line, 'zoneId'> {
  const { zoneId: _, ...rest } = line as Line & Placed;
  return rest;
}

/** What names a place that is not on its piece, because another phone undid it or it was mistaken, counts for the whole of the piece. */
export function onMarked<Line extends Placed>(
  some: readonly Line[],
  zones: readonly { readonly zoneId: string }[],
): readonly Line[] {
  const isLost = ({ zoneId }: Placed): boolean =>
    zoneId !== undefined && !zones.some((zone) => zone.zoneId === zoneId);
  return some.some(isLost) ? some.map((line) => (isLost(line) ? (withoutPlace(line) as Line) : line)) : some;
}
