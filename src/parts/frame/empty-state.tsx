import type { ComponentChildren } from 'preact';
import { CrossSection } from '../film/cross-section';
import type { FilmLayer } from '../film/film-picture';

export interface EmptyStateProps {
  readonly title: string;
  /** The first step, taught. */
  readonly text: string;
  /** Invented coats to draw above it; nothing is drawn when left out. */
  readonly picture?: {
    readonly layers: readonly FilmLayer[];
    readonly woodLabel: string;
    readonly describe: string;
  };
  /** The buttons. */
  readonly children?: ComponentChildren;
}

/** A place with nothing in it yet says what it is for and how to begin. */
export function EmptyState({ title, text, picture, children }: EmptyStateProps) {
  return (
    <div class="empty">
      {picture && <CrossSection {...picture} />}
      <h2>{title}</h2>
      <p>{text}</p>
      {children && <div class="acts">{children}</div>}
    </div>
  );
}
