import { crossesItself, type Outline, type Point, type Ring } from '../../engine/photo';

/** Pieces that are closed, and the corners of one that is not. */
export interface Drawing {
  readonly rings: Outline;
  readonly corners: Ring;
}

export const nothingDrawn: Drawing = { rings: [], corners: [] };

/** The whole picture as one piece. */
export const wholePicture: Outline = [
  [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ],
];

export const withCorner = ({ rings, corners }: Drawing, at: Point): Drawing => ({ rings, corners: [...corners, at] });

/** The last corner taken back; where none is open, the last piece is opened again. */
export const withoutLast = ({ rings, corners }: Drawing): Drawing =>
  corners.length > 0
    ? { rings, corners: corners.slice(0, -1) }
    : { rings: rings.slice(0, -1), corners: rings.at(-1) ?? [] };

const held = (x: number): number => Math.min(1, Math.max(0, x));

export const moved = ({ rings, corners }: Drawing, which: number, [dx, dy]: Point): Drawing => ({
  rings,
  corners: corners.map(([x, y], i) => (i === which ? [held(x + dx), held(y + dy)] : [x, y])),
});

/** Why the open piece cannot be closed, or undefined where it can. */
export const cannotClose = ({ corners }: Drawing): 'too few' | 'crosses' | undefined =>
  corners.length < 3 ? 'too few' : crossesItself(corners) ? 'crosses' : undefined;

/** The open piece closed, where it can be. */
export const closed = (drawing: Drawing): Drawing =>
  cannotClose(drawing) ? drawing : { rings: [...drawing.rings, drawing.corners], corners: [] };

/** The last closed piece taken away. */
export const withoutRing = ({ rings, corners }: Drawing): Drawing => ({ rings: rings.slice(0, -1), corners });
