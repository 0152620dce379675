import type { MatchSaid, TinterOnBench } from '../../../actions/match/describe-match';
import type { Shop } from '../../../logbook/fold/fold';
import type { Match } from '../../../logbook/fold/piece/matches';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { USUAL_NAMES } from '../../../logbook/kinds/piece/match';
import { LIMITS } from '../../../logbook/limits';
import type { Quantity } from '../../../logbook/typed';
import { type Draft, draftProblem } from '../../../parts/fields/typed-field';
import type { White } from '../../../science/colour/white-points';
import { FORM_WORDS as WORDS } from '../../../words/match/form';

export type UsualName = (typeof USUAL_NAMES)[number];
export const NEW_BASE = 'new';
/** A piece that is not in the log yet, and none at all: a test card, a spare part. */
export const NEW_PIECE = 'new';
export const NO_PIECE = 'none';
export const NEW_CLEAR = 'new';

/** A tinter that could stand on the bench: of the shop, or a usual one that the shop does not have. */
export interface Candidate {
  /** The ingredient's id, or `usual:` and the name. */
  readonly key: string;
  readonly label: string;
  readonly isInShop: boolean;
}

/** The form of a match as it stands; everything kept as typed. */
export interface MatchDraft {
  readonly name: string;
  /** A piece of the log, a new one or none; undefined until it is said. */
  readonly piece: string | undefined;
  readonly pieceName: string;
  readonly pieceBase: Piece['base'];
  readonly place: Match['place'];
  readonly through: Match['through'];
  readonly white: White;
  readonly base: string;
  readonly ticked: readonly string[];
  readonly likes: Readonly<Record<string, UsualName | 'none'>>;
  readonly division: Draft<'g'>;
  readonly letDowns: 'none' | 'ten' | 'both';
  readonly clear: string;
  readonly jarHolds: Draft<'g'>;
  readonly tolerance: Draft<'ratio'>;
  readonly yellowing: Draft<'ratio'>;
}

/** What every part of the form works with. */
export interface FormPart {
  readonly draft: MatchDraft;
  readonly patch: (some: Partial<MatchDraft>) => void;
  readonly isTried: boolean;
}

const isUsual = (text: string): text is UsualName => USUAL_NAMES.some((name) => name === text);
/** The usual tinter of this name, if there is one. */
export const usualOf = (name: string): UsualName | undefined => {
  const plain = name.trim().toLowerCase();
  return isUsual(plain) ? plain : undefined;
};

/** Tinters to choose from: those of the shop, then the usual ones that are not among them. */
export function candidates({ ingredients }: Shop, match: Match | undefined): Candidate[] {
  const used = new Set(match?.tinters.map(({ ingredient }) => ingredient));
  const own = [...ingredients.values()]
    .filter(({ id, is, putAwayMs }) => used.has(id) || (is === 'tinter' && putAwayMs === undefined))
    .map(({ id, name }) => ({ key: id, label: name, isInShop: true }));
  const named = new Set(own.map(({ label }) => usualOf(label)));
  const usual = USUAL_NAMES.filter((name) => !named.has(name));
  return [
    ...own,
    ...usual.map((name) => ({ key: `usual:${name}`, label: WORDS.usual[name], isInShop: false })),
  ];
}

const empty = <U extends 'g' | 'ratio'>(unit: U): Draft<U> => ({ text: '', unit });
const asTyped = <U extends 'g' | 'ratio'>(quantity: Quantity | undefined, unit: U): Draft<U> => ({
  text: quantity?.typed.text ?? '',
  unit,
});

/** A new match: with the instrument, scale and bench of the last one. */
export function freshDraft(shop: Shop, asked: string | undefined): MatchDraft {
  const last = [...shop.matches.values()].at(-1);
  const bases = whiteBases(shop);
  const draft = last ? draftOf(last) : undefined;
  return {
    place: 'open-panel',
    through: 'bare',
    white: 'D65/10',
    ticked: [],
    likes: {},
    division: { text: '0.01', unit: 'g' },
    letDowns: 'none',
    clear: clears(shop)[0]?.id ?? NEW_CLEAR,
    ...NEW_PIECE_SAID,
    ...draft,
    base: draft?.base ?? bases[0]?.id ?? NEW_BASE,
    name: '',
    piece: asked ?? onlyPiece(shop),
    jarHolds: empty('g'),
    tolerance: empty('ratio'),
    yellowing: empty('ratio'),
  };
}

