import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { type Zone, zonesOf } from '../../logbook/fold/piece/zones';

/**
 * A stack that dries on its own: a piece as a whole, or a place on it. Its id is the piece's, or the zone's; a piece with no zone
 * marked is its one stand, untouched.
 */
export interface Stand {
  readonly id: string;
  readonly zone: Zone | undefined;
  /** The piece as this place sees it: what was done to all of it, and what was done here. */
  readonly piece: Piece;
}

type Of = Pick<Shop, 'pieces' | 'records' | 'struck' | 'corrected' | 'zonePieces'>;
interface Known {
  readonly zones: readonly Zone[];
  readonly stands: readonly Stand[];
}
const known = new WeakMap<Piece, Known>();
const zoned = new WeakMap<Shop['zonePieces'], ReadonlySet<string>>();
const NONE: readonly never[] = [];

/** The pieces that any zone is on: few, so that nothing is asked of the others. */
function haveZones({ zonePieces }: Of): ReadonlySet<string> {
  const pieces = zoned.get(zonePieces) ?? new Set(zonePieces.values());
  zoned.set(zonePieces, pieces);
  return pieces;
}

/** Where a piece dries: the whole first, then each zone in the order in which they were marked. */
export function standsOf(piece: Piece, shop: Of): readonly Stand[] {
  const zones = haveZones(shop).has(piece.id) ? zonesOf(piece.id, shop) : NONE;
  const before = known.get(piece);
  if (before?.zones === zones) return before.stands;
  const stands = [standOf(piece, zones), ...zones.map((zone) => standOf(piece, zones, zone))];
  known.set(piece, { zones, stands });
  return stands;
}

/** The stand of that id; undefined where there is none. */
export function standById(id: string, shop: Of): Stand | undefined {
  const piece = shop.pieces.get(shop.zonePieces.get(id) ?? id);
  return piece && standsOf(piece, shop).find((stand) => stand.id === id);
}

interface OnZone {
  readonly zoneId?: string;
}

function standOf(piece: Piece, zones: readonly Zone[], zone?: Zone): Stand {
  if (zones.length === 0) return { id: piece.id, zone, piece };
  const isHere = ({ zoneId }: OnZone): boolean => zoneId === undefined || zoneId === zone?.zoneId;
  const isOwn = ({ zoneId }: OnZone): boolean => zoneId === zone?.zoneId;
  const seen: Piece = {
    ...piece,
    base: zone?.base ?? piece.base,
    coats: piece.coats.filter(isHere),
    sandings: piece.sandings.filter(isHere),
    checks: piece.checks.filter(isOwn),
    grounds: piece.grounds.filter(isHere),
  };
  return { id: zone?.zoneId ?? piece.id, zone, piece: seen };
}
