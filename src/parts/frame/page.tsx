import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { BACK, pageTitle } from '../../words/common';
import { Icon } from './icons';
import { arrivedByLink, sentFrom } from './route';

export interface PageProps {
  readonly title: string;
  /** Where the arrow leads; no arrow when left out. */
  readonly backTo?: string | undefined;
  readonly backLabel?: string | undefined;
  /** Small things on the right of the title. */
  readonly aside?: ComponentChildren;
  /** `two`: side by side on a tablet. */
  readonly columns?: 'one' | 'two' | undefined;
  readonly children: ComponentChildren;
}

/** A screen: its title, the way back, and its content. Coming to it puts the reader at its title. */
export function Page({ title, backTo, backLabel = BACK, aside, columns = 'one', children }: PageProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const from = sentFrom();
  const to = from ?? backTo;
  useEffect(() => {
    document.title = pageTitle(title);
  }, [title]);
  useEffect(() => {
    if (!arrivedByLink()) return;
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <>
      <header class="page-head">
        {to !== undefined && (
          <a class="page-back" href={to} aria-label={from ? BACK : backLabel}>
            <Icon name="back" />
          </a>
        )}
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        {aside}
      </header>
      <div class="page-body" data-columns={columns}>
        {children}
      </div>
    </>
  );
}

/** Puts the reader at the title again, as when what stands under it has become another thing. */
export function readFromTitle(): void {
  scrollTo(0, 0);
  document.querySelector<HTMLElement>('main h1')?.focus({ preventScroll: true });
}

/** A group of things under a heading, edged like purfling. */
export function Section({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ComponentChildren;
}) {
  return (
    <section class="section">
      <h2>{title}</h2>
      {children}
    </section>
  );
}
