import type { ComponentChildren } from 'preact';

export interface FoldProps {
  readonly title: string;
  /** What it says in short, at the right of its heading. */
  readonly brief?: string | undefined;
  /** Open when the page is first seen. */
  readonly isOpen?: boolean | undefined;
  readonly children: ComponentChildren;
}

/** What was opened or shut on which page, so that who comes back finds it so. */
const touched = new Map<string, boolean>();

/** A section that stands as one line, and opens on a tap. */
export function Fold({ title, brief, isOpen = false, children }: FoldProps) {
  const key = `${location.hash} ${title}`;
  return (
    <section class="section fold">
      <details
        open={touched.get(key) ?? isOpen}
        onToggle={(event) => {
          touched.set(key, event.currentTarget.open);
        }}
      >
        <summary>
          <h2>{title}</h2>
          {brief && <span class="fold-brief digits">{brief}</span>}
        </summary>
        <div class="fold-inner">{children}</div>
      </details>
    </section>
  );
}
