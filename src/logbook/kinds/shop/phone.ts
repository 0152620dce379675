import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { entryOf, Name } from '../envelope';

export const PHONE_KINDS = {
  /** What a phone of the shop is called; `phone` is its mark in the ids of what is logged on it. */
  'phone-named': entryOf('phone-named', {
    phone: v.pipe(v.string(), v.regex(/^[0-9a-f]{10}$/, LOGBOOK_WORDS.notAnId)),
    name: Name,
  }),
};
