import type { Estimate } from '../../estimator/estimate';
import type { Estimator } from '../../estimator/run/client';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { withMoreRetarder } from '../../shop/air/jar-blush';
import { requestFor } from '../outlook/request';

/** By how much later a piece may be level-sanded and rubbed out, s. */
export interface RetarderCost {
  readonly levelS: number;
  readonly rubOutS: number;
}

/**
 * What more retarder would have cost a piece, had every coat of its jars held it: the same stack, worked out again.
 * Undefined where the piece has no stack to work out.
 * @param ofMix so much more, a fraction of the mix
 */
export async function retarderCost(
  piece: Piece,
  shop: Shop,
  nowMs: number,
  ofMix: number,
  estimator: Estimator,
): Promise<RetarderCost | undefined> {
  const jars = new Map([...shop.jars].map(([id, jar]) => [id, { ...jar, ...withMoreRetarder(jar, ofMix) }]));
  const asked = [shop, { ...shop, jars }].map((one) => requestFor(piece, one, nowMs));
  const requests = asked.flatMap((one) => (one.ok ? [{ ...one.value.request, whatIf: [] }] : []));
  if (requests.length !== asked.length) return undefined;
  const [now, more] = await Promise.all(requests.map((request) => estimator.estimate(request).result));
  return now && more && difference(now, more);
}

const difference = ({ milestones: now }: Estimate, { milestones: more }: Estimate): RetarderCost => ({
  levelS: more.level.likelyS - now.level.likelyS,
  rubOutS: more.rubOut.likelyS - now.rubOut.likelyS,
});
