import type { Actions } from '../../actions/shop';
import { UNDO } from '../../words/common';
import { sayOutcome, sayRefused } from './say-refused';
import { showToast } from './toast';

/** Undoes an entry and says so; the toast can bring it back. */
export async function undoWithToast(actions: Actions, entry: string, what: string): Promise<void> {
  const undone = await actions.undo(entry);
  if (!undone.ok) return sayRefused(undone.failure);
  const strike = undone.value.id;
  showToast({ text: UNDO.undone(what), onUndo: () => void bringBack(actions, strike, what) });
}

async function bringBack(actions: Actions, strike: string, what: string): Promise<void> {
  sayOutcome(await actions.undo(strike), () => ({ text: UNDO.back(what) }));
}

/** Says what was logged, with its undo. */
export const sayLogged = (actions: Actions, entry: string, what: string, text: string): void =>
  showToast({ text, onUndo: () => void undoWithToast(actions, entry, what) });
