import { type ReactNode, useState } from 'react';
import { w } from '../../words';
import { Button } from '../parts';

const words = w.nextSteps;

/** Cards shown at once: more than a person works through, few enough to come up at a touch. */
const atOnce = 50;

/** A long list, its first part shown and the rest at a touch. What is not shown is counted, on paper too. */
export function LongList<T>({ rows, show }: { readonly rows: readonly T[]; readonly show: (row: T) => ReactNode }) {
  const [many, setMany] = useState(atOnce);
  const rest = rows.length - many;
  return (
    <>
      <ol className="bare needs">{rows.slice(0, many).map(show)}</ol>
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
