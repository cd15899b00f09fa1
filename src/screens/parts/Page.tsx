import { type ReactNode, useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { w } from '../../words';
import { BackIcon } from './icons';
import './page.css';

interface PageProps {
  readonly title: string;
  /** Small line above the title: the number of the work, the kind of screen. */
  readonly over?: ReactNode;
  readonly lead?: ReactNode;
  readonly back?: { readonly to: string; readonly label: string };
  readonly children: ReactNode;
  /** The acts of this screen: a bar at the foot, on the side of the hand that holds. */
  readonly actions?: ReactNode;
  /** Text column of a reading length. */
  readonly narrow?: boolean;
}

/** One screen: its title takes the focus when it comes up, so that a screen reader starts there. */
export function Page({ title, over, lead, back, children, actions, narrow }: PageProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${title} · ${w.product}`;
  }, [title]);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
  }, []);
  return (
    <div className={narrow ? 'page narrow' : 'page'}>
      <div className="page-head">
        {back && (
          <Link href={back.to} className="page-back not-printed">
            <BackIcon />
            <span>{back.label}</span>
          </Link>
        )}
        {over && <p className="page-over">{over}</p>}
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        {lead && <p className="page-lead">{lead}</p>}
      </div>
      {children}
      {actions && <div className="page-actions by-hand not-printed">{actions}</div>}
    </div>
  );
}

interface SectionProps {
  readonly title: string;
  readonly lead?: ReactNode;
  readonly actions?: ReactNode;
  readonly children?: ReactNode;
}

/** A part of a page under its own heading. */
export function Section({ title, lead, actions, children }: SectionProps) {
  return (
    <section className="section">
      <div className="section-head row">
        <h2 className="grow">{title}</h2>
        {actions}
      </div>
      {lead && <p className="soft">{lead}</p>}
      {children}
    </section>
  );
}

/** What is shown while something is being read. */
export function Reading({ children }: { readonly children?: ReactNode }) {
  return <p className="reading">{children ?? w.parts.reading}</p>;
}
