import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { jarFilmAt } from '../../shop/jar/film-at';
import { leavesNoLacquer } from '../../shop/jar/volumes-in-mix';
import { sheetOf } from '../../shop/stack/sheet-times';
import type { Taught } from './learn/taught';

/** A line and what corrected it: a corrected one keeps its id. */
export const asItStands = (id: string, { corrected }: Pick<Shop, 'corrected'>): readonly string[] => [
  id,
  ...(corrected.get(id)?.by ?? []),
];

/** A text that changes when anything changes that the outlook of a piece is worked out from, but for the clock. */
export function inputsOf(piece: Piece, shop: Shop, { diffusivity, law }: Taught): string {
  const { airReadings: readings, forecast, settings } = shop;
  const startMs = piece.coats[0]?.atMs ?? 0;
  const inForce = Math.max(
    0,
    readings.findLastIndex(({ atMs }) => atMs <= startMs),
  );
  const own = JSON.stringify([
    piece.base,
    piece.oldFilm?.si,
    [piece.coats, piece.sandings, piece.checks, readings.slice(inForce)].map((lines) =>
      lines.map(({ id }) => asItStands(id, shop)),
    ),
    [...new Set(piece.coats.map(({ jar }) => jar))].map((id) => contentOf(id, piece, shop)),
    forecast && asItStands(forecast.id, shop),
    settings.sandingTemperature?.si,
  ]);
  const taught = [diffusivity, law?.drying, law?.cure].map(
    (belief) => belief && [belief.mean.toFixed(2), belief.spread.toFixed(2)],
  );
  return `${own}${BETWEEN}${JSON.stringify(taught)}`;
}

/** What is in no JSON text. */
const BETWEEN = '\n';

/** Whether nothing is otherwise but what others have taught. */
export const isOwnTheSame = (one: string, other: string): boolean =>
  one.split(BETWEEN)[0] === other.split(BETWEEN)[0];

function contentOf(id: string, piece: Piece, shop: Shop) {
  const jar = shop.jars.get(id);
  const sheet = sheetOf(id, shop)?.id;
  const solids = jar && solidsLaid(jar, piece, shop);
  return jar && [jar.product, jar.thinner.blend, jar.thinning, jar.retarder, jar.pigment, sheet, solids];
}

/** The volume solids of each coat from a jar that has lost solvent: they hang on every weighing and on every other piece. */
function solidsLaid(jar: Jar, { coats }: Piece, shop: Shop): readonly number[] {
  if (jar.weighings.length === 0) return [];
  const added = jar.retarder ? [jar.thinning, jar.retarder] : [jar.thinning];
  const own = leavesNoLacquer(added) ? [] : coats.filter((coat) => coat.jar === jar.id);
  return own.map(({ atMs }) => jarFilmAt(jar, atMs, shop).volumeSolids);
}
