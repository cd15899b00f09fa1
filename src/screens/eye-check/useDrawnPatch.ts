import { useEffect, useRef, useState } from 'react';
import { type DrawnPatch, patchOf } from '../../engine/eye';

/** How long after one patch is shown the next is drawn, ms: not before the eye has the first, long before the finger. */
const aheadAfter = 250;

interface Shown {
  readonly key: string;
  readonly patch: DrawnPatch;
}

/** The patch in place `index`; undefined while it is drawn. The next one is drawn ahead, so that nobody waits for it. */
export function useDrawnPatch(seed: number, index: number, all: number): DrawnPatch | undefined {
  const ahead = useRef(new Map<string, DrawnPatch>());
  const [shown, setShown] = useState<Shown>();
  const key = `${seed} ${index}`;
  useEffect(() => {
    const draw = (place: number): DrawnPatch => {
      const name = `${seed} ${place}`;
      const patch = ahead.current.get(name) ?? patchOf(seed, place);
      return ahead.current.set(name, patch).get(name) ?? patch;
    };
    // After the screen is drawn: a slow tablet shows the touch first.
    const now = setTimeout(() => setShown({ key: `${seed} ${index}`, patch: draw(index) }));
    const next = setTimeout(() => index + 1 < all && draw(index + 1), aheadAfter);
    return () => {
      clearTimeout(now);
      clearTimeout(next);
    };
  }, [seed, index, all]);
  return shown?.key === key ? shown.patch : undefined;
}
