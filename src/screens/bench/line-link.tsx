import { Icon, type IconName } from '../../parts/blocks/icons';

export interface LineLinkProps {
  readonly kind: 'fire' | 'due';
  readonly icon: IconName;
  readonly href: string;
  readonly text: string;
  readonly when?: string | undefined;
}

/** Sign, words, and since when; a tap leads to it. */
export const LineLink = ({ kind, icon, href, text, when }: LineLinkProps) => (
  <a class="notice-link" data-kind={kind} href={href}>
    <Icon name={icon} />
    <span class="notice-words">{text}</span>
    {when && <span class="quiet digits">{when}</span>}
    <Icon name="next" />
  </a>
);
