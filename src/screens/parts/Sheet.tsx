import { type ReactNode, useEffect, useId, useRef } from 'react';
import { w } from '../../words';
import { Button } from './Button';
import { CrossIcon } from './icons';
import './sheet.css';

interface SheetProps {
  readonly open: boolean;
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** What can be done; stands at the foot, in the thumb's reach. */
  readonly actions?: ReactNode;
}

/** A native modal dialog: focus stays in it, Escape closes it, focus goes back to where it came from. */
export function Sheet({ open, title, onClose, children, actions }: SheetProps) {
  return open ? (
    <OpenSheet title={title} onClose={onClose} actions={actions}>
      {children}
    </OpenSheet>
  ) : null;
}

function OpenSheet({ title, onClose, children, actions }: Omit<SheetProps, 'open'>) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const element = dialog.current;
    if (!element) return;
    const before = document.activeElement;
    // Where the platform has no modal dialogs the sheet still opens, as part of the page.
    if (typeof element.showModal === 'function') element.showModal();
    else element.setAttribute('open', '');
    return () => {
      if (typeof element.close === 'function') element.close();
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      className="sheet"
      aria-labelledby={id}
      onCancel={(e) => {
        e.preventDefault();
        onClose();
      }}
    >
      <div className="sheet-head by-hand">
        <h2 id={id}>{title}</h2>
        <Button kind="quiet" onClick={onClose} aria-label={w.parts.closeSheet} icon={<CrossIcon />} />
      </div>
      <div className="sheet-body stack">{children}</div>
      {actions && <div className="sheet-foot row by-hand">{actions}</div>}
    </dialog>
  );
}
