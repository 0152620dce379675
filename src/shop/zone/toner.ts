import type { Shop } from '../../logbook/fold/fold';
import type { Coat } from '../../logbook/fold/piece/pieces';
import { documented, type PieceReading, type Toner } from '../../logbook/fold/piece/zones';
import { deltaE00 } from '../../science/colour/delta-e-00';
import type { Lab } from '../../science/colour/lab';
import {
  afterPasses,
  type PassDensity,
  passDensity,
  planToner,
  type TonerPlan,
} from '../../science/pigment/dye-toner';
import { isFirm, readSurface } from '../colour/surface';

/** One pass of a toner on the piece: its colour as read, or as expected. */
export interface TonerRow {
  readonly passes: number;
  readonly lab: Lab;
  readonly dE00: number;
  readonly isRead: boolean;
}

/** How far a toner has come on a piece. */
export interface TonerState {
  readonly toner: Toner;
  readonly passesOn: number;
  readonly target: Lab | undefined;
  /** What it goes over, read on the piece itself. */
  readonly ground: Lab | undefined;
  /** Empty until target, ground and one toned reading are there. */
  readonly rows: readonly TonerRow[];
  /** From the newest reading to the target, in further passes. */
  readonly plan: TonerPlan | undefined;
}

/** An edge of the eye's acceptance on a panel (common practice, no source). */
const USUAL_TOLERANCE = 1;
/** Passes ahead that are shown, in halves. */
const MORE_ROWS = 2;

/** Passes that a coat was: as said, or one. */
const passesOf = ({ film }: Coat): number => (film.by === 'passes' ? film.passes : 1);

/** The toner that was described last for a place on a piece, and how far it has come. */
export function tonerOn(piece: string, zoneId: string | undefined, shop: Shop): TonerState | undefined {
  const { toners, readings } = documented(piece, shop);
  const toner = toners.findLast((one) => one.zoneId === zoneId);
  if (!toner) return undefined;
  const own = readings.filter(({ match }) => match === toner.toner);
  const coats = shop.pieces.get(piece)?.coats ?? [];
  const passesOn = coats
    .filter((coat) => coat.jar === toner.jar && coat.zoneId === zoneId)
    .reduce((sum, coat) => sum + passesOf(coat), 0);
  const labOf = (test: (of: PieceReading['of']) => boolean): Lab | undefined => {
    const { surface } = readSurface(own.filter(({ of }) => test(of)) as never, toner.white);
    return isFirm(surface) ? surface.lab : undefined;
  };
  const target = labOf(({ as }) => as === 'target');
  const under = (passes: number): Lab | undefined =>
    labOf((of) => of.as === 'on-piece' && (of.passes ?? 0) === passes);
  const ground = under(0);
  const counts = own.flatMap(({ of }) => (of.as === 'on-piece' && of.passes ? [of.passes] : []));
  const last = counts.length > 0 ? Math.max(...counts) : undefined;
  const toned = last === undefined ? undefined : under(last);
  const from = { toner, passesOn, target, ground };
  if (!target || !ground || !toned || last === undefined) return { ...from, rows: [], plan: undefined };
  const density = passDensity(ground, toned, last);
  const plan = planToner(toned, target, density, toner.tolerance?.si ?? USUAL_TOLERANCE);
  const known = new Map(
    [...new Set(counts)].flatMap((count) => {
      const lab = under(count);
      return lab ? [[count, lab] as const] : [];
    }),
  );
  return { ...from, rows: rowsOf({ ground, target, density, known, last }), plan };
}

interface Read {
  readonly ground: Lab;
  readonly target: Lab;
  readonly density: PassDensity;
  readonly known: ReadonlyMap<number, Lab>;
  readonly last: number;
}

/** A row a pass: those that were read, then half by half what is to come (Beer-Lambert, from the newest reading). */
function rowsOf({ ground, target, density, known, last }: Read): TonerRow[] {
  const row = (passes: number, lab: Lab, isRead: boolean): TonerRow => ({
    passes,
    lab,
    dE00: deltaE00(lab, target),
    isRead,
  });
  const read = [...known]
    .sort(([one], [other]) => one - other)
    .map(([passes, lab]) => row(passes, lab, true));
  const newest = known.get(last) ?? ground;
  const coming = Array.from({ length: 2 * MORE_ROWS }, (_, i) => (i + 1) / 2).map((more) =>
    row(last + more, afterPasses(newest, density, more), false),
  );
  return [row(0, ground, true), ...read, ...coming];
}
