import { type ReadonlySignal, signal } from '@preact/signals';
import { TOAST } from '../words/common';
import { Icon } from './icons';

export interface ToastMessage {
  /** What was done: "Coat 4 logged." */
  readonly text: string;
  readonly onUndo?: (() => void) | undefined;
}

const shown = signal<ToastMessage | undefined>(undefined);

/** What the toast says now. */
export const toast: ReadonlySignal<ToastMessage | undefined> = shown;

/** Says what was done, with its undo. It stays until it is closed, undone or followed by another. */
export function showToast(message: ToastMessage): void {
  shown.value = message;
}

export function closeToast(): void {
  shown.value = undefined;
}

/** The place where things done are said, with a caveat that holds for all of them now. It stands in the page from the start, so that it is read out. */
export function ToastRegion({ caveat }: { readonly caveat?: string | undefined }) {
  const message = shown.value;
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
            <button type="button" onClick={undo}>
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
