import type { ReactNode } from 'react';
import './choice.css';

interface TickProps {
  readonly label: string;
  readonly detail?: ReactNode;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly size?: 'usual' | 'round';
}

/** One yes-or-no, as a tile. */
export function Tick({ label, detail, checked, onChange, size = 'usual' }: TickProps) {
  return (
    <div className={`tiles full ${size}`}>
      <label className="tile">
        <input type="checkbox" checked={checked} onChange={(e) => onChange(e.target.checked)} />
        <span className="tile-mark" aria-hidden="true" />
        <span className="tile-words">
          <span className="tile-label">{label}</span>
          {detail && <span className="tile-detail"> {detail}</span>}
        </span>
      </label>
    </div>
  );
}
