import { type ReactNode, useState } from 'react';
import { w } from '../../words';
import { Button } from './Button';

const words = w.parts;

/** Cards shown at once: more than a person works through, few enough to come up at a touch. */
const usually = 50;

interface LongListProps<T> {
  readonly rows: readonly T[];
  readonly show: (row: T) => ReactNode;
  readonly className: string;
  /** Fewer where a row is heavy: a picture. */
  readonly atOnce?: number;
}

/** A long list of zones, its first part shown and the rest at a touch. What is not shown is counted, on paper too. */
export function LongList<T>({ rows, show, className, atOnce = usually }: LongListProps<T>) {
  const [many, setMany] = useState(atOnce);
  const rest = rows.length - many;
  return (
    <>
      <ol className={`bare ${className}`}>{rows.slice(0, many).map(show)}</ol>
      {rest > 0 && (
        <div className="row">
          <p className="grow">{words.notShown(rest)}</p>
          <div className="not-printed">
            <Button onClick={() => setMany(many + atOnce)}>{words.showMore(Math.min(rest, atOnce))}</Button>
          </div>
        </div>
      )}
    </>
  );
}
