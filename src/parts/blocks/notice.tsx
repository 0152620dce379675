import type { ComponentChildren } from 'preact';
import { NOTICE_WORDS } from '../../words/common';
import { Icon, type IconName } from './icons';

export type NoticeKind = 'note' | 'caution' | 'stop' | 'fire';

export interface NoticeProps {
  readonly kind: NoticeKind;
  /** The heading; the kind's own word ("Caution") when left out. */
  readonly title?: string | undefined;
  readonly children: ComponentChildren;
  /** Read out at once when it comes up after an act. */
  readonly isNew?: boolean | undefined;
}

const ICONS: Record<NoticeKind, IconName> = { note: 'note', caution: 'caution', stop: 'stop', fire: 'fire' };

/** A caution at the moment of the act: a shape, a word, then plain text. */
export function Notice({ kind, title, children, isNew }: NoticeProps) {
  return (
    <div class="notice" data-kind={kind} role={isNew ? 'alert' : undefined}>
      <p class="notice-head">
        <Icon name={ICONS[kind]} />
        <strong>{title ?? NOTICE_WORDS[kind]}</strong>
      </p>
      <div class="notice-text">{children}</div>
    </div>
  );
}
