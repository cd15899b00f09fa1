import { useLayoutEffect, useRef, useState } from 'react';
import { stageWidth } from '../parts';

/** Pixels a picture is taken to be wide before anybody measured it. */
const unmeasured = 640;
const usualText = 16;

/** How many times larger than usual the person has set the text. */
const textSize = (): number =>
  (Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || usualText) / usualText;

/** Units of the drawing over a picture to one pixel, so that letters and lines keep their size however large it is shown. */
export const useStageUnit = () => {
  const ref = useRef<SVGGElement>(null);
  const [unit, setUnit] = useState(stageWidth / unmeasured);
  useLayoutEffect(() => {
    const drawing = ref.current?.ownerSVGElement;
    if (!drawing || typeof ResizeObserver === 'undefined') return;
    const watch = new ResizeObserver(([entry]) => {
      const wide = entry?.contentRect.width ?? 0;
      if (wide > 0) setUnit((stageWidth / wide) * textSize());
    });
    watch.observe(drawing);
    return () => watch.disconnect();
  }, []);
  return { ref, unit };
};
