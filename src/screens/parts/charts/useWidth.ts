import { useLayoutEffect, useRef, useState } from 'react';

/** Width a drawing is made for where nobody measures: in tests, and before the first look. */
const unmeasured = 640;

/** Sixteenths of the root's letter size: a drawing grows with the text, for whoever sets it larger. */
export const unitsInRem = 16;

const unit = (): number =>
  (Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || unitsInRem) / unitsInRem;

/** The width of an element in units of a drawing, so that its letters keep their size on a narrow screen. */
export const useWidth = <E extends HTMLElement>() => {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(unmeasured);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element || typeof ResizeObserver === 'undefined') return;
    const watch = new ResizeObserver(([entry]) => {
      const measured = Math.floor((entry?.contentRect.width ?? 0) / unit());
      // Print and put-away pages measure nothing: the last width stands.
      if (measured > 0) setWidth(Math.max(260, measured));
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { ref, width };
};
