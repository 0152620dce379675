import type { CardRequest, Weighing } from '../../estimator/card/card';
import { warmFor } from '../../estimator/card/warm-for';
import type { AirSpan } from '../../estimator/history';
import { growing } from '../../estimator/read-off';
import { USUAL_SHOP } from '../../estimator/usual-shop';
import type { Shop } from '../../logbook/fold/fold';
import { type Result, succeed } from '../../result';
import { DAY_S, HOUR_MS, HOUR_S } from '../../units';
import { measuredAir } from '../air/measured-air';
import { type HistoryFault, stackHistory, type TimedHistory } from '../stack/history';
import { asPiece, type CardWeighing, counted, type TestCard } from './cards';

/** What the worker is asked about a card, and the instant from which its seconds count. */
export interface TimedCardRequest extends CardRequest {
  readonly startMs: number;
}

/** Of foil lying on a board: next to nothing beside the air's own pull (from memory). */
const FOIL_EFFUSIVITY = 60;
/** Without a reading so near, the humidity is a guess (judgement). */
const READ_WITHIN_MS = 12 * HOUR_MS;
/** How far a guess may be off is judgement. */
const GUESSED = { humidity: USUAL_SHOP.relativeHumidity, humiditySpread: 0.12 };
/** Looked at so often, so long (judgement, no source). */
const LOOKS = 28;
const FIRST_LOOK_S = HOUR_S;
const FURTHEST_S = 14 * DAY_S;

/** How the film on a card dries: as on a piece, but on foil, and through the warmth that it was dried in. */
export function cardHistory(card: TestCard, shop: Shop): Result<TimedHistory, HistoryFault> {
  const told = stackHistory(asPiece(card), shop);
  if (!told.ok) return told;
  const { history, startMs } = told.value;
  const air = counted(card).reduce((spans: readonly AirSpan[], { warm, atMs }) => {
    if (!warm) return spans;
    const untilS = (atMs - startMs) / 1000;
    return untilS > 0
      ? warmFor(spans, Math.max(0, untilS - warm.time.si), untilS, warm.temperature.si)
      : spans;
  }, history.air);
  return succeed({ startMs, history: { ...history, air, panelEffusivity: FOIL_EFFUSIVITY } });
}

/** What the worker is asked about a card now. */
export function cardRequest(
  card: TestCard,
  shop: Shop,
  nowMs: number,
): Result<TimedCardRequest, HistoryFault> {
  const told = cardHistory(card, shop);
  if (!told.ok) return told;
  const { history, startMs } = told.value;
  const weighings = counted(card)
    .filter(({ atMs }) => atMs > startMs)
    .map((line) => weighingOf(line, startMs, shop));
  const firstWarmS = weighings.find(({ isWarmDried }) => isWarmDried)?.atS ?? Number.POSITIVE_INFINITY;
  return succeed({
    startMs,
    card: {
      history,
      areaM2: card.areaM2,
      bareKg: card.bareKg,
      divisionKg: card.divisionKg,
      // What was dried warm stays so.
      weighings: weighings.map((one) => ({ ...one, isWarmDried: one.atS >= firstWarmS })),
      lookAtS: looks(card, startMs, nowMs),
    },
  });
}

function weighingOf({ mass, warm, division, atMs }: CardWeighing, startMs: number, shop: Shop): Weighing {
  const read = shop.airReadings.findLast((reading) => reading.atMs <= atMs);
  const air =
    read && atMs - read.atMs < READ_WITHIN_MS ? { humidity: measuredAir(read, shop).humidity } : GUESSED;
  return {
    atS: (atMs - startMs) / 1000,
    massKg: mass.si,
    ...air,
    isWarmDried: warm !== undefined,
    ...(division && { divisionKg: division.si }),
  };
}

/** From an hour after the last coat on a growing scale, a fortnight beyond now at most. */
function looks({ coats }: TestCard, startMs: number, nowMs: number): readonly number[] {
  const lastS = ((coats.at(-1)?.atMs ?? startMs) - startMs) / 1000;
  const goneS = Math.max(0, (nowMs - startMs) / 1000 - lastS);
  const reachS = Math.max(FURTHEST_S, Math.min(2 * goneS, goneS + FURTHEST_S));
  return growing(FIRST_LOOK_S, reachS, LOOKS).map((s) => lastS + s);
}
