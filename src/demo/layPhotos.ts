import { type Desk, setPhotoFit } from '../actions';
import type { Point } from '../engine/photo';
import { type Camera, shownAt } from './drawing/camera';
import { done } from './walkRound';

/** Places every picture of a work shows, in hundredths of its width. */
const marks: readonly Point[] = [
  [34, 30],
  [66, 28],
  [50, 52],
  [30, 84],
  [72, 80],
  [50, 103],
];

/** A finger is never quite on the spot: by so much, in hundredths of the width, turn by turn to each side. */
const slips: readonly Point[] = [
  [0.15, -0.1],
  [-0.2, 0.12],
  [0.1, 0.18],
  [-0.12, -0.16],
  [0.18, 0.05],
  [-0.08, 0.14],
];

/** Where a place of the work stands on a picture taken so: `shownAt` turned round, by coming nearer step by step. */
export const seenAt = (camera: Camera, work: Point): Point => {
  let at = work;
  for (let i = 0; i < 30; i++) {
    const shown = shownAt(camera, at);
    at = [at[0] + work[0] - shown[0], at[1] + work[1] - shown[1]];
  }
  return at;
};

const asShare = ([x, y]: Point): Point => [x / 100, y / 125];

/** An earlier photo of a view laid on the latest by the same six marks, each touched a little beside. */
export const layPhoto = (desk: Desk, photo: string, onto: string, camera: Camera) =>
  done(
    setPhotoFit(desk, {
      photo,
      onto,
      kind: 'similarity',
      pairs: marks.map((mark, i) => {
        const [x, y] = seenAt(camera, mark);
        const [dx, dy] = slips[i] as Point;
        return { from: asShare([x + dx, y + dy]), onto: asShare(mark) };
      }),
    }),
  );
