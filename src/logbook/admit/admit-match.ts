import type { Entry, EntryOf } from '../entry';
import type { Shop } from '../fold/fold';
import type { Match } from '../fold/piece/matches';
import { documented } from '../fold/piece/zones';

/** Why an entry of the match place does not fit the shop. */
export type MatchGround =
  | 'unknown-match'
  | 'unknown-toner'
  | 'unknown-trial'
  | 'trial-there-already'
  | 'unknown-ingredient'
  | 'unknown-piece'
  | 'unknown-recipe';

const onMatch = (
  { match: id }: { readonly match: string },
  { matches }: Shop,
  ground: (match: Match) => MatchGround | undefined = () => undefined,
): MatchGround | undefined => {
  const match = matches.get(id);
  return match ? ground(match) : 'unknown-match';
};
const onTrial = (said: { readonly match: string; readonly trial: string }, shop: Shop) =>
  onMatch(said, shop, ({ trials }) =>
    trials.some(({ id }) => id === said.trial) ? undefined : 'unknown-trial',
  );
const known = (ids: readonly string[], { ingredients }: Shop): MatchGround | undefined =>
  ids.every((id) => ingredients.has(id)) ? undefined : 'unknown-ingredient';

const isOfToner = (toner: string, piece: string | undefined, shop: Shop): boolean =>
  piece !== undefined && documented(piece, shop).toners.some((one) => one.toner === toner);
const onToner = (toner: string, piece: string | undefined, shop: Shop): MatchGround | undefined =>
  isOfToner(toner, piece, shop) ? undefined : 'unknown-toner';

/** What each kind of entry of the match place needs of the shop. */
export const MATCH_RULES = {
  'match-described': (
    { piece, base, clear, tinters }: EntryOf<'match-described'>,
    shop: Shop,
  ): MatchGround | undefined => {
    if (piece !== undefined && !shop.pieces.has(piece)) return 'unknown-piece';
    const named = tinters.map(({ ingredient }) => ingredient);
    return known([base, ...(clear === undefined ? [] : [clear]), ...named], shop);
  },
  'match-put-away': (entry: EntryOf<'match-put-away'>, shop: Shop) => onMatch(entry, shop),
  'trial-mixed': (entry: EntryOf<'trial-mixed'>, shop: Shop) =>
    onMatch(entry, shop, ({ trials, base, tinters }) => {
      if (trials.some(({ id }) => id === entry.trial)) return 'trial-there-already';
      const onBench = new Set([base, ...tinters.map(({ ingredient }) => ingredient)]);
      return entry.added.every(({ ingredient }) => onBench.has(ingredient))
        ? undefined
        : 'unknown-ingredient';
    }),
  'trial-accepted': (entry: EntryOf<'trial-accepted'>, shop: Shop) =>
    onTrial(entry, shop) ?? (shop.recipes.has(entry.recipe) ? undefined : ('unknown-recipe' as const)),
  'colour-read': ({ match, of, piece }: EntryOf<'colour-read'>, shop: Shop): MatchGround | undefined => {
    if (of.as === 'on-piece' || isOfToner(match, piece, shop)) return onToner(match, piece, shop);
    if (of.as === 'trial') return onTrial({ match, trial: of.trial }, shop);
    if (of.as === 'tint') return onMatch({ match }, shop) ?? known([of.tinter], shop);
    return onMatch({ match }, shop);
  },
  'hiding-read': ({ match, trial }: EntryOf<'hiding-read'>, shop: Shop) =>
    trial === undefined ? onMatch({ match }, shop) : onTrial({ match, trial }, shop),
};

/** Why striking an entry of the match place would take the ground from later work; undefined where it would not. */
export function matchLeansOn(entry: Entry, { matches, entries, struck }: Shop): 'still-used' | undefined {
  if (entry.kind === 'match-described') {
    const match = matches.get(entry.match);
    const isOnly = ![...entries.values()].some(
      (other) =>
        other.kind === 'match-described' &&
        other.match === entry.match &&
        other.id !== entry.id &&
        !struck.has(other.id),
    );
    return match && isOnly && match.trials.length + match.readings.length > 0 ? 'still-used' : undefined;
  }
  if (entry.kind !== 'trial-mixed') return undefined;
  const match = matches.get(entry.match);
  const last = match?.trials.at(-1);
  const isFree = last?.entry === entry.id && last.readings.length === 0 && match?.accepted === undefined;
  return isFree ? undefined : 'still-used';
}
