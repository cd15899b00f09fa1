import { type ReactNode, useId, useState } from 'react';
import { Button } from './Button';
import { DownIcon, UpIcon } from './icons';
import './fold.css';

interface FoldProps {
  /** On the button while it is shut, and while it is open. */
  readonly show: string;
  readonly hide: string;
  /** On paper too it shows only where it was opened: for long detail behind a page that stands without it. */
  readonly alsoOnPaper?: boolean;
  /** Made only once it is opened, and so never on paper unless it was: for what stands behind each row of a long list. */
  readonly whenOpened?: boolean;
  readonly children: ReactNode;
}

/** Something put away until it is asked for. On paper it is open unless `alsoOnPaper`: paper cannot be touched. */
export function Fold({ show, hide, alsoOnPaper = false, whenOpened = false, children }: FoldProps) {
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <div className="fold">
      <div className="not-printed">
        <Button
          kind="quiet"
          aria-expanded={open}
          aria-controls={id}
          icon={open ? <UpIcon /> : <DownIcon />}
          onClick={() => setOpen(!open)}
        >
          {open ? hide : show}
        </Button>
      </div>
      <div id={id} className={open ? 'fold-body' : alsoOnPaper ? 'fold-body put-away' : 'fold-body shut'}>
        {whenOpened && !open ? null : children}
      </div>
    </div>
  );
}
