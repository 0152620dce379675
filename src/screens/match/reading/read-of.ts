import type { ColourSaid } from '../../../actions/match/read-colour';
import { parseNumber } from '../../../logbook/as-typed';
import type { Match } from '../../../logbook/fold/piece/matches';
import type { Draft } from '../../../parts/fields/typed-field';
import { MATCH_WORDS } from '../../../words/match/match';
import { READ_WORDS as WORDS } from '../../../words/match/read';

// What is read on a piece itself is read where its toner is.
type As = Exclude<ColourSaid['of']['as'], 'on-piece'>;

/** What is being read, as the address says it: `target`, `trial/<id>`, `card`, `tint/<id>`, `ground`, `toned`. */
export interface ReadOf {
  readonly as: As;
  readonly id: string;
  readonly title: string;
}

/** The thing to read that an address names; undefined where this match has no such thing. */
export function readOf(
  match: Match,
  [as = '', id = '']: readonly string[],
  name: (ingredient: string) => string,
): ReadOf | undefined {
  if (as === 'target' || as === 'card' || as === 'ground' || as === 'toned')
    return { as, id, title: WORDS.titles[as] };
  if (as === 'tint') return { as, id, title: WORDS.tint(name(id)) };
  const trial = as === 'trial' ? match.trials.find((one) => one.id === id) : undefined;
  return trial && { as: 'trial', id, title: MATCH_WORDS.readTrial(trial.number) };
}

/** Where a reading of this belongs once it is logged. */
export function pageOf({ as, id }: ReadOf): readonly string[] {
  if (as === 'trial') return ['trial', id];
  return { target: ['target'], card: ['shift'], tint: ['tinters'], ground: ['toner'], toned: ['toner'] }[as];
}

/** The same for the logbook. */
export function ofSaid({ as, id }: ReadOf, share: Draft<'%'>, passes: string): ColourSaid['of'] {
  switch (as) {
    case 'trial':
      return { as, trial: id };
    case 'tint':
      return { as, tinter: id, share };
    case 'toned':
      return { as, passes: parseNumber(passes) ?? Number.NaN };
    default:
      return { as };
  }
}
