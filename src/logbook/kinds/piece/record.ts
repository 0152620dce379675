import * as v from 'valibot';
import { entryOf, Id, Note } from '../envelope';

const Text = v.exactOptional(Note);

export const RECORD_KINDS = {
  /** A private note stays out of whatever is shared. */
  'piece-noted': entryOf('piece-noted', {
    piece: Id,
    zoneId: v.exactOptional(Id),
    text: Note,
    isPrivate: v.boolean(),
  }),
  /** What a person wrote into the record; it replaces what was written before, whole. */
  'record-worded': entryOf('record-worded', {
    piece: Id,
    asked: Text,
    proposed: Text,
    undoing: Text,
    disclosure: Text,
    care: Text,
  }),
};
