/** A place on an upright picture: x in fractions of its width from the left, y in fractions of its height from the top. */
export type Point = readonly [x: number, y: number];

/** Pixels of an upright picture. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A closed line; its last point joins its first. */
export type Ring = readonly Point[];

/** One or more rings, none inside another: a zone may show in several pieces. */
export type Outline = readonly Ring[];

/** Height over width: fractions of the height times this are fractions of the width, in which lengths can be compared. */
export const aspectOf = ({ width, height }: Size): number => height / width;
