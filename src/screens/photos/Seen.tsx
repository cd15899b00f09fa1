import { type RefObject, useEffect, useState } from 'react';
import type { Camera } from '../../actions';
import { w } from '../../words';

const words = w.photos.viewfinder;

export type Over = 'none' | 'half' | 'lines';

interface SeenProps {
  readonly camera: Camera;
  readonly video: RefObject<HTMLVideoElement | null>;
  /** Last photo of the station, while one is laid over. */
  readonly last: string | null | undefined;
  readonly over: Over;
  readonly lean: number | undefined;
  /** Once the picture runs: how it lies. */
  readonly ready: (format: 'portrait' | 'landscape') => void;
}

/** What the camera sees, the last photo over it, and a line that stays level. */
export function Seen({ camera, video, last, over, lean, ready }: SeenProps) {
  const [shape, setShape] = useState<{ width: number; height: number }>();
  useEffect(() => {
    const seen = video.current;
    if (!seen) return;
    seen.srcObject = camera.stream;
    // Leaving at once interrupts the start; that is no fault.
    seen.play().catch(() => undefined);
    return () => {
      seen.srcObject = null;
    };
  }, [camera, video]);
  const known = ({ currentTarget }: { readonly currentTarget: HTMLVideoElement }) => {
    const { videoWidth: width, videoHeight: height } = currentTarget;
    if (!width || !height) return;
    setShape({ width, height });
    // The whole picture, above the bar that takes it.
    currentTarget.parentElement?.scrollIntoView?.({ block: 'nearest' });
    ready(width > height ? 'landscape' : 'portrait');
  };
  return (
    <div className="seen">
      <div className="seen-frame">
        <video
          ref={video}
          muted
          playsInline
          aria-label={words.seen}
          width={shape?.width}
          height={shape?.height}
          onLoadedMetadata={known}
          onResize={known}
        />
        {last && over !== 'none' && <img className={`seen-over ${over}`} src={last} alt="" />}
        {shape && <Level lean={lean} {...shape} />}
      </div>
      <Edges />
    </div>
  );
}

/** The middle of the frame, and a line that lies level however the tablet is held. */
function Level({
  lean,
  width,
  height,
}: {
  readonly lean: number | undefined;
  readonly width: number;
  readonly height: number;
}) {
  const across = Math.min(width, height) * 0.3;
  const [x, y] = [width / 2, height / 2];
  const turn = `rotate(${-(lean ?? 0)} ${x} ${y})`;
  return (
    <svg className="seen-level" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <path className="seen-level-under" d={`M${x} ${y - across / 4}V${y + across / 4}`} />
      <path d={`M${x} ${y - across / 4}V${y + across / 4}`} />
      <path className="seen-level-under" d={`M${x - across} ${y}H${x + across}`} transform={turn} />
      <path d={`M${x - across} ${y}H${x + across}`} transform={turn} />
    </svg>
  );
}

/** How the outlines of a photo are drawn out of it: where brightness changes, a light line, and nothing elsewhere. */
function Edges() {
  return (
    <svg className="seen-edges" aria-hidden="true">
      <filter id="outlines-of-photo" colorInterpolationFilters="sRGB">
        <feGaussianBlur stdDeviation="1.2" />
        <feConvolveMatrix order="3" kernelMatrix="-1 -1 -1 -1 8 -1 -1 -1 -1" preserveAlpha="true" />
        <feColorMatrix values="0 0 0 0 1  0 0 0 0 0.95  0 0 0 0 0.4  5 5 5 0 -0.4" />
      </filter>
    </svg>
  );
}
