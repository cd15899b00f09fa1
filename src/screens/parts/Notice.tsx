import { type ReactNode, useId } from 'react';
import { w } from '../../words';
import { CautionIcon, NoteIcon, ProblemIcon, StopIcon } from './icons';
import './notice.css';

export type NoticeKind = 'note' | 'caution' | 'stop' | 'problem';

interface NoticeProps {
  readonly kind?: NoticeKind;
  readonly title?: ReactNode;
  readonly children?: ReactNode;
  readonly actions?: ReactNode;
}

const pictures = { note: NoteIcon, caution: CautionIcon, stop: StopIcon, problem: ProblemIcon } as const;

/** Something to know (note), take care of (caution), not to do (stop), or that went wrong (problem, spoken at once). */
export function Notice({ kind = 'note', title, children, actions }: NoticeProps) {
  const Picture = pictures[kind];
  const id = useId();
  return (
    <section className={`notice ${kind}`} role={kind === 'problem' ? 'alert' : 'note'} aria-labelledby={id}>
      <Picture />
      <div className="notice-words">
        <p className="notice-title" id={id}>
          <span className={title ? 'unseen' : undefined}>{w.parts.notice[kind]}</span>
          {title && <> {title}</>}
        </p>
        {children}
        {actions && <div className="row">{actions}</div>}
      </div>
    </section>
  );
}
