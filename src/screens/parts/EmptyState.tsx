import type { ReactNode } from 'react';
import './emptyState.css';

interface EmptyStateProps {
  readonly title: string;
  readonly children?: ReactNode;
  readonly actions?: ReactNode;
  /** It is all there is on the screen: its title is the heading of the page. */
  readonly page?: true;
}

/** Nothing here yet: says so, and what to do. The ring that is not yet walked. */
export function EmptyState({ title, children, actions, page }: EmptyStateProps) {
  return (
    <div className="empty">
      <svg width="88" height="88" viewBox="0 0 88 88" aria-hidden="true" className="empty-ring">
        <circle cx="44" cy="44" r="36" />
        <path d="M36 62h16l-2.5-12c-.6-3 .8-7-.2-12a5.4 5.4 0 10-10.6 0c-1 5 .4 9-.2 12z" />
      </svg>
      {page ? <h1 className="empty-title">{title}</h1> : <p className="empty-title">{title}</p>}
      {children && <div className="soft">{children}</div>}
      {actions && <div className="row">{actions}</div>}
    </div>
  );
}
