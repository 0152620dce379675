import { parseNumber } from '../../logbook/as-typed';
import type { Shop } from '../../logbook/fold/fold';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';
import { zonesOf } from '../../logbook/fold/piece/zones';
import { COAT_WAYS } from '../../logbook/kinds/piece/coat';
import { LIMITS } from '../../logbook/limits';
import { passesProblem } from '../../parts/fields/passes-field';
import { type Draft, draftProblem } from '../../parts/fields/typed-field';
import { coatBefore, jarInHand, lastTouched } from '../../shop/jar/in-hand';
import { USUAL_COAT } from '../../shop/stack/usual-coat';
import { standById } from '../../shop/zone/stands';
import type { UnitSystem } from '../../words/quantities';

export type CoatWay = (typeof COAT_WAYS)[number];
export type FilmBy = Coat['film']['by'];
export type FilmDraft = Draft<'um' | 'mil'>;

/** A coat as it is being said; every way of saying how much is kept, so that changing one's mind loses nothing. */
export interface CoatDraft {
  readonly piece: string | undefined;
  /** Further pieces that get the same coat. */
  readonly also: readonly string[];
  readonly jar: string | undefined;
  /** The place on the piece that it is laid on; all of it where none is named. */
  readonly zone: string | undefined;
  /** Whether the test card that lies there gets it too; undefined until it is said. */
  readonly card?: boolean;
  readonly how: CoatWay;
  readonly by: FilmBy;
  /** Oil on the pad; undefined until it is said. */
  readonly oil: boolean | undefined;
  readonly passes: string;
  readonly films: Readonly<Record<FilmField, FilmDraft>>;
}

/** The fields in which an amount is typed; only one of them is on screen. */
export type FilmField = 'coat' | 'flash' | 'pass' | 'build' | 'pad' | 'fill';

/** Where nothing was laid yet: a full sprayed coat, and so on (common practice, no source). */
const FIRST: Record<UnitSystem, CoatDraft['films']> = {
  metric: {
    coat: USUAL_COAT.metric,
    flash: { text: '30', unit: 'um' },
    pass: { text: '30', unit: 'um' },
    build: { text: '12', unit: 'um' },
    pad: { text: '2', unit: 'um' },
    fill: { text: '150', unit: 'um' },
  },
  us: {
    coat: USUAL_COAT.us,
    flash: { text: '1.2', unit: 'mil' },
    pass: { text: '1.2', unit: 'mil' },
    build: { text: '0.5', unit: 'mil' },
    pad: { text: '0.08', unit: 'mil' },
    fill: { text: '6', unit: 'mil' },
  },
};

/** Ids that the address asks for: `?piece=…&jar=…`. */
export interface AskedFor {
  readonly pieces: readonly string[];
  readonly jar: string | null;
  /** A place on the piece. */
  readonly zone?: string | null;
  readonly how?: string | null;
  /** Dry film that it is to leave, um. */
  readonly dryUm?: string | null;
  /** Passes that it is, and the wet film of each, um. */
  readonly passes?: string | null;
  readonly wetUm?: string | null;
}

