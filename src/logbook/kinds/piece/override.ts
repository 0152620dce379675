import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { COUNTS } from '../../limits';
import { entryOf, Id, Note, TableKey } from '../envelope';

const { reason } = COUNTS;
/** A reason in writing: long enough to say something. */
export const WrittenReason = v.pipe(
  Note,
  v.trim(),
  v.minLength(reason.lowest, LOGBOOK_WORDS.tooShort(reason.lowest)),
);

/** A hold that the person sets aside, in writing. The names of rule and act are free: a new rule needs no new version. */
export const OVERRIDE_KINDS = {
  'hold-overridden': entryOf('hold-overridden', {
    piece: Id,
    rule: TableKey,
    act: TableKey,
    reason: WrittenReason,
    zoneId: v.exactOptional(Id),
  }),
};
