import { type ReadonlySignal, signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { route } from './route';

/** What stands beside the page that the address names, on a wide screen; `piece` where the address names none. */
export interface Beside {
  readonly piece?: string | undefined;
}

/** Given around what stands beside: it takes neither the title nor the focus. */
export const BesideContext = createContext<Beside | undefined>(undefined);
export const useBeside = (): Beside | undefined => useContext(BesideContext);

/** The piece that a page is about: that of the address, or the one put beside it. */
export function usePieceId(): string {
  const beside = useBeside()?.piece;
  return beside ?? route.value.rest[0] ?? '';
}

/** Wide enough for a list and, at its right, what is chosen in it. */
const WIDE = '(min-width: 56.25rem)';

export const isWide: ReadonlySignal<boolean> = follow();

function follow(): ReadonlySignal<boolean> {
  if (!('matchMedia' in globalThis)) return signal(false);
  const query = matchMedia(WIDE);
  const wide = signal(query.matches);
  query.addEventListener('change', () => {
    wide.value = query.matches;
  });
  return wide;
}
