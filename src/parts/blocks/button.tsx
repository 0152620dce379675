import type { ComponentChildren } from 'preact';
import { Icon, type IconName } from './icons';

export interface ButtonProps {
  readonly children: ComponentChildren;
  readonly onClick?: ((event: MouseEvent) => void) | undefined;
  /** `main`: the one thing to do here. `plain`: words only. */
  readonly kind?: 'main' | 'usual' | 'plain' | 'danger' | undefined;
  readonly icon?: IconName | undefined;
  readonly isWide?: boolean | undefined;
  readonly isSubmit?: boolean | undefined;
  /** It makes the form a row longer, and does nothing else. */
  readonly addsRow?: boolean | undefined;
  readonly disabled?: boolean | undefined;
}

/** A button a gloved thumb can hit. */
export function Button({
  children,
  onClick,
  kind = 'usual',
  icon,
  isWide,
  isSubmit,
  addsRow,
  disabled,
}: ButtonProps) {
  return (
    <button
      type={isSubmit ? 'submit' : 'button'}
      class="button"
      data-kind={kind}
      data-wide={isWide || undefined}
      data-adds={addsRow || undefined}
      disabled={disabled}
      onClick={onClick}
    >
      {icon && <Icon name={icon} />}
      <span>{children}</span>
    </button>
  );
}

export interface LinkButtonProps extends Pick<ButtonProps, 'children' | 'kind' | 'icon' | 'isWide'> {
  readonly href: string;
}

/** Looks as a button, leads to a place. */
export function LinkButton({ children, href, kind = 'usual', icon, isWide }: LinkButtonProps) {
  return (
    <a class="button" data-kind={kind} data-wide={isWide || undefined} href={href}>
      {icon && <Icon name={icon} />}
      <span>{children}</span>
    </a>
  );
}
