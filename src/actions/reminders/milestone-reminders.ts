import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import type { ReminderKind } from '../../logbook/kinds/shop/reminder-kinds';
import type { Reminder } from '../../reminders/reminder';
import { groundsOn } from '../../shop/stack/grounds';
import { DAY_MINUTES, MINUTE_MS } from '../../units';
import type { Outlook, PieceId } from '../outlook/outlook';

/** So long a reminder is of use to who made no plan (judgement, no source). */
const USEFUL_MINUTES = 3 * DAY_MINUTES;

/** For pieces without a plan: when the film is ready for the next coat, for level-sanding, for rubbing out, and when filler or glue is through its wait. */
export function milestoneReminders(shop: Shop, outlooks: ReadonlyMap<PieceId, Outlook>): Reminder[] {
  const { pieces, plans } = shop;
  return [...pieces.values()]
    .filter(({ id, closedMs }) => closedMs === undefined && !plans.has(id))
    .flatMap((piece) => [...ofPiece(piece, outlooks.get(piece.id)), ...ofGrounds(piece, shop)]);
}

/** The newest filler, sealer or glue; what went on after it says that its wait is over. */
function ofGrounds(piece: Piece, shop: Shop): Reminder[] {
  const last = groundsOn(piece, shop).at(-1);
  const isPast = [...piece.coats, ...piece.sandings].some(({ atMs }) => last && atMs > last.atMs);
  if (!last || isPast) return [];
  const at = Math.ceil(last.until.likelyMs / MINUTE_MS);
  return [
    { id: `next-step:${last.id}`, kind: 'next-step', at, until: at + USEFUL_MINUTES, pieceId: piece.id },
  ];
}

function ofPiece({ id, coats, sandings }: Piece, outlook: Outlook | undefined): Reminder[] {
  const last = coats.at(-1);
  if (outlook?.state !== 'ready' || !last) return [];
  const isSanded = (stage: string) => sandings.some((one) => one.stage === stage && one.atMs > last.atMs);
  const isLevel = isSanded('level');
  const isRubbed = isSanded('rub-out');
  const { recoat, level, rubOut } = outlook.estimate.milestones;
  const at = (kind: ReminderKind, likelyS: number): Reminder[] => {
    if (!Number.isFinite(likelyS)) return [];
    const minute = Math.ceil((outlook.startMs + likelyS * 1000) / MINUTE_MS);
    return [{ id: `${kind}:${last.id}`, kind, at: minute, until: minute + USEFUL_MINUTES, pieceId: id }];
  };
  return [
    ...(isLevel || isRubbed ? [] : at('next-coat', recoat.likelyS)),
    ...(isLevel || isRubbed ? [] : at('level-sand', level.likelyS)),
    ...(isRubbed ? [] : at('rub-out', rubOut.likelyS)),
  ];
}
