import type { ReactNode } from 'react';
import './page.css';

/** The acts of a long form: a bar that stays at the foot, on the side of the hand that touches. The main one comes last. */
export function FormActs({ children }: { readonly children: ReactNode }) {
  return <div className="page-actions by-hand not-printed">{children}</div>;
}
