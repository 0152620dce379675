import type { Sanding } from '../../logbook/fold/pieces';
import { Notice } from '../../parts/frame/notice';
import { useShop } from '../../parts/frame/shop-context';
import { momentsOf } from '../../parts/time/moments';
import { SAND_FORM } from '../../words/piece/piece';
import { whenWords } from '../../words/times';
import { usePiece } from './use-piece';

/** Says so when the estimate still has the film soft; it does not forbid anything. */
export function StillSoft({ stage }: { readonly stage: Sanding['stage'] }) {
  const nowMs = useShop().nowMs.value;
  const { piece, outlook } = usePiece();
  const name = stage === 'rub-out' ? 'rubOut' : 'level';
  const moment = momentsOf(piece, outlook, nowMs).find((one) => one.name === name);
  if (stage === 'scuff' || !moment || moment.earliestMs <= nowMs) return null;
  return (
    <Notice kind="caution">
      <p>{SAND_FORM.soft(whenWords(moment.likelyMs, nowMs))}</p>
    </Notice>
  );
}
