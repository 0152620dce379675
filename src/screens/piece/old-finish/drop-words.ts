import type { EntryOf } from '../../../logbook/entry';
import type { Typed } from '../../../logbook/typed';
import { unitWord } from '../../../words/frame/logbook';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';

type Drop = Pick<EntryOf<'spot-tested'>, 'reading' | 'isTopOnly'> & { readonly dwell: Typed };

/** What one drop did: "20 s: softens, then smooth". */
export const dropWords = ({ dwell, reading, isTopOnly }: Drop): string =>
  WORDS.answer(
    `${dwell.text} ${unitWord(dwell.unit)}`,
    WORDS.readings[reading].label.toLowerCase(),
    isTopOnly === true,
  );
