import type { ComponentChildren } from 'preact';

export interface LineProps {
  readonly label: string;
  /** What is said already: as last time, or as is usual. */
  readonly says: string | undefined;
  readonly isOpen?: boolean | undefined;
  readonly children: ComponentChildren;
}

/** Fields that stand as one line with what they say already, and open on a tap; a problem in them opens it too. */
export const Line = ({ label, says, isOpen = false, children }: LineProps) => (
  <div class="fold line">
    <details open={isOpen}>
      <summary>
        <span class="line-label">{label}</span>
        <span class="line-says digits">{says}</span>
      </summary>
      <div class="fold-inner">{children}</div>
    </details>
  </div>
);
