import type { EstimateRequest } from '../../estimator/estimate';
import { type Estimate, MILESTONES, type Milestone } from '../../estimator/estimate';
import { rested, type SheetFactors, scaledToSheet, sheetFactors } from '../../estimator/finishes/to-sheet';
import type { Estimator } from '../../estimator/run/client';
import { USUAL_SHOP } from '../../estimator/usual-shop';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { jarFilmAt } from '../../shop/jar/film-at';
import { isResting, sheetOf, sheetTimes } from '../../shop/stack/sheet-times';

/**
 * The estimate, moved to the data sheet of the newest jar where one was entered: one coat is worked out at the sheet's own
 * conditions and film in a usual draught, and the stack is moved by what the sheet says over what came out. Without one a padded film rests.
 */
export async function movedToSheet(
  estimate: Estimate,
  request: EstimateRequest,
  piece: Piece,
  shop: Shop,
  estimator: Estimator,
): Promise<Estimate> {
  const newest = piece.coats.findLast(({ how }) => how !== 'flash');
  const sheet = newest && sheetOf(newest.jar, shop);
  const coat = request.history.events.findLast((event) => event.kind === 'coat');
  const jar = newest && shop.jars.get(newest.jar);
  if (!coat || !jar) return estimate;
  if (!sheet) return isResting(piece) ? rested(estimate, coat.atS) : estimate;
  const times = sheetTimes(sheet, jarFilmAt(jar, newest.atMs, shop).volumeSolids);
  const alone: EstimateRequest = {
    history: {
      ...request.history,
      events: [{ ...coat, atS: 0, dryM: times.filmDryM ?? coat.dryM }],
      air: [{ fromS: 0, temperatureK: times.temperatureK, transferMS: USUAL_SHOP.transferMS }],
      openBaseM: 0,
      sandingK: times.temperatureK,
    },
    nowS: 0,
    checks: [],
    whatIf: [],
  };
  const atSheet = likely(await estimator.estimate(alone).result);
  const factors: SheetFactors = sheetFactors(times, atSheet);
  return scaledToSheet(estimate, coat.atS, factors);
}

const likely = ({ milestones }: Estimate): { readonly [M in Milestone]: number } =>
  Object.fromEntries(MILESTONES.map((name): [Milestone, number] => [name, milestones[name].likelyS])) as {
    [M in Milestone]: number;
  };
