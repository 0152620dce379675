import { DAY_S, toKelvin } from '../../units';
import { factorOf, PRIOR } from '../belief';
import type { StackHistory } from '../history';
import { lastWetS } from '../read-off';
import { USUAL_SHOP } from '../usual-shop';
import { type Card, FINE_KG, THIN_M, type Weighing } from './card';
import { heldAt, laidDryKg } from './held';
import { warmFor } from './warm-for';
import { weighCard } from './weigh-card';
import { waterOf } from './weighing-noise';

/** A card that is yet to be made. */
export type CardPlan = Pick<Card, 'history' | 'areaM2' | 'divisionKg'>;

/** The plan of a card, as the worker is asked. */
export interface CardPlanRequest {
  readonly plan: CardPlan;
}

/** Factor of the band either way after weighings of a card as usual. */
export interface CardForetold {
  /** Before it. */
  readonly prior: number;
  /** Weighed over a fortnight, never dried warm. */
  readonly plain: number;
  /** Weighed over two days and then dried warm. */
  readonly warm: number;
  /** Dried warm too, but another card. */
  readonly other: {
    /** Coats of {@link THIN_M} dry; absent where these are no thicker. */
    readonly thin?: number;
    /** On a scale of {@link FINE_KG}; absent where this one is no coarser. */
    readonly fine?: number;
    readonly twiceTheArea: number;
  };
}

/** Weighed at these days after the last coat, which tell most (worked out with this solver). */
const OVER_A_FORTNIGHT = [0.25, 1, 2, 4, 7, 14];
/** Days at which a card is weighed before it lies warm, and from which to which it does (common practice, no source). */
const BEFORE_WARM = [0.25, 1, 2];
const WARM_FROM = 5;
const WARM_UNTIL = 6;
/** As warm as a heat mat makes it (common practice, no source). */
const WARM_K = toKelvin(57);

/** What a card of this film on this scale can tell, were everything as usual: said before one is made. */
export function foretellCard(plan: CardPlan): CardForetold {
  const { history, areaM2, divisionKg } = plan;
  const thin = history.events.map((event) => (event.kind === 'coat' ? { ...event, dryM: THIN_M } : event));
  const isThicker = history.events.some((event) => event.kind === 'coat' && event.dryM > THIN_M);
  return {
    prior: factorOf(PRIOR),
    plain: within(plan, history, OVER_A_FORTNIGHT, false),
    warm: driedWarm(plan),
    other: {
      ...(isThicker && { thin: driedWarm({ ...plan, history: { ...history, events: thin } }) }),
      ...(divisionKg > FINE_KG && { fine: driedWarm({ ...plan, divisionKg: FINE_KG }) }),
      twiceTheArea: driedWarm({ ...plan, areaM2: 2 * areaM2 }),
    },
  };
}

function driedWarm(plan: CardPlan): number {
  const { history } = plan;
  const lastS = lastWetS(history);
  const [fromS, untilS] = [lastS + WARM_FROM * DAY_S, lastS + WARM_UNTIL * DAY_S];
  const warmed = { ...history, air: warmFor(history.air, fromS, untilS, WARM_K) };
  return within(plan, warmed, [...BEFORE_WARM, WARM_UNTIL], true);
}

function within(plan: CardPlan, history: StackHistory, days: readonly number[], isWarm: boolean): number {
  const atS = days.map((day) => lastWetS(history) + day * DAY_S);
  const heldKg = heldAt(history, plan.areaM2, atS);
  const dryKg = laidDryKg({ history, areaM2: plan.areaM2 });
  const weighings = atS.map(
    (moment, w): Weighing => ({
      atS: moment,
      massKg: dryKg * waterOf(USUAL_SHOP.relativeHumidity) + (heldKg[w] ?? 0),
      humidity: USUAL_SHOP.relativeHumidity,
      isWarmDried: isWarm && w === atS.length - 1,
    }),
  );
  return factorOf(weighCard({ ...plan, history, bareKg: 0, weighings }).diffusivity);
}
