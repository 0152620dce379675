import type { OldFinishFinding } from '../../../science/old-finish/classify';
import { OLD_CLASSES, type OldClass } from '../../../science/old-finish/old-finish';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';

/** The name of a class; what is opaque and dries by oil is paint. */
export const classWords = (finish: OldClass, isOpaque: boolean): string =>
  finish === 'oil-varnish' && isOpaque ? WORDS.paint : WORDS.classes[finish];

/** What the old finish is likely to be: "Likely shellac". */
export const findingWords = ({ finish, odds }: OldFinishFinding, isOpaque: boolean): string =>
  finish === 'unknown' || odds === 'open' ? WORDS.odds.open : WORDS.odds[odds](classWords(finish, isOpaque));

/** The classes, the likeliest first. */
export const byShare = ({ shares }: OldFinishFinding): readonly OldClass[] =>
  [...OLD_CLASSES].sort((one, other) => shares[other] - shares[one]);
