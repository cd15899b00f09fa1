import type { ReactNode } from 'react';
import { Tile } from './Tile';
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
      <Tile
        type="checkbox"
        checked={checked}
        onChange={(e) => onChange(e.target.checked)}
        label={label}
        detail={detail}
      />
    </div>
  );
}
