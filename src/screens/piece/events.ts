import type { Entry } from '../../logbook/entry';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { typedWords } from '../../parts/fields/typed-words';
import { linkTo } from '../../parts/frame/route';
import { matchOfJar } from '../../shop/colour/jars-of-match';
import { standsOf } from '../../shop/zone/stands';
import { MATCH_WORDS } from '../../words/match/match';
import { FILM_WORDS } from '../../words/piece/coat/film';
import { TWICE_WORDS } from '../../words/piece/coat/twice';
import { COAT_WORDS, EVENT_WORDS } from '../../words/piece/piece';
import { OVERRIDE_WORDS, ruleWords } from '../../words/verdicts/reasons';
import { filmAsTyped } from './coat/film-as-typed';
import { groundName, groundWait } from './ground/ground-words';
import { oldFinishLine } from './old-finish/old-finish-line';

/** One line of what was done to a piece. */
export interface PieceEvent {
  readonly id: string;
  readonly atMs: number;
  readonly what: string;
  readonly how: string;
  readonly isUndone: boolean;
  /** Whether a later line says it otherwise. */
  readonly isCorrected: boolean;
  /** An answer about lead is never undone, only corrected. */
  readonly isCorrectedInWriting: boolean;
  /** What it came from: each opens in one tap. */
  readonly opens: readonly Opened[];
}

/** A page that a line opens. */
export interface Opened {
  readonly href: string;
  readonly name: string;
}

/** Everything logged of a piece in time order, what was undone included. */
export function eventsOf(piece: Piece, shop: Shop): readonly PieceEvent[] {
  const stands = standsOf(piece, shop);
  return (shop.records.get(piece.id) ?? []).flatMap((entry): PieceEvent[] => {
    const zoneId = 'zoneId' in entry ? entry.zoneId : undefined;
    const stand = stands.find(({ zone }) => zone?.zoneId === zoneId);
    const told = tell(entry, stand?.piece ?? piece, shop);
    if (!told) return [];
    const [act, how = ''] = told;
    const what = stand?.zone ? EVENT_WORDS.at(act, stand.zone.name) : act;
    const { id, at } = entry;
    return [
      {
        id,
        atMs: Date.parse(at),
        what,
        how,
        isUndone: shop.struck.has(id),
        isCorrected: shop.corrected.has(id),
        isCorrectedInWriting: entry.kind === 'lead-tested',
        opens: openedBy(entry, shop),
      },
    ];
  });
}

function tell(entry: Entry, piece: Piece, shop: Shop): readonly [what: string, how?: string] | undefined {
  switch (entry.kind) {
    case 'piece-started':
      return [EVENT_WORDS.started, entry.name];
    case 'piece-changed':
      return [EVENT_WORDS.changed, entry.name ?? ''];
    case 'piece-closed':
      return [EVENT_WORDS.closed];
    case 'coat-laid':
      return coatLine(entry.id, entry.jar, piece, shop) ?? [COAT_WORDS.ways[entry.how]];
    case 'sanded':
      return [EVENT_WORDS.sanded[entry.stage], sandingWords(entry, shop)];
    case 'ground-laid':
      return [groundName(entry), groundWait(entry)];
    case 'coat-apart':
      return [TWICE_WORDS.event, TWICE_WORDS.kept];
    case 'hold-overridden':
      return [OVERRIDE_WORDS.event, OVERRIDE_WORDS.eventText(ruleWords(entry.rule), entry.reason)];
    case 'checked':
      return [EVENT_WORDS.checks[entry.test][entry.result]];
    case 'zone-described':
      return [EVENT_WORDS.marked, entry.note ?? ''];
    case 'photographed':
      return [EVENT_WORDS.photo, entry.text ?? ''];
    default:
      return oldFinishLine(entry);
  }
}

/** A coat opens its jar, the recipe in it, and the match that the recipe came from with its readings. */
function openedBy(entry: Entry, shop: Shop): readonly Opened[] {
  const jar = entry.kind === 'coat-laid' ? shop.jars.get(entry.jar) : undefined;
  if (!jar) return [];
  const recipe = shop.recipes.get(shop.weighUps.get(jar.weighUp ?? '')?.recipe ?? '');
  const match = matchOfJar(jar, shop);
  return [
    { href: linkTo('mix', 'jar', jar.id), name: MATCH_WORDS.jar(jar.name) },
    ...(recipe
      ? [{ href: linkTo('mix', 'recipe', recipe.id), name: MATCH_WORDS.recipe(recipe.name, recipe.version) }]
      : []),
    ...(match ? [{ href: linkTo('match', match.id), name: MATCH_WORDS.match(match.name) }] : []),
  ];
}

function coatLine(
  id: string,
  jarId: string,
  { coats }: Piece,
  { jars, settings }: Shop,
): readonly [string, string] | undefined {
  const index = coats.findIndex((coat) => coat.id === id);
  const coat = coats[index];
  if (!coat) return undefined;
  const laid = COAT_WORDS.laid(COAT_WORDS.ways[coat.how], filmAsTyped(coat.film, settings.units ?? 'metric'));
  // A jar that is there is named by its link.
  const from = jars.has(jarId) ? '' : ` ${COAT_WORDS.fromJar(COAT_WORDS.gone)}.`;
  return [FILM_WORDS.coat(index + 1), `${laid}.${from}`];
}

function sandingWords(
  { removed, grit, isUsual }: Extract<Entry, { kind: 'sanded' }>,
  { settings }: Shop,
): string {
  const amount = typedWords(removed, settings.units ?? 'metric');
  const taken = isUsual ? EVENT_WORDS.removedUsual(amount) : EVENT_WORDS.removed(amount);
  return grit ? `${taken}, ${EVENT_WORDS.grit(grit)}` : taken;
}
