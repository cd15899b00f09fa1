import { useRef, useState } from 'react';
import type { Outcome } from '../../actions';
import { useDeed } from '../shell';

/**
 * What is touched shows at once and is kept behind it, touch by touch in their order; what could not be kept is said. Give the
 * component a key, so that it begins anew with another beginning.
 */
export function useTouches<T>(start: T, keep: (next: T) => Promise<Outcome>) {
  const [now, setNow] = useState(start);
  const newest = useRef(start);
  const { run, refused } = useDeed();
  const change = (next: T | ((before: T) => T)) => {
    newest.current = typeof next === 'function' ? (next as (before: T) => T)(newest.current) : next;
    const kept = newest.current;
    setNow(kept);
    void run(() => keep(kept));
  };
  return { now, change, refused } as const;
}
