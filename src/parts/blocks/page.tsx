import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { BACK, pageTitle } from '../../words/common';
import { useBeside } from '../frame/beside';
import { arrivedByLink, leftAt, sentFrom } from '../frame/route';
import { Icon } from './icons';

export interface PageProps {
  readonly title: string;
  /** Where the arrow leads; no arrow when left out. */
  readonly backTo?: string | undefined;
  readonly backLabel?: string | undefined;
  /** Small things on the right of the title. */
  readonly aside?: ComponentChildren;
  /** `two`: side by side on a tablet. */
  readonly columns?: 'one' | 'two' | undefined;
  /** A list is come back to where it was left. */
  readonly keepsPlace?: boolean | undefined;
  readonly children: ComponentChildren;
}

/** A screen: its title, the way back, and its content. Coming to it puts the reader at its title. */
export function Page({
  title,
  backTo,
  backLabel = BACK,
  aside,
  columns = 'one',
  keepsPlace,
  children,
}: PageProps) {
  const isBeside = useBeside() !== undefined;
  const heading = useRef<HTMLHeadingElement>(null);
  const from = sentFrom();
  const to = from ?? backTo;
  useEffect(() => {
    if (!isBeside) document.title = pageTitle(title);
  }, [title, isBeside]);
  useEffect(() => {
    if (!arrivedByLink() || isBeside) return;
    scrollTo(0, keepsPlace ? leftAt() : 0);
    heading.current?.focus({ preventScroll: true });
  }, [keepsPlace, isBeside]);
  const Heading = isBeside ? 'h2' : 'h1';
  return (
    <>
      <header class="page-head">
        {to !== undefined && (
          <a class="page-back" href={to} aria-label={from ? BACK : backLabel}>
            <Icon name="back" />
          </a>
        )}
        <Heading ref={heading} class="page-title" tabIndex={-1}>
          {title}
        </Heading>
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

/** A group of things under a heading, with a thin rule below it. */
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
