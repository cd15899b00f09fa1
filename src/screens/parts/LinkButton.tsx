import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { type ButtonKind, type ButtonSize, buttonClass } from './Button';

interface LinkButtonProps {
  /** A path of this app: '/sculpture/12'. */
  readonly to: string;
  readonly kind?: ButtonKind;
  readonly size?: ButtonSize;
  readonly wide?: boolean;
  readonly icon?: ReactNode;
  readonly label?: string;
  readonly children: ReactNode;
}

/** Goes to another screen and looks like a button. */
export function LinkButton({ to, kind, size, wide, icon, label, children }: LinkButtonProps) {
  return (
    <Link href={to} className={buttonClass({ kind, size, wide })} aria-label={label}>
      {icon}
      <span className="button-text">{children}</span>
    </Link>
  );
}
