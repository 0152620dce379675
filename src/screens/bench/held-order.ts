import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { useShop } from '../../parts/frame/shop-context';
import { byUrgency, type RowStanding } from '../../parts/time/row-standing';
import { useRows } from './use-rows';

/** Rows in order of urgency, as it was when the bench came into view: nothing changes its place while it is looked at. */
export function useHeldOrder(rows: readonly RowStanding[], nowMs: number): readonly RowStanding[] {
  const looks = useSignal(0);
  useEffect(() => {
    const look = (): void => {
      if (document.visibilityState === 'visible') looks.value++;
    };
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, [looks]);
  const held = useRef<{ readonly key: string; readonly ids: readonly string[] } | undefined>(undefined);
  const isWorking = rows.some(({ word }) => word === 'working');
  const key = `${looks.value} ${isWorking} ${rows.map(({ piece }) => piece.id).join()}`;
  if (held.current?.key !== key)
    held.current = { key, ids: byUrgency(rows, nowMs).map(({ piece }) => piece.id) };
  const byId = new Map(rows.map((row) => [row.piece.id, row]));
  return held.current.ids.flatMap((id) => byId.get(id) ?? []);
}

/** The piece that is most urgent when the bench comes into view. */
export function useFirstOfBench(): string | undefined {
  const rows = useRows();
  const nowMs = useShop().nowMs.value;
  const first = useRef<string | undefined>(undefined);
  if (!rows.some(({ piece }) => piece.id === first.current))
    first.current = byUrgency(rows, nowMs)[0]?.piece.id;
  return first.current;
}
