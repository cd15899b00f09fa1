import type { Size } from '../../engine/photo';
import { stageHeight, stageWidth } from '../parts';

/** The mask as a picture over the picture; hatched, so that it is seen on green as well. */
export function MaskOver({ overlay, size }: { readonly overlay: string; readonly size: Size }) {
  return <image href={overlay} width={stageWidth} height={stageHeight(size)} preserveAspectRatio="none" />;
}
