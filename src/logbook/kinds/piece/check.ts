import * as v from 'valibot';
import { entryOf, Id } from '../envelope';

export const CHECK_TESTS = ['print', 'gum', 'smell', 'blush'] as const;
export const CHECK_RESULTS = ['passes', 'fails'] as const;

export const CHECK_KINDS = {
  checked: entryOf(
    'checked',
    {
      piece: Id,
      test: v.picklist(CHECK_TESTS),
      result: v.picklist(CHECK_RESULTS),
    },
    { zoneId: v.exactOptional(Id) },
  ),
};
