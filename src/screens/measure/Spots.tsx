import { w } from '../../words';
import type { MaskTouches, Sort } from './maskTouches';
import { spotsEach } from './maskTouches';

const words = w.measure;

interface SpotsProps {
  readonly touches: MaskTouches;
  /** What each sort is called. */
  readonly names: Readonly<Record<Sort, string>>;
}

/** How many spots of each sort are tapped, and their colours. */
export function Spots({ touches, names }: SpotsProps) {
  return (
    <ul className="bare spots">
      {(['green', 'sound'] as const).map((sort) => (
        <li key={sort}>
          <span>{words.spots(names[sort], touches[sort].length, spotsEach)}</span>
          <svg className="spot-colours" viewBox={`0 0 ${Math.max(1, touches[sort].length) * 26} 24`} aria-hidden="true">
            {touches[sort].map(({ colour: [r, g, b] }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a spot is its place in the row and nothing else
              <rect key={i} x={i * 26 + 1} y={1} width={22} height={22} fill={`rgb(${r} ${g} ${b})`} />
            ))}
          </svg>
        </li>
      ))}
    </ul>
  );
}
