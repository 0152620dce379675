import type { Shop } from '../../logbook/fold/fold';
import type { Coat, Piece } from '../../logbook/fold/pieces';
import type { COAT_WAYS } from '../../logbook/kinds/coat';
import { COUNTS, LIMITS } from '../../logbook/limits';
import { parseNumber } from '../../logbook/typed';
import { type Draft, draftProblem } from '../../parts/typed-field';
import { LOGBOOK_WORDS } from '../../words/logbook';
import type { UnitSystem } from '../../words/quantities';

export type CoatWay = (typeof COAT_WAYS)[number];
export type FilmBy = Coat['film']['by'];
export type FilmDraft = Draft<'um' | 'mil'>;

/** A coat as it is being said; every way of saying how much is kept, so that changing one's mind loses nothing. */
export interface CoatDraft {
  readonly piece: string | undefined;
  readonly jar: string | undefined;
  readonly how: CoatWay;
  readonly by: FilmBy;
  readonly wetFilm: FilmDraft;
  readonly passes: string;
  readonly perPass: FilmDraft;
  readonly dryFilm: FilmDraft;
}

/** A full sprayed coat, where nothing was laid yet (common practice, no source). */
const FIRST: Record<UnitSystem, Pick<CoatDraft, 'wetFilm' | 'perPass' | 'dryFilm'>> = {
  metric: {
    wetFilm: { text: '85', unit: 'um' },
    perPass: { text: '30', unit: 'um' },
    dryFilm: { text: '12', unit: 'um' },
  },
  us: {
    wetFilm: { text: '3.5', unit: 'mil' },
    perPass: { text: '1.2', unit: 'mil' },
    dryFilm: { text: '0.5', unit: 'mil' },
  },
};

/** Everything as last time: on the piece asked for, else on the one coated last. */
export function prefilled(shop: Shop, pieceAskedFor: string | null, units: UnitSystem): CoatDraft {
  const open = [...shop.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  const piece = open.find(({ id }) => id === pieceAskedFor) ?? lastTouched(open);
  const last = piece?.coats.at(-1) ?? lastTouched([...shop.pieces.values()])?.coats.at(-1);
  const jars = [...shop.jars.values()].filter(({ emptiedMs }) => emptiedMs === undefined);
  const jar = jars.find(({ id }) => id === last?.jar) ?? jars.at(-1);
  return {
    piece: piece?.id,
    jar: jar?.id,
    how: last?.how ?? 'spray',
    by: last?.film.by ?? 'wet',
    passes: '3',
    ...FIRST[units],
    ...(last && filmDraft(last.film)),
  };
}

function lastTouched(pieces: readonly Piece[]): Piece | undefined {
  const lastMs = ({ coats, startedMs }: Piece): number => coats.at(-1)?.atMs ?? startedMs;
  return [...pieces].sort((one, other) => lastMs(one) - lastMs(other)).at(-1);
}

function filmDraft(film: Coat['film']): Partial<CoatDraft> {
  if (film.by === 'wet') return { wetFilm: film.wetFilm.typed as FilmDraft };
  if (film.by === 'usual') return { dryFilm: film.dryFilm.typed as FilmDraft };
  return { passes: String(film.passes), perPass: film.perPass.typed as FilmDraft };
}

/** A flash coat leaves no film of its own, so only what was wet can be said of it. */
export const waysToSay = (how: CoatWay): readonly FilmBy[] =>
  how === 'flash' ? ['wet'] : how === 'brush-fill' ? ['usual', 'wet'] : ['wet', 'passes', 'usual'];

/** The way that holds: the one chosen, unless this kind of coat cannot be said so. */
export const wayOf = ({ how, by }: CoatDraft): FilmBy =>
  waysToSay(how).includes(by) ? by : (waysToSay(how)[0] ?? 'wet');

/** What is wrong with a count of passes. */
export function passesProblem(text: string): string | undefined {
  const amount = parseNumber(text);
  const { lowest, highest } = COUNTS.passes;
  const isCount = amount !== undefined && Number.isInteger(amount) && amount >= lowest && amount <= highest;
  return isCount ? undefined : LOGBOOK_WORDS.notACount(COUNTS.passes);
}

/** Whether the film as said can be logged. */
export function isFilmWhole(draft: CoatDraft): boolean {
  const by = wayOf(draft);
  if (by === 'wet') return draftProblem(draft.wetFilm, LIMITS.wetFilm) === undefined;
  if (by === 'usual') return draftProblem(draft.dryFilm, LIMITS.dryFilm) === undefined;
  return !passesProblem(draft.passes) && !draftProblem(draft.perPass, LIMITS.wetFilm);
}

/** The film as an entry says it. */
export function filmSaid(draft: CoatDraft) {
  const by = wayOf(draft);
  if (by === 'wet') return { by, wetFilm: draft.wetFilm } as const;
  if (by === 'usual') return { by, dryFilm: draft.dryFilm } as const;
  return { by, passes: parseNumber(draft.passes) ?? 0, perPass: draft.perPass } as const;
}
