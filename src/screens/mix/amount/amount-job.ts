import type { Shop } from '../../../logbook/fold/fold';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { matchOfJar, matchOfRecipe } from '../../../shop/colour/jars-of-match';
import { areaOfPiece, type JobDraft, newJob, padFilm } from './amount-draft';
import { factsOf, keyOf, type Source } from './source';

/** A job: a piece, and what it is done with. */
export interface AmountJob {
  readonly piece: Piece | undefined;
  readonly source: Source;
}

// What was typed for a job stays while a recipe is looked at or written; another job begins with its own facts.
const typed = new Map<string, JobDraft>();
const keyOfJob = ({ piece, source }: AmountJob): string => `${piece?.id ?? ''} ${keyOf(source)}`;

export const keepJob = (job: AmountJob, draft: JobDraft): void => void typed.set(keyOfJob(job), draft);

/** A job as it was last typed; else with the piece's area and wet film, and the recipe's coats. */
export function draftOfJob(job: AmountJob, shop: Shop, isUs: boolean): JobDraft {
  const known = typed.get(keyOfJob(job));
  if (known) return known;
  const { piece } = job;
  return {
    ...newJob(isUs),
    ...wayOf(job, shop, isUs),
    ...(piece && areaOfPiece(piece)),
    ...coatsOf(job.source, shop),
    ...wetFilmOf(piece),
  };
}

/** What covers a piece; a drop or a mist of thinner does not. */
const WAYS: ReadonlySet<string> = new Set(['spray', 'brush', 'pad']);

/** As the piece's last coat of this finish went on; else shellac by pad, the rest by spray (common practice, no source). */
function wayOf({ piece, source }: AmountJob, shop: Shop, isUs: boolean): Partial<JobDraft> {
  const facts = factsOf(source, shop);
  if (facts?.isSprayCan) return { way: 'can' };
  const usual = facts?.finish === 'shellac' ? 'pad' : 'spray';
  const last = piece?.coats.findLast(
    ({ how, jar }) => WAYS.has(how) && shop.jars.get(jar)?.product.finish === facts?.finish,
  );
  const how = last?.how ?? usual;
  if (how === 'spray') return {};
  return { way: 'hand', ...(how === 'pad' && { wetFilm: padFilm(isUs) }) };
}

function coatsOf(source: Source, { recipes }: Shop): Partial<JobDraft> {
  const use = source.from === 'recipe' ? recipes.get(source.id)?.use : undefined;
  const coats = use?.as === 'opaque' ? use.coatsToHide : undefined;
  return coats === undefined ? {} : { coats: String(coats) };
}

function wetFilmOf(piece: Piece | undefined): Partial<JobDraft> {
  const film = piece?.coats.at(-1)?.film;
  return film?.by === 'wet' ? { wetFilm: film.wetFilm.typed as JobDraft['wetFilm'] } : {};
}

/** The piece that a job is for: the one asked for, else the one that its recipe was matched for, else the only one on the bench. */
export function pieceOfJob(asked: string | null, source: Source, shop: Shop): Piece | undefined {
  const open = [...shop.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  const matched = matchOf(source, shop)?.piece;
  return (
    open.find(({ id }) => id === asked) ??
    open.find(({ id }) => id === matched) ??
    (open.length === 1 ? open[0] : undefined)
  );
}

function matchOf(source: Source, shop: Shop) {
  if (source.from === 'recipe') return matchOfRecipe(source.id, shop);
  const jar = source.from === 'jar' ? shop.jars.get(source.id) : undefined;
  return jar && matchOfJar(jar, shop);
}
