import { useEffect, useRef } from 'react';
import { type DrawnPatch, patchSide } from '../../engine/eye';

/** A drawn patch, pixel for pixel; until it is there the frame stands empty in its size. */
export function PatchPicture({ patch, label }: { readonly patch: DrawnPatch | undefined; readonly label: string }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (pen && patch) pen.putImageData(new ImageData(patch.pixels, patch.side, patch.side), 0, 0);
  }, [patch]);
  return (
    <canvas ref={canvas} className="eye-patch" width={patchSide} height={patchSide} role="img" aria-label={label} />
  );
}
