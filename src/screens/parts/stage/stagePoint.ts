import { aspectOf, type Outline, type Point, type Size } from '../../../engine/photo';

/** Units of the drawing over a picture: its width is a thousand, whatever the picture, so that marks keep their size. */
export const stageWidth = 1000;

/** Height of the drawing in the same units. */
export const stageHeight = (size: Size): number => stageWidth * aspectOf(size);

/** A place on the picture in units of the drawing. */
export const stagePoint = ([x, y]: Point, size: Size): Point => [x * stageWidth, y * stageHeight(size)];

/** An outline as the `d` of one path. */
export const stagePath = (outline: Outline, size: Size): string =>
  outline
    .map((ring) => {
      const at = ring.map((p) =>
        stagePoint(p, size)
          .map((n) => Number(n.toFixed(2)))
          .join(' '),
      );
      return at.length === 0 ? '' : `M${at.join('L')}Z`;
    })
    .join('');
