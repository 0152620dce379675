import type { Photo } from '../../../logbook/fold/piece/zones';
import { PHOTO_WORDS as WORDS } from '../../../words/piece/photo';
import { dateWords } from '../../../words/times';

/** A photo in one line: "Before, raking light from the left, 2 Mar". */
export function photoLine({ stage, light, rakingFrom, atMs }: Photo, nowMs: number): string {
  const how =
    light === 'raking' && rakingFrom
      ? WORDS.rakingFrom(WORDS.froms[rakingFrom].label.toLowerCase())
      : WORDS.lightNames[light];
  return WORDS.line(WORDS.stages[stage].label, how, dateWords(atMs, nowMs));
}
