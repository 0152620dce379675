import type { Signal } from '@preact/signals';
import { NOT_SENT } from '../../../words/common';
import { holdDrawing } from '../../frame/draw-once';

/** Whatever becomes of it, the form can be sent again; where its code cannot be had, it says so. Done at once, it is never drawn busy. */
export async function whileBusy<Value>(
  isBusy: Signal<boolean>,
  act: () => Promise<Value>,
): Promise<Value | Lost> {
  const drawAgain = holdDrawing();
  isBusy.value = true;
  try {
    return await act();
  } catch (error) {
    console.error(error);
    return LOST;
  } finally {
    isBusy.value = false;
    drawAgain();
  }
}

const LOST = { ok: false, failure: { sentence: NOT_SENT, fields: {} } } as const;
type Lost = typeof LOST;
