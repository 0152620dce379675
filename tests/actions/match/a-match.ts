import { expect } from 'vitest';
import { describeMatch, type MatchSaid } from '../../../src/actions/match/describe-match';
import type { OpenShop } from '../../../src/actions/shop';
import type { Match } from '../../../src/logbook/fold/piece/matches';
import { done } from '../a-shop';

/** What is said of a match for a cream edge. */
export const SAID: MatchSaid = {
  name: 'Cream',
  place: 'edge',
  through: 'bare',
  white: 'D65/10',
  base: { name: 'White lacquer' },
  tinters: [{ name: 'Ochre', like: 'ochre' }],
  division: { text: '0.01', unit: 'g' },
  letDowns: ['let-down-10'],
};

export const grams = (text: string) => ({ text, unit: 'g' }) as const;
export const bare = (text: string) => ({ text, unit: 'ratio' }) as const;

/** The match of that id as it stands in the shop. */
export const matchOf = ({ shop }: OpenShop, match: string): Match =>
  shop.value.matches.get(match) ?? expect.unreachable();

/** A match that was just described. */
export async function aMatch(open: OpenShop, said = SAID): Promise<Match> {
  const { match } = done(await describeMatch(open.needs, said));
  return matchOf(open, match);
}
