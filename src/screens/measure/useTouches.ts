import { useRef, useState } from 'react';
import type { Outcome } from '../../actions';
import { useDeed } from '../shell';

/**
 * What is touched shows once it is kept, touch by touch in their order; what could not be kept is said and not shown. Give the
 * component a key, so that it begins anew with another beginning.
 */
export function useTouches<T>(start: T, keep: (next: T) => Promise<Outcome>) {
  const [now, setNow] = useState(start);
  // What the touches come to that are still being kept: a quick one builds on the one before it.
  const newest = useRef(start);
  const { run, refused } = useDeed();
  const change = (next: T | ((before: T) => T)) => {
    const kept = typeof next === 'function' ? (next as (before: T) => T)(newest.current) : next;
    newest.current = kept;
    void run(
      async () => {
        const outcome = await keep(kept);
        if (!outcome.ok && newest.current === kept) newest.current = now;
        return outcome;
      },
      () => setNow(kept),
    );
  };
  return { now, change, refused } as const;
}
