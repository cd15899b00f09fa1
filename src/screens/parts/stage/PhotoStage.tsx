import { type KeyboardEvent, type MouseEvent, type ReactNode, useId, useLayoutEffect, useRef, useState } from 'react';
import { aspectOf, type Point, type Size } from '../../../engine/photo';
import { w } from '../../../words';
import { Button } from '../Button';
import { stageHeight, stagePoint, stageWidth } from './stagePoint';
import './stage.css';

interface PhotoStageProps {
  /** Undefined while it is read; null where the bytes are not on this device; empty for a blank sheet. */
  readonly url: string | null | undefined;
  readonly alt: string;
  /** Pixels of the upright picture; the drawing over it keeps its shape. */
  readonly size: Size;
  /** What is drawn over it, in a view box of `stageWidth` by `stageHeight(size)`; see stagePoint.ts. */
  readonly children?: ReactNode;
  /** Touched, or Enter at the cross that the arrow keys move. Fractions of the picture. */
  readonly onTouch?: ((at: Point) => void) | undefined;
  /** What a touch does, for ears: "Place a corner". Needed with `onTouch`. */
  readonly touchDoes?: string | undefined;
  /** Larger and smaller; on unless said otherwise. */
  readonly zooms?: boolean;
  /** Controls beside the zoom. */
  readonly controls?: ReactNode;
}

/** How much larger than the page a picture can be shown; the larger ones are scrolled. */
const zooms = [1, 2, 4] as const;
/** One press of an arrow moves the cross by this share of the width; with Shift by ten times as much. */
const step = 0.005;

/**
 * A picture with a drawing over it, to be touched. Nothing needs a drag: larger is a button, moving about is scrolling,
 * and a keyboard moves a cross and puts it down with Enter.
 */
export function PhotoStage({
  url,
  alt,
  size,
  children,
  onTouch,
  touchDoes,
  zooms: mayZoom = true,
  controls,
}: PhotoStageProps) {
  const [zoom, setZoom] = useState(0);
  const [cross, setCross] = useState<Point>();
  const help = useId();
  const frame = useRef<HTMLDivElement>(null);
  /** What stands in the middle of the frame, kept there when the picture is shown larger or smaller. */
  const inMiddle = useRef<Point>(middle);
  const zoomTo = (to: number) => {
    const el = frame.current;
    if (el)
      inMiddle.current = [
        (el.scrollLeft + el.clientWidth / 2) / Math.max(1, el.scrollWidth),
        (el.scrollTop + el.clientHeight / 2) / Math.max(1, el.scrollHeight),
      ];
    setZoom(to);
  };
  useLayoutEffect(() => {
    const el = frame.current;
    if (!el || zooms[zoom] === 1) return;
    el.scrollLeft = inMiddle.current[0] * el.scrollWidth - el.clientWidth / 2;
    el.scrollTop = inMiddle.current[1] * el.scrollHeight - el.clientHeight / 2;
  }, [zoom]);
  const words = w.parts.stage;
  const at = cross && stagePoint(cross, size);
  const touched = (e: MouseEvent<HTMLButtonElement>) => {
    // A click a keyboard makes has no place of its own.
    if (e.detail === 0) return onTouch?.(cross ?? middle);
    const shown = e.currentTarget.getBoundingClientRect();
    if (shown.width === 0 || shown.height === 0) return;
    setCross(undefined);
    onTouch?.([inside((e.clientX - shown.left) / shown.width), inside((e.clientY - shown.top) / shown.height)]);
  };
  const key = (e: KeyboardEvent<HTMLButtonElement>) => {
    const by = arrows[e.key];
    if (!by) return;
    e.preventDefault();
    const [x, y] = cross ?? middle;
    const far = step * (e.shiftKey ? 10 : 1);
    setCross([inside(x + by[0] * far), inside(y + (by[1] * far) / aspectOf(size))]);
  };
  const viewBox = `0 0 ${stageWidth} ${stageHeight(size)}`;
  return (
    <div className="stage">
      <div ref={frame} className={`stage-frame zoom-${zooms[zoom]}`}>
        <div className="stage-picture">
          {url ? (
            <img src={url} alt={alt} decoding="async" width={size.width} height={size.height} />
          ) : (
            <svg className="stage-blank" viewBox={viewBox} role="img" aria-label={alt}>
              <title>{url === '' ? alt : url === null ? w.parts.photoElsewhere : w.parts.reading}</title>
            </svg>
          )}
          {/* biome-ignore lint/a11y/noSvgWithoutTitle: the picture has its text; what is drawn over it is named part by part. */}
          <svg className="stage-over" viewBox={viewBox} preserveAspectRatio="none">
            {children}
            {at && <path className="stage-cross" d={`M${at[0] - 30} ${at[1]}h60M${at[0]} ${at[1] - 30}v60`} />}
          </svg>
          {onTouch && (
            <button
              type="button"
              className="stage-touch"
              aria-label={touchDoes ?? alt}
              aria-describedby={help}
              onClick={touched}
              onKeyDown={key}
            />
          )}
        </div>
      </div>
      {onTouch && (
        <p id={help} className="only-heard">
          {words.keys}
        </p>
      )}
      {url === null && <p className="soft small">{w.parts.photoElsewhere}</p>}
      {(mayZoom || controls) && (
        <div className="row by-hand stage-controls not-printed">
          {mayZoom && (
            <>
              <Button size="round" disabled={zoom === 0} onClick={() => zoomTo(zoom - 1)}>
                {words.smaller}
              </Button>
              <Button size="round" disabled={zoom === zooms.length - 1} onClick={() => zoomTo(zoom + 1)}>
                {words.larger}
              </Button>
            </>
          )}
          {controls}
        </div>
      )}
    </div>
  );
}

const middle: Point = [0.5, 0.5];
const inside = (x: number): number => Math.min(1, Math.max(0, x));

const arrows: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
