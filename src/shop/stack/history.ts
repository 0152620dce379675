import type { AirSpan, StackHistory } from '../../estimator/history';
import { binderOf } from '../../estimator/laws/binders';
import { filmSolvent } from '../../estimator/laws/film-solvents';
import { USUAL_SHOP, WOOD_EFFUSIVITY } from '../../estimator/usual-shop';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { fail, type Result, succeed } from '../../result';
import { umToMetres } from '../../units';
import { AIR_AHEAD_MS, airAsRead, airLog, asRead } from '../air/air-between';
import type { AirFrom } from '../air/forecast';
import { thinnerShares } from '../jar/film';
import { jarFilmAt } from '../jar/film-at';
import { sandingRoom } from './sanding-room';
import { type CoatFromJar, solventsOf, stackEvents } from './stack-events';

/** The history of a stack, and the instant from which its seconds count. */
export interface TimedHistory {
  readonly history: StackHistory;
  readonly startMs: number;
}

/** Why a piece has no history to dry by. */
export type HistoryFault =
  | { readonly kind: 'no-coats' | 'unknown-jar' | 'no-room-for-lacquer' }
  | { readonly kind: 'no-drying-law'; readonly finish: string };

/** What of the shop decides how a piece dries; of the other pieces, what they took out of its jars. */
export type Stock = Pick<Shop, 'jars' | 'pieces' | 'airReadings' | 'forecast' | 'settings'>;

/** An old finish softens no deeper than this under fresh coats (common practice, no source). */
const OPEN_TO_M = umToMetres(60);
/** Mass transfer of n-butyl acetate, m/s (estimator's fit to common practice). */
const TRANSFER_MS = { still: 0.7e-3, gentle: USUAL_SHOP.transferMS, booth: 1.8e-3, strong: 2.8e-3 } as const;

/** Everything that decides how a piece dries, from its first coat on: what was logged, then the forecast for 400 days. */
export function stackHistory(piece: Piece, stock: Stock): Result<TimedHistory, HistoryFault> {
  const laid = stackOf(piece, stock);
  if (!laid.ok) return laid;
  const { startMs, stack } = laid.value;
  const lastMs = startMs + (stack.events.at(-1)?.atS ?? 0) * 1000;
  const log = airLog(airReadings(piece, stock, startMs), stock.forecast, startMs, lastMs + AIR_AHEAD_MS);
  const air = toSpans(log, startMs);
  const sandingK = sandingRoom(stock).temperatureK;
  return succeed({ startMs, history: { ...stack, air, sandingK, panelEffusivity: WOOD_EFFUSIVITY } });
}

/** What of a history does not hang on the air. */
export type Stack = Pick<StackHistory, 'binder' | 'solvents' | 'events' | 'openBaseM'>;

/** What was laid on a piece and sanded off it. */
export function stackOf(
  piece: Piece,
  stock: Pick<Stock, 'jars' | 'pieces'>,
): Result<{ readonly stack: Stack; readonly startMs: number }, HistoryFault> {
  const coats = coatsFromJars(piece, stock);
  if (!coats.ok) return coats;
  const newest = coats.value.findLast(({ coat }) => coat.how !== 'flash');
  const first = coats.value[0];
  if (!newest || !first) return fail({ kind: 'no-coats' });
  const { finish } = newest.film;
  const binder = binderOf(finish);
  if (!binder) return fail({ kind: 'no-drying-law', finish });
  const solvents = solventsOf(coats.value);
  const openBaseM = openBase(piece);
  const events = stackEvents(piece, coats.value, solvents, openBaseM);
  return succeed({
    startMs: first.coat.atMs,
    stack: { binder, solvents: solvents.map(filmSolvent), events, openBaseM },
  });
}

function coatsFromJars(
  { coats }: Piece,
  stock: Pick<Stock, 'jars' | 'pieces'>,
): Result<CoatFromJar[], HistoryFault> {
  try {
    const found = coats.flatMap((coat) => {
      const jar = stock.jars.get(coat.jar);
      return jar ? [{ coat, film: jarFilmAt(jar, coat.atMs, stock), flash: thinnerShares(jar) }] : [];
    });
    return found.length === coats.length ? succeed(found) : fail({ kind: 'unknown-jar' });
  } catch (error) {
    if (error instanceof RangeError) return fail({ kind: 'no-room-for-lacquer' });
    throw error;
  }
}

/** How deep an old finish under the coats softens with them, m; nothing where it stays closed. */
const openBase = ({ base, oldFilm }: Pick<Piece, 'base' | 'oldFilm'>): number =>
  base === 'old-redissolves' ? Math.min(oldFilm?.si ?? OPEN_TO_M, OPEN_TO_M) : 0;

/** The readings of the shop since an instant, and those that a coat of this piece was laid by, once more at that coat. */
function airReadings({ coats }: Piece, { airReadings: logged }: Stock, fromMs: number): AirFrom[] {
  const confirmed = coats.flatMap(({ air, atMs }) => {
    const reading = air && logged.findLast(({ id }) => id === air);
    return reading ? [asRead({ ...reading, atMs })] : [];
  });
  return [...airAsRead(logged, fromMs), ...confirmed].sort((one, other) => one.atMs - other.atMs);
}

const toSpans = (air: readonly AirFrom[], startMs: number): AirSpan[] =>
  air.map(({ atMs, temperatureK, movement }) => ({
    fromS: (atMs - startMs) / 1000,
    temperatureK,
    transferMS: TRANSFER_MS[movement],
  }));
