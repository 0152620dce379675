import type { Entry } from '../../logbook/entry';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/pieces';
import { FILM_WORDS } from '../../words/piece/film';
import { COAT_WORDS, EVENT_WORDS } from '../../words/piece/piece';
import { OVERRIDE_WORDS, ruleWords } from '../../words/verdicts/reasons';
import { filmAsTyped, typedWords } from './film-as-typed';
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
}

/** Everything logged of a piece in time order, what was undone included. */
export function eventsOf(piece: Piece, shop: Shop): readonly PieceEvent[] {
  return (shop.records.get(piece.id) ?? []).flatMap((entry): PieceEvent[] => {
    const told = tell(entry, piece, shop);
    if (!told) return [];
    const [what, how = ''] = told;
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
      },
    ];
  });
}

function tell(entry: Entry, piece: Piece, { jars }: Shop): readonly [what: string, how?: string] | undefined {
  switch (entry.kind) {
    case 'piece-started':
      return [EVENT_WORDS.started, entry.name];
    case 'piece-changed':
      return [EVENT_WORDS.changed, entry.name ?? ''];
    case 'piece-closed':
      return [EVENT_WORDS.closed];
    case 'coat-laid':
      return coatLine(entry.id, entry.jar, piece, jars) ?? [COAT_WORDS.ways[entry.how]];
    case 'sanded':
      return [EVENT_WORDS.sanded[entry.stage], sandingWords(entry)];
    case 'hold-overridden':
      return [OVERRIDE_WORDS.event, OVERRIDE_WORDS.eventText(ruleWords(entry.rule), entry.reason)];
    case 'checked':
      return [EVENT_WORDS.checks[entry.test][entry.result]];
    default:
      return oldFinishLine(entry);
  }
}

function coatLine(
  id: string,
  jarId: string,
  { coats }: Piece,
  jars: Shop['jars'],
): readonly [string, string] | undefined {
  const index = coats.findIndex((coat) => coat.id === id);
  const coat = coats[index];
  if (!coat) return undefined;
  const jar = jars.get(jarId)?.name ?? COAT_WORDS.gone;
  const laid = COAT_WORDS.laid(COAT_WORDS.ways[coat.how], filmAsTyped(coat.film));
  return [FILM_WORDS.coat(index + 1), `${laid}. ${COAT_WORDS.fromJar(jar)}.`];
}

function sandingWords({ removed, grit, isUsual }: Extract<Entry, { kind: 'sanded' }>): string {
  const amount = typedWords(removed);
  const taken = isUsual ? EVENT_WORDS.removedUsual(amount) : EVENT_WORDS.removed(amount);
  return grit ? `${taken}, ${EVENT_WORDS.grit(grit)}` : taken;
}
