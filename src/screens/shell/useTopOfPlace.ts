import { useEffect, useLayoutEffect } from 'react';

interface Left {
  readonly place: string;
  y: number;
}

/** The screens gone through, the open one last, and how far each was scrolled when it was left. */
const trail: Left[] = [];
const longest = 50;
/** A long list takes a moment to be as long as it was. */
const growsFor = 1500;

const scrollTo = (y: number): void => {
  document.documentElement.scrollTop = y;
};

/** Holds the page at a height while it grows to it, until a person moves it. */
const holdAt = (y: number): (() => void) => {
  scrollTo(y);
  const grown = new ResizeObserver(() => scrollTo(y));
  grown.observe(document.body);
  const acts = ['wheel', 'touchstart', 'pointerdown', 'keydown'] as const;
  const stop = () => {
    grown.disconnect();
    clearTimeout(late);
    for (const act of acts) removeEventListener(act, stop);
  };
  const late = setTimeout(stop, growsFor);
  for (const act of acts) addEventListener(act, stop, { passive: true });
  return stop;
};

/** A screen opens at its top; the one gone back to opens where it was left. */
export function useTopOfPlace(place: string): void {
  useEffect(() => {
    history.scrollRestoration = 'manual';
    const scrolled = () => {
      const open = trail.at(-1);
      if (open) open.y = document.documentElement.scrollTop;
    };
    addEventListener('scroll', scrolled, { passive: true });
    return () => removeEventListener('scroll', scrolled);
  }, []);
  useLayoutEffect(() => {
    if (trail.at(-1)?.place === place) return undefined;
    const before = trail.at(-2);
    if (before?.place === place) trail.pop();
    else trail.push({ place, y: 0 });
    if (trail.length > longest) trail.shift();
    const y = trail.at(-1)?.y ?? 0;
    if (y > 0) return holdAt(y);
    scrollTo(0);
    return undefined;
  }, [place]);
}
