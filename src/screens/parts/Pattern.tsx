import { useId } from 'react';
import type { IndexLevel } from './indexLevel';
import './pattern.css';

interface PatternFillProps {
  readonly id: string;
  readonly level: IndexLevel;
  /** Units of the drawing to a pixel, where they differ. */
  readonly scale?: number;
}

/**
 * The hatch of one level, to fill a shape with `url(#id)`: nothing, dots, lines one way, lines closer, crossed.
 * Colour and hatch say the same thing twice, so that grey print and colour-blind eyes lose nothing.
 */
export function PatternFill({ id, level, scale = 1 }: PatternFillProps) {
  const size = level === 4 ? 5 : 7;
  const turn = level === 5 ? 'rotate(45)' : level > 2 ? 'rotate(-45)' : '';
  const grown = scale === 1 ? '' : `scale(${scale})`;
  return (
    <pattern
      id={id}
      className={`level-${level}`}
      width={size}
      height={size}
      patternUnits="userSpaceOnUse"
      patternTransform={`${grown} ${turn}`.trim() || undefined}
    >
      <rect className="level-ground" width={size} height={size} />
      {level === 2 && <circle className="level-dot" cx="3.5" cy="3.5" r="1.1" />}
      {level >= 3 && <path className="level-line" d={`M0 ${size / 2}h${size}`} />}
      {level === 5 && <path className="level-line" d={`M${size / 2} 0v${size}`} />}
    </pattern>
  );
}

/** A swatch of one level, for keys and tables. The word stands beside it. */
export function Pattern({ level }: { readonly level: IndexLevel }) {
  const id = useId();
  return (
    <svg className="swatch" width="28" height="28" viewBox="0 0 28 28" aria-hidden="true">
      <defs>
        <PatternFill id={id} level={level} />
      </defs>
      <rect className="swatch-edge" x="1" y="1" width="26" height="26" rx="4" fill={`url(#${id})`} />
    </svg>
  );
}
