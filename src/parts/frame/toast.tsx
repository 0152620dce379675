import { computed, signal } from '@preact/signals';
import { TOAST } from '../../words/common';
import { Icon } from './icons';
import { readerMoves } from './route';

export interface ToastMessage {
  /** What was done: "Coat 4 logged." */
  readonly text: string;
  readonly onUndo?: (() => void) | undefined;
}

const said = signal<{ readonly message: ToastMessage; readonly afterMoves: number } | undefined>(undefined);

/** What the toast says now: a message is left behind with the page on which it was read. */
const toast = computed(() => (said.value?.afterMoves === readerMoves.value ? said.value.message : undefined));

/** Says what was done, with its undo. It stays until it is closed, undone, followed by another, or left behind with its page. */
export function showToast(message: ToastMessage): void {
  said.value = { message, afterMoves: readerMoves.peek() };
}

export function closeToast(): void {
  said.value = undefined;
}

/** The place where things done are said, with a caveat that holds for all of them now. It stands in the page from the start, so that it is read out. */
export function ToastRegion({ caveat }: { readonly caveat?: string | undefined }) {
  const message = toast.value;
  function undo(): void {
    closeToast();
    message?.onUndo?.();
  }
  return (
    <div class="toast-region" role="status">
      {message && (
        <div class="toast">
          <Icon name="check" />
          <span>
            {message.text}
            {caveat && ` ${caveat}`}
          </span>
          {message.onUndo && (
            <button type="button" class="undo" onClick={undo}>
              <Icon name="undo" />
              {TOAST.undo}
            </button>
          )}
          <button type="button" aria-label={TOAST.close} onClick={closeToast}>
            <Icon name="close" />
          </button>
        </div>
      )}
    </div>
  );
}
