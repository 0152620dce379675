import type { Piece } from '../../../logbook/fold/piece/pieces';
import { Notice } from '../../../parts/blocks/notice';
import { useShop } from '../../../parts/frame/shop-context';
import { REST_DAYS } from '../../../shop/zone/drop-fill';
import { DAY_MS } from '../../../units';
import { DROP_WORDS as WORDS } from '../../../words/piece/zone';
import { dayWords } from '../../../words/times';

interface FillRestProps {
  readonly piece: Piece;
  readonly zoneId: string;
}

/** Says that a drop fill is too young to be levelled, by the rule of the trade. */
export function FillRest({ piece: { coats }, zoneId }: FillRestProps) {
  const nowMs = useShop().nowMs.value;
  const last = coats.findLast((coat) => coat.how === 'brush-fill' && coat.zoneId === zoneId);
  const untilMs = last && last.atMs + REST_DAYS.earliest * DAY_MS;
  if (untilMs === undefined || untilMs <= nowMs) return null;
  return (
    <Notice kind="caution">
      <p>{WORDS.levelNow(dayWords(untilMs, nowMs))}</p>
    </Notice>
  );
}