/** Everything as last time: on the piece asked for, else on the one coated last. */
export function prefilled(shop: Shop, askedFor: AskedFor, units: UnitSystem): CoatDraft {
  const open = [...shop.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  const piece = open.find(({ id }) => id === askedFor.pieces[0]) ?? lastTouched(open);
  const last = coatBefore(piece, shop);
  const asked = shop.jars.get(askedFor.jar ?? '');
  const jar = asked && asked.emptiedMs === undefined ? asked : jarInHand(piece, shop);
  const zonePlace = piece && zonesOf(piece.id, shop).find(({ zoneId }) => zoneId === askedFor.zone);
  const own = piece?.coats.findLast(({ zoneId }) => zoneId === zonePlace?.zoneId);
  const isNew = jar !== undefined && (own ?? last)?.jar !== jar.id;
  const isCan = isNew && jar.contains?.includes('aerosol') === true;
  const how =
    COAT_WAYS.find((way) => way === askedFor.how) ??
    (isCan ? 'spray' : isNew && jar.product.finish === 'shellac' ? 'pad' : (own ?? last)?.how) ??
    usualWay(jar?.product.finish);
  return {
    piece: piece?.id,
    also: open.flatMap(({ id }) => (id !== piece?.id && askedFor.pieces.includes(id) ? [id] : [])),
    jar: jar?.id,
    zone: zonePlace?.zoneId,
    how,
    by: askedFor.dryUm ? 'usual' : isCan || askedFor.passes ? 'passes' : (last?.film.by ?? usualAmount(how)),
    oil: oilOf(shop, jar?.id),
    passes: askedFor.passes ?? (last?.film.by === 'passes' ? String(last.film.passes) : '3'),
    films: {
      ...FIRST[units],
      ...(last && { [fieldOf(last.how, last.film.by)]: amountOf(last.film) }),
      ...(askedFor.dryUm && { [fieldOf(how, 'usual')]: { text: askedFor.dryUm, unit: 'um' as const } }),
      ...(askedFor.wetUm && { pass: { text: askedFor.wetUm, unit: 'um' as const } }),
    },
  };
}

/** Whether oil was on the pad the last time with this jar; undefined where nobody has said. */
function oilOf({ pieces }: Shop, jar: string | undefined): boolean | undefined {
  const padded = [...pieces.values()].flatMap(({ coats }) =>
    coats.filter((coat) => coat.jar === jar && coat.oil !== undefined),
  );
  return padded.sort((one, other) => one.atMs - other.atMs).at(-1)?.oil;
}

function amountOf(film: Coat['film']): FilmDraft {
  if (film.by === 'wet') return film.wetFilm.typed as FilmDraft;
  return (film.by === 'usual' ? film.dryFilm : film.perPass).typed as FilmDraft;
}

/** The field in which this amount is typed. */
export function fieldOf(how: CoatWay, by: FilmBy): FilmField {
  if (by === 'passes') return 'pass';
  if (by === 'wet') return how === 'flash' ? 'flash' : 'coat';
  return how === 'brush-fill' ? 'fill' : how === 'pad' ? 'pad' : 'build';
}

/** Shellac goes on by pad where nothing was logged yet; the rest is sprayed (common practice, no source). */
const usualWay = (finish: string | undefined): CoatWay => (finish === 'shellac' ? 'pad' : 'spray');

/** How much is usually told by: what is dry after a session of padding, or in a filled chip; else the wet film. */
export const usualAmount = (how: CoatWay): FilmBy =>
  how === 'pad' || how === 'brush-fill' ? 'usual' : 'wet';

/** A flash coat leaves no film of its own, so only what was wet can be said of it. */
export const waysToSay = (how: CoatWay): readonly FilmBy[] =>
  how === 'flash' ? ['wet'] : how === 'brush-fill' ? ['usual', 'wet'] : ['wet', 'passes', 'usual'];

/** The way that holds: the one chosen, unless this kind of coat cannot be said so. */
export const wayOf = ({ how, by }: CoatDraft): FilmBy =>
  waysToSay(how).includes(by) ? by : (waysToSay(how)[0] ?? 'wet');

const LIMIT_OF = { wet: LIMITS.wetFilm, passes: LIMITS.wetFilm, usual: LIMITS.dryFilm } as const;

/** The amount on screen: its field, what was typed, and its limit. */
export function amountShown(draft: CoatDraft) {
  const by = wayOf(draft);
  const field = fieldOf(draft.how, by);
  return { by, field, amount: draft.films[field], limit: LIMIT_OF[by] };
}

/** Whether the film as said can be logged. */
export function isFilmWhole(draft: CoatDraft): boolean {
  const { by, amount, limit } = amountShown(draft);
  return !draftProblem(amount, limit) && (by !== 'passes' || !passesProblem(draft.passes));
}

/** The film as an entry says it. */
export function filmSaid(draft: CoatDraft) {
  const { by, amount } = amountShown(draft);
  if (by === 'wet') return { by, wetFilm: amount } as const;
  if (by === 'usual') return { by, dryFilm: amount } as const;
  return { by, passes: parseNumber(draft.passes) ?? 0, perPass: amount } as const;
}

/** What the coat goes on as its place sees it: its coats are counted there, as in its history. */
export const standOfCoat = ({ piece = '', zone }: CoatDraft, shop: Shop): Piece | undefined =>
  standById(zone ?? piece, shop)?.piece;
