import type { ComponentChildren } from 'preact';
import { Icon, type IconName } from './icons';

export interface RowProps {
  readonly href: string;
  readonly title: string;
  /** The face at the left, such as a compact cross-section. */
  readonly face?: ComponentChildren;
  /** How it stands: a shape and a word. */
  readonly state?: {
    readonly icon: IconName;
    readonly word: string;
    readonly kind: 'ready' | 'wait' | 'stop' | 'quiet';
  };
  readonly children?: ComponentChildren;
}

/** A list row that leads somewhere. Lies in a `<ul class="rows">`. */
export function Row({ href, title, face, state, children }: RowProps) {
  return (
    <li class="row">
      <a href={href}>
        {face}
        <div class="row-text">
          <p class="row-title">{title}</p>
          {state && (
            <p class="state" data-kind={state.kind}>
              <Icon name={state.icon} />
              {state.word}
            </p>
          )}
          {children}
        </div>
        <span class="row-next">
          <Icon name="next" />
        </span>
      </a>
    </li>
  );
}
