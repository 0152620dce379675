import { MILESTONES } from '../../estimator/estimate';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { DAY_S, HOUR_S } from '../../units';
import type { Standing } from '../../verdicts/standing';
import { keep } from '../keep/kept-text';
import type { Outlook, PieceId } from '../outlook/outlook';
import type { WhichShop } from '../which-shop';
import { KEPT_KEYS, type KeptLine, UM, workKey } from './kept-standings';

/** The film is kept as it is about now, in an hour, a day, and at last. */
const LOOKS_AHEAD_S = [0, HOUR_S, DAY_S, Number.POSITIVE_INFINITY];

/** Keeps on this phone where the open pieces stand, for the next first frame. */
export function keepStandings(
  which: WhichShop,
  { pieces }: Pick<Shop, 'pieces'>,
  outlooks: ReadonlyMap<PieceId, Outlook>,
  standings: ReadonlyMap<PieceId, Standing>,
  nowMs: number,
): void {
  const kept: Record<PieceId, KeptLine> = {};
  for (const [id, outlook] of outlooks) {
    const [piece, standing] = [pieces.get(id), standings.get(id)];
    if (!piece || piece.closedMs !== undefined || !standing) continue;
    if (outlook.state === 'ready') kept[id] = lineOf(piece, standing, outlook, nowMs);
    if (outlook.state === 'no-coats') kept[id] = [workKey(piece), standing, 0, [], []];
  }
  keep(KEPT_KEYS[which], kept);
}

/** Whether all that is on the bench is worked out: nothing less is kept. */
export const isAllWorkedOut = (outlooks: ReadonlyMap<PieceId, Outlook>): boolean =>
  [...outlooks.values()].every(({ state }) => state !== 'computing' && state !== 'kept');

type Ready = Extract<Outlook, { state: 'ready' }>;

function lineOf(piece: Piece, standing: Standing, { estimate, startMs }: Ready, nowMs: number): KeptLine {
  const bands = MILESTONES.map((name) => {
    const { earliestS, likelyS, lateS } = estimate.milestones[name];
    return [earliestS, likelyS, lateS].map((s) => (Number.isFinite(s) ? Math.round(s) : null));
  });
  return [workKey(piece), standing, startMs, bands, looksOf(estimate.profiles, (nowMs - startMs) / 1000)];
}

function looksOf(profiles: Ready['estimate']['profiles'], nowS: number): KeptLine[4] {
  const chosen = new Set(
    LOOKS_AHEAD_S.map((s) => profiles.findLast(({ timeS }) => timeS <= nowS + s) ?? profiles[0]),
  );
  return [...chosen].flatMap((look) =>
    look
      ? [[Math.round(look.timeS), ...look.layers.flatMap(({ dryM, solventM }) => [um(dryM), um(solventM)])]]
      : [],
  );
}

const um = (m: number): number => Number((m / UM).toFixed(1));