/** A new piece that is matched has an old finish on it: as the form of a piece begins, it is shown and can be changed. */
const NEW_PIECE_SAID = { pieceName: '', pieceBase: 'old-redissolves' } as const;

export const openPieces = ({ pieces }: Shop) =>
  [...pieces.values()].filter(({ closedMs }) => closedMs === undefined);

/** The piece that a new match can only be for: the one on the bench, or where there is none a new one; else it is asked. */
function onlyPiece(shop: Shop): string | undefined {
  const open = openPieces(shop);
  if (open.length === 0) return NEW_PIECE;
  return open.length === 1 ? open[0]?.id : undefined;
}

export const whiteBases = ({ ingredients }: Shop) =>
  [...ingredients.values()].filter(({ is, putAwayMs }) => is === 'white-base' && putAwayMs === undefined);
export const clears = ({ ingredients }: Shop) =>
  [...ingredients.values()].filter(({ is, putAwayMs }) => is === 'clear' && putAwayMs === undefined);

/** A match as the form holds it. */
export function draftOf(match: Match): MatchDraft {
  const { name, piece, place, through, white, base, tinters, letDowns, clear } = match;
  return {
    name,
    piece: piece ?? NO_PIECE,
    ...NEW_PIECE_SAID,
    place,
    through,
    white,
    base,
    ticked: tinters.map(({ ingredient }) => ingredient),
    likes: Object.fromEntries(tinters.map(({ ingredient, like }) => [ingredient, like ?? 'none'])),
    division: asTyped(match.division, 'g'),
    letDowns: letDowns.includes('let-down-1') ? 'both' : letDowns.length > 0 ? 'ten' : 'none',
    clear: clear ?? NEW_CLEAR,
    jarHolds: asTyped(match.jarHolds, 'g'),
    tolerance: asTyped(match.tolerance, 'ratio'),
    yellowing: asTyped(match.yellowing, 'ratio'),
  };
}

/** Which usual tinter a candidate is taken for. */
export function likeOf({ likes }: MatchDraft, { key, label }: Candidate): UsualName | 'none' {
  const chosen = likes[key];
  if (chosen !== undefined) return chosen;
  return usualOf(label) ?? 'none';
}

/** Whether the form can be sent. */
export const isWhole = (draft: MatchDraft): boolean =>
  draft.name.trim() !== '' &&
  draft.piece !== undefined &&
  draft.ticked.length > 0 &&
  draftProblem(draft.division, LIMITS.division) === undefined &&
  draftProblem(draft.jarHolds, LIMITS.mass, true) === undefined &&
  draftProblem(draft.tolerance, LIMITS.tolerance, true) === undefined &&
  draftProblem(draft.yellowing, LIMITS.yellowing, true) === undefined;

const LET_DOWNS = { none: [], ten: ['let-down-10'], both: ['let-down-10', 'let-down-1'] } as const;

/** What the form says, for the logbook. Only of a draft that is whole. */
export function saidOf(draft: MatchDraft, all: readonly Candidate[]): MatchSaid {
  const { name, place, through, white, base, division, letDowns, clear } = draft;
  const given = (['jarHolds', 'tolerance', 'yellowing'] as const).flatMap((key) =>
    draft[key].text.trim() === '' ? [] : [[key, draft[key]] as const],
  );
  return {
    name: name.trim(),
    ...pieceSaid(draft),
    place,
    through,
    white,
    base: base === NEW_BASE ? { name: WORDS.newBaseName } : { ingredient: base },
    tinters: all.filter(({ key }) => draft.ticked.includes(key)).map((one) => onBench(draft, one)),
    division,
    letDowns: [...LET_DOWNS[letDowns]],
    ...(letDowns === 'none'
      ? {}
      : { clear: clear === NEW_CLEAR ? { name: WORDS.newClearName } : { ingredient: clear } }),
    ...Object.fromEntries(given),
  };
}

/** A new piece goes by the match's name where it was given none of its own. */
function pieceSaid({ piece, pieceName, pieceBase, name }: MatchDraft): Pick<MatchSaid, 'piece'> {
  if (piece === undefined || piece === NO_PIECE) return {};
  if (piece !== NEW_PIECE) return { piece: { piece } };
  return { piece: { name: pieceName.trim() || name.trim(), base: pieceBase } };
}

function onBench(draft: MatchDraft, candidate: Candidate): TinterOnBench {
  const like = likeOf(draft, candidate);
  const { key, label, isInShop } = candidate;
  return { ...(isInShop ? { ingredient: key } : { name: label }), ...(like === 'none' ? {} : { like }) };
}
