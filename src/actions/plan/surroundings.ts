import type { Shop } from '../../logbook/fold/fold';
import type { Filter } from '../../logbook/fold/shop/shop-air';
import { toMinute } from '../../planner/local-day';
import type { Plan } from '../../planner/plan';
import type { Surroundings } from '../../reminders/shop-reminders';
import { filtersInUse } from '../../shop/air/filter-clock';
import { cardsOf } from '../../shop/card/cards';
import { nextWeighing } from '../../shop/card/next-weighing';
import { jarLife } from '../../shop/jar/life';
import type { CardOutlooks } from '../outlook/card-outlook';

/** What in the shop comes to an end, and which owners wait for word. */
export function surroundings(
  shop: Shop,
  plan: Plan | undefined,
  cards: CardOutlooks = new Map(),
): Surroundings {
  return {
    jars: jarsOf(shop),
    cartridges: cartridgesOf(shop),
    cards: weighingsDue(shop, cards),
    updates: readyOf(shop, plan),
  };
}

/** When each open card is to be weighed, as it stood when it was last weighed or coated, so that the time does not run away. */
function weighingsDue(shop: Shop, cards: CardOutlooks): Surroundings['cards'] {
  return [...cardsOf(shop).values()].flatMap((card) => {
    const outlook = cards.get(card.id);
    if (outlook?.state !== 'ready' || card.endedMs !== undefined) return [];
    const sinceMs = Math.max(card.coats.at(-1)?.atMs ?? 0, card.weighings.at(-1)?.atMs ?? 0);
    const next = nextWeighing(card, outlook, sinceMs);
    const { weighings } = card;
    return next.do === 'nothing' ? [] : [{ id: card.id, weighed: weighings.length, at: toMinute(next.atMs) }];
  });
}

function jarsOf(shop: Shop): Surroundings['jars'] {
  return [...shop.jars.values()].flatMap((jar) => {
    const life = jar.emptiedMs === undefined ? jarLife(jar, shop) : undefined;
    if (!life) return [];
    return [{ id: jar.id, madeAt: toMinute(jar.filledMs), endsAt: toMinute(life.endMs) }];
  });
}

function cartridgesOf(shop: Shop): Surroundings['cartridges'] {
  return filtersInUse(shop.filters).flatMap((filter) => {
    const changeMs = Math.min(openEndMs(filter), wornOutMs(filter, shop));
    return Number.isFinite(changeMs) ? [{ id: filter.id, changeAt: toMinute(changeMs) }] : [];
  });
}

const openEndMs = ({ open, openedMs }: Filter): number =>
  open ? openedMs + open.si * 1000 : Number.POSITIVE_INFINITY;

/** The end of the spraying with which the schedule was used up. */
function wornOutMs({ id, wear, wornS }: Filter, { sprayings }: Shop): number {
  if (!wear || wornS < wear.si) return Number.POSITIVE_INFINITY;
  return sprayings.findLast(({ filters }) => filters.includes(id))?.atMs ?? Number.POSITIVE_INFINITY;
}

/** Owners who wait for a piece of which everything is done; of one that the plan leaves out that is not known. */
function readyOf({ plans, promises }: Shop, plan: Plan | undefined): Surroundings['updates'] {
  const steps = plan?.steps ?? [];
  return [...promises.keys()].flatMap((pieceId) => {
    const own = steps.filter((step) => step.pieceId === pieceId);
    const last = own.at(-1);
    const isPlanned = plans.has(pieceId) && plan?.pieces.some((piece) => piece.pieceId === pieceId);
    const isReady = isPlanned && last !== undefined && own.every(({ isDone }) => isDone);
    return isReady ? [{ pieceId, at: last.end }] : [];
  });
}
