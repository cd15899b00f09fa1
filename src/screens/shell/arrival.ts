import { createContext, useCallback, useContext, useLayoutEffect, useState } from 'react';

/** What the screen that comes up still waits for: its code, and the first answers of its questions. */
export interface Arrival {
  /** Begins to wait; what it gives back ends it. */
  waitFor(): () => void;
}

export const ArrivalContext = createContext<Arrival | null>(null);

/** After so long a screen is shown as far as it is, in milliseconds. Our own figure: what takes longer says itself that it is worked out. */
const longest = 4000;

interface Waits extends Arrival {
  none(): boolean;
  whenNone(come: () => void): () => void;
}

const noWaits = (): Waits => {
  let open = 0;
  let told: (() => void) | undefined;
  const look = () => {
    if (open === 0) told?.();
  };
  return {
    none: () => open === 0,
    waitFor: () => {
      open += 1;
      let over = false;
      return () => {
        if (over) return;
        over = true;
        open -= 1;
        // An answer may lead to the next question: what was asked by the next frame counts.
        if (open === 0) requestAnimationFrame(look);
      };
    },
    whenNone: (come) => {
      told = come;
      return () => {
        told = undefined;
      };
    },
  };
};

/**
 * Whether the screen at a place is still coming. One that would grow piece by piece under the finger is shown once it is
 * whole; one whose answers are at hand is shown at once.
 */
export function useArrival(place: string): { readonly arriving: boolean; readonly arrival: Arrival } {
  const [there, setThere] = useState<string>();
  const [waits] = useState(noWaits);
  useLayoutEffect(() => {
    const come = () => setThere(place);
    if (waits.none()) return come();
    const stop = waits.whenNone(come);
    const late = setTimeout(come, longest);
    return () => {
      clearTimeout(late);
      stop();
    };
  }, [place, waits]);
  return { arriving: there !== place, arrival: waits };
}

/** While this is shown, the screen is still coming. */
export function useStillComing(coming = true): void {
  const arrival = useContext(ArrivalContext);
  useLayoutEffect(() => (coming ? arrival?.waitFor() : undefined), [arrival, coming]);
}

/** Holds up the screen that comes up until something is read that is no question. To be called in a layout effect. */
export function useHoldUp(): (until: Promise<unknown>) => void {
  const arrival = useContext(ArrivalContext);
  return useCallback(
    (until) => {
      const come = arrival?.waitFor();
      if (come) void until.finally(come);
    },
    [arrival],
  );
}
