import type { Working } from '../../actions';
import { coverageNumbers, type Point } from '../../engine/photo';

/** Spots of a sort that are asked for. */
export const spotsEach = coverageNumbers.samplesEach.value;

export type Sort = 'green' | 'sound';

/** What is tapped and brushed for a mask. */
export interface MaskTouches {
  readonly green: NonNullable<Working['green']>;
  readonly sound: NonNullable<Working['sound']>;
  readonly brush: NonNullable<Working['brush']>;
}

export const touchesOf = (working: Working | undefined): MaskTouches => ({
  green: working?.green ?? [],
  sound: working?.sound ?? [],
  brush: working?.brush ?? [],
});

export const withSpot = (
  touches: MaskTouches,
  sort: Sort,
  [x, y]: Point,
  [r, g, b]: readonly [number, number, number],
): MaskTouches => ({ ...touches, [sort]: [...touches[sort], { at: [x, y], colour: [r, g, b] }] });

export const withDab = (touches: MaskTouches, as: Sort, radius: number, [x, y]: Point): MaskTouches => ({
  ...touches,
  brush: [...touches.brush, { as, radius, path: [[x, y]] }],
});

export const enoughSpots = ({ green, sound }: MaskTouches): boolean =>
  green.length >= spotsEach && sound.length >= spotsEach;

/** Widths of the brush, share of the photo's width. */
export const brushes = { small: 0.005, middle: 0.015, large: 0.04 } as const;
