import type { StackEvent } from '../../estimator/history';
import type { Coat, Piece, Sanding } from '../../logbook/fold/piece/pieces';
import { dryFilm } from '../../science/film/thickness';
import type { SolventId } from '../../science/solvents/solvents';
import type { JarFilm } from '../jar/film';

/** A coat with the film that its jar gives, and with what a flash coat of that jar's thinner is made of. */
export interface CoatFromJar {
  readonly coat: Coat;
  readonly film: JarFilm;
  readonly flash: JarFilm['solvents'];
}
type CoatEvent = Extract<StackEvent, { kind: 'coat' }>;

/** Sanding never takes the last of a film: the solver needs something to lay the next coat on, less than a picture shows, m. */
const LEAST_LEFT_M = 5e-9;

/** Thickness of what was put on, m: wet, or dry where the person goes by a usual build. */
function laidM({ film }: Coat): { readonly wetM: number } | { readonly dryM: number } {
  if (film.by === 'wet') return { wetM: film.wetFilm.si };
  if (film.by === 'passes') return { wetM: film.passes * film.perPass.si };
  return { dryM: film.dryFilm.si };
}

/** Dry film of a coat, m; of a flash coat, which leaves none, 0. */
export function dryFilmM(coat: Coat, film: JarFilm): number {
  if (coat.how === 'flash') return 0;
  const laid = laidM(coat);
  return 'wetM' in laid ? dryFilm(laid.wetM, film.volumeSolids) : laid.dryM;
}

/** The names of the solvents in these coats, each once. */
export const solventsOf = (coats: readonly CoatFromJar[]): readonly SolventId[] => [
  ...new Set(coats.flatMap((coat) => sharesOf(coat).map(({ id }) => id))),
];

/** Everything done to the stack from the first coat on, in seconds from it. */
export function stackEvents(
  piece: Pick<Piece, 'sandings'>,
  coats: readonly CoatFromJar[],
  solvents: readonly SolventId[],
  openBaseM: number,
): readonly StackEvent[] {
  const startMs = coats[0]?.coat.atMs ?? 0;
  const sandings = piece.sandings.filter(({ atMs }) => atMs >= startMs);
  const lines = [
    ...coats.map((one) => ({ line: one.coat, event: coatEvent(one, solvents, startMs) })),
    ...sandings.map((line) => ({ line, event: sandEvent(line, startMs) })),
  ];
  lines.sort((one, other) => one.line.atMs - other.line.atMs || (one.line.id < other.line.id ? -1 : 1));
  return withinFilm(
    lines.map(({ event }) => event),
    openBaseM,
  );
}

function coatEvent(one: CoatFromJar, solvents: readonly SolventId[], startMs: number): StackEvent {
  const { coat, film } = one;
  const atS = (coat.atMs - startMs) / 1000;
  const shares = new Map(sharesOf(one).map(({ id, share }) => [id, share]));
  const bySolvent = (volume: number) => solvents.map((id) => volume * (shares.get(id) ?? 0));
  if (coat.how === 'flash') {
    const laid = laidM(coat);
    return { kind: 'flash', atS, solventM: bySolvent('wetM' in laid ? laid.wetM : laid.dryM) };
  }
  const { volumeSolids, pigment, passage } = film;
  const perBinder = (1 - volumeSolids) / (volumeSolids * (1 - pigment));
  return { kind: 'coat', atS, dryM: dryFilmM(coat, film), wetness: bySolvent(perBinder), pigment, passage };
}

const sandEvent = ({ atMs, removed }: Sanding, startMs: number): StackEvent => ({
  kind: 'sand',
  atS: (atMs - startMs) / 1000,
  removedM: removed.si,
});

const sharesOf = ({ coat, film, flash }: CoatFromJar): JarFilm['solvents'] =>
  coat.how === 'flash' ? flash : film.solvents;

/** The events with no more sanded away than lies there, and no thinner on nothing. */
function withinFilm(events: readonly StackEvent[], openBaseM: number): readonly StackEvent[] {
  let dryM = openBaseM;
  return events.flatMap((event): StackEvent[] => {
    if (event.kind === 'coat') dryM += event.dryM;
    if (event.kind === 'flash') return dryM > 0 ? [event] : [];
    if (event.kind !== 'sand') return [event];
    const removedM = Math.min(event.removedM, dryM - LEAST_LEFT_M);
    if (removedM <= 0) return [];
    dryM -= removedM;
    return [{ ...event, removedM }];
  });
}

/** The coat as it would go on again at another time. */
export const again = (events: readonly StackEvent[], atS: number): CoatEvent | undefined => {
  const last = events.findLast((event) => event.kind === 'coat');
  return last && { ...last, atS };
};
