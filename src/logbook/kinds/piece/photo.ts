import * as v from 'valibot';
import { COUNTS } from '../../limits';
import { count, entryOf, Id, Note, Point } from '../envelope';

export const PHOTO_STAGES = ['before', 'during', 'after'] as const;
export const PHOTO_LIGHTS = ['plain', 'raking', 'uv', 'through'] as const;
export const RAKING_FROM = ['left', 'right', 'above', 'below'] as const;

const Mark = v.tuple([Point, Point]);

/** Photos of a piece; the picture itself is kept beside the logbook, on this device and in backups. */
export const PHOTO_KINDS = {
  photographed: entryOf('photographed', {
    piece: Id,
    zoneId: v.exactOptional(Id),
    photo: Id,
    stage: v.picklist(PHOTO_STAGES),
    light: v.picklist(PHOTO_LIGHTS),
    rakingFrom: v.exactOptional(v.picklist(RAKING_FROM)),
    text: v.exactOptional(Note),
    width: count(COUNTS.pixels),
    height: count(COUNTS.pixels),
    /** SHA-256 of the file that it was made from, in hex. */
    original: v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/)),
  }),
  /** The same two points on two photos, by which they are laid over each other. */
  'photos-aligned': entryOf('photos-aligned', {
    piece: Id,
    under: Id,
    over: Id,
    marks: v.object({ under: Mark, over: Mark }),
  }),
};
