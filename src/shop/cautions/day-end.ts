import type { Shop } from '../../logbook/fold/fold';
import { cautionsFor, HAZARDS } from '../../reminders/cautions';
import type { Caution } from '../../words/air/cautions';
import { jarHazards } from '../jar/hazards';
import { coatsOfDay } from './day-end-due';

/** The cautions for the end of the day, by every jar that was used in it. Rags are always among them. */
export function dayEndCautions(shop: Shop, nowMs: number): readonly Caution[] {
  const used = new Set(coatsOfDay(shop, nowMs).map(({ jar }) => jar));
  const found = new Set([...used].flatMap((id) => hazardsOf(id, shop)));
  return cautionsFor(
    'end-day',
    HAZARDS.filter((hazard) => found.has(hazard)),
  );
}

function hazardsOf(id: string, shop: Shop) {
  const jar = shop.jars.get(id);
  return jar ? jarHazards(jar, shop) : [];
}
