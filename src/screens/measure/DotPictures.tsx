import type { ReactNode } from 'react';
import { aspectOf, type Point, type Size } from '../../engine/photo';
import { stageHeight, stagePoint, stageWidth } from '../parts';

interface CloseUpProps {
  readonly url: string;
  readonly label: string;
  readonly size: Size;
  readonly at: Point;
  /** Width of what is shown, share of the photo's width. */
  readonly wide: number;
}

/** The photo around one dot, square, with the spot itself left free in the middle of four ticks. */
export function CloseUp({ url, label, size, at, wide }: CloseUpProps) {
  const [x, y] = stagePoint(at, size);
  const side = wide * stageWidth;
  const tick = side / 9;
  const free = side / 40;
  const cross = [
    `M${x - tick} ${y}H${x - free}`,
    `M${x + free} ${y}H${x + tick}`,
    `M${x} ${y - tick}V${y - free}`,
    `M${x} ${y + free}V${y + tick}`,
  ].join('');
  return (
    <svg
      className="dot-close-up"
      viewBox={`${x - side / 2} ${y - side / 2} ${side} ${side}`}
      role="img"
      aria-label={label}
    >
      <Picture url={url} size={size} />
      <path className="dot-cross under" d={cross} strokeWidth={side / 60} />
      <path className="dot-cross over" d={cross} strokeWidth={side / 150} />
      <circle className="dot-cross under" cx={x} cy={y} r={free} strokeWidth={side / 120} />
      <circle className="dot-cross over" cx={x} cy={y} r={free} strokeWidth={side / 300} />
    </svg>
  );
}

interface WholeProps {
  readonly url: string;
  readonly label: string;
  readonly size: Size;
  readonly children: ReactNode;
}

/** The whole photo, small, with what is drawn over it. */
export function Whole({ url, label, size, children }: WholeProps) {
  return (
    <svg
      className={aspectOf(size) > 1 ? 'dot-whole upright' : 'dot-whole'}
      viewBox={`0 0 ${stageWidth} ${stageHeight(size)}`}
      role="img"
      aria-label={label}
    >
      <Picture url={url} size={size} />
      {children}
    </svg>
  );
}

function Picture({ url, size }: { readonly url: string; readonly size: Size }) {
  return <image href={url} width={stageWidth} height={stageHeight(size)} preserveAspectRatio="none" />;
}
