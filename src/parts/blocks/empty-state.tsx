import type { ComponentChildren } from 'preact';

export interface EmptyStateProps {
  readonly title: string;
  /** The first step, taught. */
  readonly text: string;
  /** The buttons. */
  readonly children?: ComponentChildren;
}

/** A place with nothing in it yet says what it is for and how to begin. */
export function EmptyState({ title, text, children }: EmptyStateProps) {
  return (
    <div class="empty">
      <h2>{title}</h2>
      <p>{text}</p>
      {children && <div class="acts">{children}</div>}
    </div>
  );
}
