import type { ButtonHTMLAttributes, ReactNode } from 'react';
import './button.css';

export type ButtonKind = 'main' | 'plain' | 'quiet' | 'danger';
export type ButtonSize = 'usual' | 'round' | 'big';

interface Look {
  readonly kind?: ButtonKind;
  /** usual 48 px; round 64 (96 with gloves), for what is pressed on a ladder; big 80 (96 with gloves), the main act. */
  readonly size?: ButtonSize;
  /** As wide as its column. */
  readonly wide?: boolean;
  readonly icon?: ReactNode;
}

export type ButtonProps = Look & Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'style' | 'className'>;

/** The class names that make a button or a link look like this one. */
export const buttonClass = ({ kind = 'plain', size = 'usual', wide = false }: Look): string =>
  `button ${kind} ${size}${wide ? ' wide' : ''}`;

/** Acts on release, as the platform does. Not a submit button unless told. */
export function Button({ kind, size, wide, icon, type = 'button', children, ...rest }: ButtonProps) {
  return (
    <button {...rest} type={type} className={buttonClass({ kind, size, wide })}>
      {icon}
      <span className="button-text">{children}</span>
    </button>
  );
}
