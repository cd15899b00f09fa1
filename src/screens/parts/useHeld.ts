import { useState } from 'react';

interface Held<T> {
  /** What was there when it was first shown, or when it was last taken. */
  readonly held: T;
  /** Something else came since. */
  readonly newer: boolean;
  readonly take: () => void;
}

/** Holds what is shown under the hand as it is until a person takes what came since, or opens the screen anew. */
export function useHeld<T>(now: T): Held<T> {
  const [held, setHeld] = useState(now);
  return { held, newer: !Object.is(held, now), take: () => setHeld(now) };
}
