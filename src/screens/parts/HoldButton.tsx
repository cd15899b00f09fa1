import { type MouseEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { w } from '../../words';
import { type ButtonKind, type ButtonSize, buttonClass } from './Button';
import './holdButton.css';

/** Long enough that no drop, sleeve or slip does it, milliseconds. From the design of the field. */
export const holdFor = 600;

interface HoldButtonProps {
  readonly kind?: ButtonKind;
  readonly size?: ButtonSize;
  readonly disabled?: boolean;
  readonly onHeld: () => void;
  readonly children: ReactNode;
}

/**
 * Acts once it was held down for a moment. Keys, a screen reader or a switch press it once: no drop of water and no sleeve does that, and
 * not everybody can hold.
 */
export function HoldButton({ kind, size, disabled, onHeld, children }: HoldButtonProps) {
  const [holding, setHolding] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const letGo = () => {
    clearTimeout(timer.current);
    setHolding(false);
  };
  useEffect(() => () => clearTimeout(timer.current), []);
  const hold = () => {
    setHolding(true);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => {
      setHolding(false);
      onHeld();
    }, holdFor);
  };
  const click = (e: MouseEvent) => {
    // Of a pointer the holding counts, not the click at its end.
    if (e.detail === 0) onHeld();
  };
  return (
    <button
      type="button"
      className={`${buttonClass({ ...(kind ? { kind } : {}), ...(size ? { size } : {}) })} hold`}
      disabled={disabled}
      data-holding={holding ? 'yes' : undefined}
      aria-description={w.field.holdWhat}
      onPointerDown={hold}
      onPointerUp={letGo}
      onPointerLeave={letGo}
      onPointerCancel={letGo}
      onContextMenu={(e) => e.preventDefault()}
      onClick={click}
    >
      <span className="button-text">{holding ? w.field.keepHolding : children}</span>
    </button>
  );
}
