import * as v from 'valibot';
import { COUNTS, LIMITS } from '../../limits';
import { typed } from '../../typed';
import { entryOf, Id, Name, Note, Point } from '../envelope';
import { BASES } from './piece';

/** What is repaired at a place on a piece. */
export const ZONE_SORTS = ['chip', 'fissure', 'wear', 'colour-loss', 'overspray', 'whole'] as const;

const Side = v.exactOptional(typed(LIMITS.zoneSide));

/** A place on a piece. A description replaces the one before it, whole; the first of an id marks the zone. */
export const ZONE_KINDS = {
  'zone-described': entryOf('zone-described', {
    piece: Id,
    zoneId: Id,
    name: Name,
    is: v.picklist(ZONE_SORTS),
    length: Side,
    width: Side,
    /** Where length and width do not tell it. */
    area: v.exactOptional(typed(LIMITS.zoneArea)),
    depth: v.exactOptional(typed(LIMITS.zoneDepth)),
    /** How far new material reaches over what is sound. */
    overspray: Side,
    /** What lies under its first coat, where that is not what lies under the piece's. */
    base: v.exactOptional(v.picklist(BASES)),
    note: v.exactOptional(Note),
  }),
  /** Its outline on a photo of the piece, as shares of the photo's width and height. */
  'zone-drawn': entryOf('zone-drawn', {
    piece: Id,
    zoneId: Id,
    photo: Id,
    outline: v.pipe(v.array(Point), v.minLength(COUNTS.outline.lowest), v.maxLength(COUNTS.outline.highest)),
  }),
};
