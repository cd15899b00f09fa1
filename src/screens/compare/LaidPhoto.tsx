import type { PhotoFit, Size } from '../../engine/photo';
import { stageHeight, stageWidth } from '../parts';
import type { Looked } from './looked';
import { useBent } from './useBent';

interface LaidPhotoProps {
  readonly photo: Pick<Looked, 'url' | 'size'>;
  readonly fit: Pick<PhotoFit, 'kind' | 'matrix' | 'through'>;
  readonly ontoSize: Size;
}

/** A photo where it lies on another, in the units of the drawing over that one. */
export function LaidPhoto({ photo, fit, ontoSize }: LaidPhotoProps) {
  const [wide, high] = [stageWidth, stageHeight(ontoSize)];
  const bent = useBent(fit.kind === 'homography' ? photo.url : undefined, fit, ontoSize);
  if (!photo.url) return null;
  if (fit.kind === 'homography')
    return bent ? <image href={bent} width={wide} height={high} preserveAspectRatio="none" /> : null;
  const [a, b, c, d, e, f, , , last] = fit.matrix;
  const moved = [a * wide, d * high, b * wide, e * high, c * wide, f * high].map((value) => value / last);
  return (
    <image
      href={photo.url}
      width={1}
      height={1}
      preserveAspectRatio="none"
      transform={`matrix(${moved.map((value) => Number(value.toFixed(6))).join(' ')})`}
    />
  );
}
