import type { IconName } from '../../parts/blocks/icons';
import type { ColourVerdict } from '../../science/colour/verdict';
import { VERDICT_WORDS } from '../../words/match/match';

interface Look {
  readonly icon: IconName;
  readonly word: string;
  readonly kind: 'ready' | 'wait' | 'stop' | 'quiet';
}

/** How a verdict looks in a row: a shape and a word. */
export const VERDICT_LOOK: Record<ColourVerdict['kind'], Look> = {
  pass: { icon: 'ready', word: VERDICT_WORDS.pass, kind: 'ready' },
  'not-yet': { icon: 'waiting', word: VERDICT_WORDS['not-yet'], kind: 'wait' },
  'measure-again': { icon: 'caution', word: VERDICT_WORDS['measure-again'], kind: 'wait' },
  wet: { icon: 'note', word: VERDICT_WORDS.wet, kind: 'quiet' },
  'camera-ranks-only': { icon: 'note', word: VERDICT_WORDS['camera-ranks-only'], kind: 'quiet' },
};
