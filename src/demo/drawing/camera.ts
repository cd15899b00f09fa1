import type { Point } from './shape';

/** How a picture was taken beside the one the outlines were drawn on. All nought and scale one: the same. */
export interface Camera {
  /** Degrees the horizon leans. */
  readonly turn: number;
  /** Below one: from further away. */
  readonly scale: number;
  /** Aside and up, in hundredths of the picture's width. */
  readonly aside: number;
  readonly up: number;
  /** From further to one side: how much narrower the top is than the middle, as a share of it. No similarity takes that back. */
  readonly lean: number;
  /** Light: below one duller. */
  readonly light: number;
}

export const sameSpot: Camera = { turn: 0, scale: 1, aside: 0, up: 0, lean: 0, light: 1 };

const middle: Point = [50, 62.5];

/** From a place on the picture to the place on the work it shows, both in hundredths of the picture's width. */
export const shownAt = (camera: Camera, [x, y]: Point): Point => {
  const angle = (camera.turn * Math.PI) / 180;
  const [dx, dy] = [x - middle[0] - camera.aside, y - middle[1] - camera.up];
  const [tx, ty] = [dx * Math.cos(angle) + dy * Math.sin(angle), dy * Math.cos(angle) - dx * Math.sin(angle)];
  const narrow = 1 + (camera.lean * ty) / middle[1];
  return [middle[0] + tx / (camera.scale * narrow), middle[1] + ty / (camera.scale * narrow)];
};
