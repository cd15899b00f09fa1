/** Numbers the work on pixels rests on. All are our own choices, set by what a tablet of some years ago bears. */
export const pixelNumbers = {
  /** Pixels a photo is worked at; a larger one is worked smaller. As many as the camera of a usual tablet makes, and under the 16.7 million of the largest canvas Safari allows. */
  most: 12_582_912,
  /** Pixels read at one time: 4 MB, and not long between two looks at whether to leave off. */
  strip: 1_048_576,
  /** Longest side of a picture of the mask or of change. */
  overlay: 1600,
  /** Radius of the spot whose colour is taken at a tap, share of the width, and the fewest pixels it may have. */
  spot: 0.002,
  leastSpot: 2,
  /** Pixels two photos are compared at: what one photo laid on another tells is never finer. */
  compared: 1_500_000,
  /** Milliseconds without a question after which the worker is ended and the photo in it let go. */
  rest: 20_000,
  /** Milliseconds without a word after which the worker is taken to have been ended by the system. */
  patience: 60_000,
} as const;
