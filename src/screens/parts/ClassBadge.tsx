import { enClasses } from '../../engine/trade';
import './classBadge.css';

export type ClassFamily = 'CC' | 'UC' | 'RC';
export type ClassLevel = 0 | 1 | 2 | 3;

const rowsOf = { CC: enClasses.condition, UC: enClasses.urgency, RC: enClasses.recommendation } as const;

interface ClassBadgeProps {
  readonly family: ClassFamily;
  readonly level: number;
  /** Set by a named person, not only proposed by rule. */
  readonly set?: boolean;
  /** With the class in words beside it. */
  readonly worded?: boolean;
}

/** Class after EN 16096: letters and number, with as many bars as its level. */
export function ClassBadge({ family, level, set, worded }: ClassBadgeProps) {
  const held = Math.min(3, Math.max(0, Math.round(level))) as ClassLevel;
  return (
    <span className={set ? 'class-badge set' : 'class-badge'}>
      <svg viewBox="0 0 22 16" width="22" height="16" aria-hidden="true">
        {[1, 2, 3].map((bar) => (
          <rect
            key={bar}
            className={bar <= held ? 'bar full' : 'bar'}
            x={(bar - 1) * 8 + 0.75}
            y={11 - bar * 3.5}
            width="4.5"
            height={bar * 3.5 + 4}
          />
        ))}
      </svg>
      <span className="class-letters figures">
        {family}
        {held}
      </span>
      <span className={worded ? 'class-words' : 'unseen'}>{rowsOf[family][held]?.name}</span>
    </span>
  );
}
