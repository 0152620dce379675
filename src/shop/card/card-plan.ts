import type { CardPlanRequest } from '../../estimator/card/foretell';
import type { Shop } from '../../logbook/fold/fold';
import type { Coat } from '../../logbook/fold/piece/pieces';
import { quantity } from '../../logbook/typed';
import { fail, type Result, succeed } from '../../result';
import { HOUR_MS } from '../../units';
import type { HistoryFault } from '../stack/history';
import { USUAL_COAT } from '../stack/usual-coat';
import type { TestCard } from './cards';
import { cardHistory } from './request';

/** A card that is yet to be made: what it lies beside, how large it is, and the scale. */
export type CardDraft = Pick<TestCard, 'pieceId' | 'areaM2' | 'divisionKg'>;

/** Coats of a usual day, and the time between them (common practice, no source). */
const COATS = 3;
const GAP_MS = 2 * HOUR_MS;
const USUAL = { by: 'wet', wetFilm: quantity(USUAL_COAT.metric) } as const;

/** What the worker is asked before a card is made: three coats like the last one on its piece, or from the jar filled last. */
export function cardPlan(draft: CardDraft, shop: Shop, nowMs: number): Result<CardPlanRequest, HistoryFault> {
  const last = shop.pieces.get(draft.pieceId ?? '')?.coats.findLast(({ how }) => how !== 'flash');
  const jar = last?.jar ?? [...shop.jars.values()].findLast(({ emptiedMs }) => emptiedMs === undefined)?.id;
  if (jar === undefined) return fail({ kind: 'unknown-jar' });
  const coats = Array.from({ length: COATS }, (_, k) => {
    const coat = { piece: '', jar, how: last?.how ?? 'spray', film: last?.film ?? USUAL };
    return { ...coat, id: String(k), atMs: nowMs + k * GAP_MS } as unknown as Coat;
  });
  const card: TestCard = {
    ...draft,
    id: '',
    entry: '',
    madeMs: nowMs,
    endedMs: undefined,
    bareKg: 0,
    coats,
    withCoats: new Set(),
    weighings: [],
  };
  const told = cardHistory(card, shop);
  if (!told.ok) return told;
  const { areaM2, divisionKg } = draft;
  return succeed({ plan: { history: told.value.history, areaM2, divisionKg } });
}
