import type { Lines } from '../in-si';

/** Which piece each zone is on. What more there is to a zone, only who looks at its piece asks (`zones.ts`). */
export const foldZonePieces = (lines: Lines) => ({
  zonePieces: new Map(lines.of('zone-described').map(({ zoneId, piece }) => [zoneId, piece])) as ReadonlyMap<
    string,
    string
  >,
});
