import { useId } from 'react';
import { type IndexLevel, PatternFill } from '../parts';

const levels: readonly IndexLevel[] = [1, 2, 3, 4, 5];
const centre = { x: 160, y: 116 };

/** A point on an upright ring; turns run clockwise from straight down. */
const at = (turn: number, radius: number): string => {
  const angle = 2 * Math.PI * turn;
  return `${(centre.x - radius * Math.sin(angle)).toFixed(1)} ${(centre.y + radius * Math.cos(angle)).toFixed(1)}`;
};

const part = (from: number, to: number): string =>
  `M${at(from, 92)}A92 92 0 0 1 ${at(to, 92)}L${at(to, 56)}A56 56 0 0 0 ${at(from, 56)}Z`;

/** An upright ring of bronze, its parts from sound to poor, and the walk round it. For the eye only. */
export function WalkPicture() {
  const id = useId();
  return (
    <svg className="walk-picture" viewBox="0 0 320 284" aria-hidden="true">
      <defs>
        {levels.map((level) => (
          <PatternFill key={level} id={`${id}-${level}`} level={level} />
        ))}
      </defs>
      <path className="walk-far" d="M18 228a142 38 0 01284 0" />
      {levels.map((level, i) => (
        <path
          key={level}
          className="walk-part"
          d={part(0.06 + 0.176 * i, 0.06 + 0.176 * (i + 1))}
          fill={`url(#${id}-${level})`}
        />
      ))}
      <path className="walk-base" d="M112 204h96v34h-96z" />
      <path className="walk-near" d="M302 228a142 38 0 01-266 18M48 235l-13 10 6 15" />
    </svg>
  );
}
