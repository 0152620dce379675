import type { ReminderKind } from '../../logbook/kinds/reminder-kinds';
import type { Reminder } from '../../reminders/reminder';
import type { Act } from '../../verdicts/act';
import { holdsOf, verdictOn } from '../../verdicts/verdict';
import { factsOf } from '../verdicts/facts-of';
import type { BenchNow } from './bench';

/** The act that a reminder calls to. */
const CALLS_TO: { readonly [K in ReminderKind]?: Act } = {
  'next-coat': 'coat',
  'next-drop': 'coat',
  scuff: 'scuff',
  'level-sand': 'level-sand',
  'rub-out': 'rub-out',
};

/** Tells of a reminder whether it may call: what the judge holds is not called ready by it. */
export function notHeld({
  shop,
  outlooks,
  nowMs,
}: Pick<BenchNow, 'shop' | 'outlooks' | 'nowMs'>): (reminder: Reminder) => boolean {
  return ({ kind, pieceId }) => {
    const act = CALLS_TO[kind];
    const piece = shop.pieces.get(pieceId ?? '');
    if (act === undefined || !piece) return true;
    const facts = factsOf({ shop, piece, outlook: outlooks.get(piece.id), nowMs });
    return holdsOf(verdictOn({ act }, facts)).length === 0;
  };
}
