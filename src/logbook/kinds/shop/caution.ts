import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { entryOf, TableKey } from '../envelope';
import { CAUTION_ACTS, mayBeSilenced } from './caution-acts';

const Cautions = v.pipe(v.array(TableKey), v.minLength(1, LOGBOOK_WORDS.empty));

export const CAUTION_KINDS = {
  'cautions-read': entryOf('cautions-read', { act: v.picklist(CAUTION_ACTS), cautions: Cautions }),
  'caution-silenced': entryOf('caution-silenced', {
    caution: v.pipe(TableKey, v.check(mayBeSilenced, LOGBOOK_WORDS.alwaysShown)),
    silenced: v.boolean(),
  }),
};
