import { useLayoutEffect, useRef, useState } from 'react';

/** Width a drawing is made for where nobody measures: in tests, and before the first look. */
const unmeasured = 640;

/** The width of an element in CSS pixels, so that letters in a drawing keep their size on a narrow screen. */
export const useWidth = <E extends HTMLElement>() => {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(unmeasured);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element || typeof ResizeObserver === 'undefined') return;
    const watch = new ResizeObserver(([entry]) => {
      const measured = Math.floor(entry?.contentRect.width ?? 0);
      // Print and put-away pages measure nothing: the last width stands.
      if (measured > 0) setWidth(Math.max(260, measured));
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { ref, width };
};
