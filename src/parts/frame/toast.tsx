import { computed, effect, signal } from '@preact/signals';
import { render } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { TOAST } from '../../words/common';
import { Icon } from '../blocks/icons';
import { readerMoves } from './route';

export interface ToastMessage {
  /** What was done: "Coat 4 logged." */
  readonly text: string;
  readonly onUndo?: (() => void) | undefined;
  /** Nothing was done, and why. */
  readonly isRefused?: boolean;
  /** Where that is put right. */
  readonly way?: { readonly href: string; readonly label: string } | undefined;
}

const said = signal<{ readonly message: ToastMessage; readonly afterMoves: number } | undefined>(undefined);

/** What the toast says now: a message is left behind with the page on which it was read. */
const toast = computed(() => (said.value?.afterMoves === readerMoves.value ? said.value.message : undefined));

/** Long enough to read it and to undo; after that what was done is undone in its history. */
const LEAVES_AFTER_MS = 15_000;

/** Says what was done, with its undo. It stays until it is closed, undone, followed by another, left behind with its page, or read. */
export function showToast(message: ToastMessage): void {
  const mine = { message, afterMoves: readerMoves.peek() };
  said.value = mine;
  const leave = (): void => {
    if (said.peek() !== mine) return;
    if (document.querySelector('.toast:hover, .toast:focus-within')) setTimeout(leave, LEAVES_AFTER_MS);
    else closeToast();
  };
  setTimeout(leave, LEAVES_AFTER_MS);
}

export function closeToast(): void {
  said.value = undefined;
}

function Toast({ text, isRefused, way, onUndo, caveat }: ToastMessage & ToastRegionProps) {
  return (
    <div class="toast">
      <Icon name={isRefused ? 'caution' : 'check'} />
      <span>
        {text}
        {caveat && ` ${caveat}`}
      </span>
      {way && (
        <a class="undo" href={way.href}>
          {way.label}
        </a>
      )}
      {onUndo && (
        <button
          type="button"
          class="undo"
          onClick={() => {
            closeToast();
            onUndo();
          }}
        >
          <Icon name="undo" />
          {TOAST.undo}
        </button>
      )}
      <button type="button" aria-label={TOAST.close} onClick={closeToast}>
        <Icon name="close" />
      </button>
    </div>
  );
}

interface ToastRegionProps {
  readonly caveat?: string | undefined;
}

/**
 * The place where things done are said, with a caveat that holds for all of them now. It stands in the page from the start, so that it is
 * read out, and is drawn at once, by itself: nobody waits for a page to see that a coat is logged.
 */
export function ToastRegion({ caveat }: ToastRegionProps) {
  const region = useRef<HTMLDivElement>(null);
  useEffect(
    () =>
      effect(() => {
        const message = toast.value;
        if (region.current) render(message && <Toast {...message} caveat={caveat} />, region.current);
      }),
    [caveat],
  );
  return <div ref={region} class="toast-region" role="status" />;
}
