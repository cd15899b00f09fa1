import type { Outline, PlaneMap, Point, Refused, Rgb, Size } from '../../engine/photo';
import type { Reason } from '../../engine/record';
import type { Brush } from './brushed';

/** A photo as it is kept. */
export interface KeptPhoto {
  readonly sha256: string;
  /** Upright, where it is known. */
  readonly size?: Size | undefined;
}

/** What tells green from sound surface on one photo. */
export interface Taps {
  readonly green: readonly Rgb[];
  readonly sound: readonly Rgb[];
  readonly brush?: Brush | undefined;
}

export interface ColourAsked {
  readonly do: 'colour';
  readonly photo: KeptPhoto;
  readonly at: Point;
}

export interface MaskAsked {
  readonly do: 'mask';
  readonly photo: KeptPhoto;
  readonly part: Outline;
  readonly taps: Taps;
  /** Lays the check dots. */
  readonly seed: number;
}

export interface ChangeAsked {
  readonly do: 'change';
  readonly earlier: KeptPhoto;
  readonly later: KeptPhoto;
  /** Takes a place on the earlier photo to the same spot on the later, fractions of each. */
  readonly matrix: PlaneMap;
  /** On the later photo. */
  readonly part: Outline;
  readonly earlierTaps: Taps;
  readonly laterTaps: Taps;
  /** How far a spot may be misplaced, share of the width of the later photo. */
  readonly edge: number;
}

export type PixelsAsked = ColourAsked | MaskAsked | ChangeAsked;

export interface ColourTold {
  readonly colour: Rgb;
}

export interface MaskTold {
  /** Green over green and sound; 0 to 1. */
  readonly share: number;
  /** Left out over all of the part; 0 to 1. */
  readonly leftOut: number;
  /** Pixels told as green or sound. */
  readonly judged: number;
  /** Check dots in the mask and outside it, on the whole photo. */
  readonly inMask: readonly Point[];
  readonly outsideMask: readonly Point[];
  /** PNG over the whole photo, clear outside the mask. */
  readonly overlay: Blob;
  readonly reasons: readonly Reason[];
}

/** A share of the part; low and high as the reach of the fit is doubled and left out. */
export interface ChangeShare {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The values, with `neither` and `leftOut`, sum to 1. */
export interface ChangeTold {
  readonly newly: ChangeShare;
  readonly noLonger: ChangeShare;
  readonly still: ChangeShare;
  /** Green on neither photo. */
  readonly neither: number;
  /** Not to be told on one of the photos, or outside the earlier one. */
  readonly leftOut: number;
  /** PNG over the whole of the later photo. */
  readonly overlay: Blob;
  readonly reasons: readonly Reason[];
}

export interface ToldOf {
  readonly colour: ColourTold;
  readonly mask: MaskTold | Refused;
  readonly change: ChangeTold | Refused;
}

/** A photo's bytes by its hash; undefined where they are not on this device. */
export type Bring = (sha256: string) => Promise<{ readonly bytes: ArrayBuffer; readonly mime: string } | undefined>;

export interface PixelsWay {
  /** Called for a photo that is not at hand in the worker. */
  readonly bring: Bring;
  /** How much is done, 0 to 1. */
  readonly heard?: (done: number) => void;
  /** Leaves off, soon: between two strips of pixels. */
  readonly signal?: AbortSignal;
}

/** What goes to the worker: a question, the bytes it called for, or that it is no longer wanted. */
export type Post =
  | { readonly id: number; readonly ask: PixelsAsked }
  | { readonly bring: string; readonly photo: Awaited<ReturnType<Bring>> }
  | { readonly leaveOff: number };

/** What comes back. `wanted`: the bytes of a photo that is not at hand in the worker. */
export type Said =
  | { readonly id: number; readonly done: number }
  | { readonly id: number; readonly wanted: string }
  | { readonly id: number; readonly told: ToldOf[keyof ToldOf] }
  | { readonly id: number; readonly problem: Reason }
  /** A fault of the browser or of ours, in its own words. */
  | { readonly id: number; readonly failed: string }
  | { readonly id: number; readonly leftOff: true };
