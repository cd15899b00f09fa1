import { useId } from 'react';
import type { Figure } from '../../engine/record';
import { w, whole } from '../../words';
import { levelOf } from './indexLevel';
import { PatternFill } from './Pattern';
import './dial.css';

export interface IndexDialProps {
  /** Null where nothing was looked at: the ring stays open and says so. */
  readonly figure: Pick<Figure, 'value' | 'low' | 'high'> | null;
  readonly size?: 'small' | 'usual' | 'large';
  /** What it is the index of, for ears: "Zone B". */
  readonly of: string;
  /** Shown under the figure in place of the level's word. */
  readonly note?: string;
}

/** A point on the ring: share of the walk round, clockwise from the top. */
const at = (share: number, radius: number): string => {
  const turn = 2 * Math.PI * share;
  return `${(50 + radius * Math.sin(turn)).toFixed(2)} ${(50 - radius * Math.cos(turn)).toFixed(2)}`;
};

const arc = (from: number, to: number, radius: number): string =>
  `A${radius} ${radius} 0 ${to - from > 0.5 ? 1 : 0} 1 ${at(to, radius)}`;

/** A band of the ring between two shares, as a closed path. */
const band = (from: number, to: number): string => {
  const end = Math.min(to, 0.9999);
  const inner = `A30 30 0 ${end - from > 0.5 ? 1 : 0} 0 ${at(from, 30)}`;
  return `M${at(from, 42)} ${arc(from, end, 42)} L${at(end, 30)} ${inner}Z`;
};

/**
 * The condition index as a walk round the work: a closed ring is sound. The filled band is the index, the line outside it the 90 % range, the figure stands in the middle and the word under it.
 */
export function IndexDial({ figure, size = 'usual', of, note }: IndexDialProps) {
  const id = useId();
  if (!figure) {
    return (
      <span className={`dial ${size}`} role="img" aria-label={w.parts.dialNone(of)}>
        <svg viewBox="0 0 100 100" aria-hidden="true">
          <circle className="dial-open" cx="50" cy="50" r="36" />
          <text className="dial-figure" x="50" y="60">
            –
          </text>
        </svg>
        <span className="dial-word" aria-hidden="true">
          {note ?? w.parts.notLooked}
        </span>
      </span>
    );
  }
  const { value, low, high } = figure;
  const level = levelOf(value);
  const [from, to] = [low / 100, Math.min(high / 100, 0.9999)];
  const label = w.parts.dial(of, whole(value), whole(low), whole(high), note ?? w.parts.level[level]);
  return (
    <span className={`dial ${size}`} role="img" aria-label={label}>
      <svg viewBox="0 0 100 100" aria-hidden="true">
        <defs>
          <PatternFill id={id} level={level} />
        </defs>
        <path className="dial-track" d={band(0, 1)} />
        <path className="dial-band" d={band(0, value / 100)} fill={`url(#${id})`} />
        {to > from && <path className="dial-range" d={`M${at(from, 47)} ${arc(from, to, 47)}`} />}
        <text className="dial-figure" x="50" y="60">
          {whole(value)}
        </text>
      </svg>
      <span className="dial-word" aria-hidden="true">
        {note ?? w.parts.level[level]}
      </span>
    </span>
  );
}
