import { fraction, listOf, maybe, note, number, pattern, positive, text, whole } from './bounds';
import { coverageBody } from './coverageBody';
import { day, thingName } from './entry';
import { z } from './zod';

/** A place on an upright picture: x in fractions of its width from the left, y in fractions of its height from the top. */
export const pointBody = z.tuple([fraction, fraction]);

/** Pixels of the upright picture. */
const sizeBody = z.looseObject({ width: whole(1), height: whole(1) });

/**
 * Part of a picture, as the Web Annotation Data Model writes it (W3C Recommendation 2017, 4.2.6): one or more polygons of
 * an SVG whose view box is the whole picture, 0 to 1 both ways. Written and read by engine/photo.
 */
export const svgSelector = z.looseObject({ type: z.literal('SvgSelector'), value: text(60000) });

/** What an annotation is about: the picture, and which part of it. */
const target = z.looseObject({ source: thingName, selector: svgSelector });

export const photoRoles = ['finding', 'zone', 'elevation', 'look', 'station', 'sentinel', 'other'] as const;

/** What the light was; two photos of unlike light are compared with a word of warning. */
export const lights = ['open shade', 'overcast', 'sun', 'artificial'] as const;
export const wetness = ['dry', 'damp', 'wet'] as const;

export const photoBody = z.looseObject({
  sculpture: thingName,
  sha256: pattern(/^[0-9a-f]{64}$/),
  mime: text(60),
  bytes: whole(1),
  width: maybe(whole(1)),
  height: maybe(whole(1)),
  /** When the camera says it was taken, if it says so. */
  taken: maybe(text(40)),
  /** Exif orientation as it lies in the file, 1 to 8; widths and heights here are those of the upright picture. */
  orientation: maybe(whole(1, 8)),
  /** Lens as the camera tells it: focal length in mm, and the same on a 36 x 24 mm frame. */
  focal: maybe(positive(5000)),
  focal35: maybe(positive(5000)),
  gpsBlanked: maybe(z.boolean()),
  /** The person chose to leave the place in the file. */
  placeKept: maybe(z.literal(true)),
  /** What was wrong with the file when it was taken: kept all the same. 'not shown': the browser then at work could not. */
  flaw: maybe(z.enum(['cut short', 'size untrue', 'not shown'])),
  role: z.enum(photoRoles),
  station: maybe(thingName),
  sentinel: maybe(thingName),
  zone: maybe(thingName),
  round: maybe(thingName),
  light: maybe(z.enum(lights)),
  wet: maybe(z.enum(wetness)),
  washed: maybe(z.enum(['before wash', 'after wash'])),
  note,
});

export const elevationBody = z.looseObject({
  sculpture: thingName,
  /** Which side: "west", "from the quay". */
  side: text(100),
  photo: thingName,
  order: z.number(),
  /** Two places on its photo and how far apart they are on the work, metres. */
  scale: maybe(z.looseObject({ a: pointBody, b: pointBody, metres: positive(1000) })),
  /** The station its photo was taken from, where it was: later photos of it can lie under the same outlines. */
  station: maybe(thingName),
  note,
});

/** Where one zone lies on one elevation. */
export const outlineBody = z.looseObject({
  sculpture: thingName,
  elevation: thingName,
  zone: thingName,
  target,
  /** Real surface over what the outline shows flat: 1 flat, 1.3 curved, 1.6 deep folds. */
  obliquity: maybe(number(1, 3)),
  note,
});

/** Water running from one zone to another. */
export const runOffBody = z.looseObject({ sculpture: thingName, fromZone: thingName, toZone: thingName, note });

export const stationBody = z.looseObject({
  sculpture: thingName,
  /** The view's letter on card and shot list; one or two capitals. */
  letter: text(4),
  /** What the middle of the frame is aimed at. */
  aim: text(300),
  order: z.number(),
  /** Degrees from north the camera looks to. */
  bearing: maybe(number(0, 360)),
  /** Metres from the work, and of the lens above the ground. */
  distance: maybe(positive(1000)),
  height: maybe(number(0, 100)),
  /** Focal length on a 36 x 24 mm frame, mm. */
  lens: maybe(positive(5000)),
  format: maybe(z.enum(['portrait', 'landscape'])),
  /** How the spot is found again: "brass stud, third slab from the steps". */
  mark: maybe(text(300)),
  light: maybe(z.enum(['open shade', 'overcast', 'any'])),
  wet: maybe(z.enum(['dry', 'wet'])),
  /** Photo that shows where to stand. */
  standHere: maybe(thingName),
  note,
});

/** The best and the worst square of a work, 10 by 10 cm, photographed in one frame on every visit. */
export const sentinelBody = z.looseObject({
  sculpture: thingName,
  zone: thingName,
  which: z.enum(['best', 'worst']),
  /** How it is found again. */
  find: text(1000),
  since: day,
  note,
});

/** Which pairs of places show that one photo lies on another. The fit itself is worked out from them, never stored. */
export const photoFitBody = z.looseObject({
  sculpture: thingName,
  photo: thingName,
  onto: thingName,
  kind: z.enum(['similarity', 'affine', 'homography']),
  size: sizeBody,
  ontoSize: sizeBody,
  pairs: listOf(z.looseObject({ from: pointBody, onto: pointBody }), 1, 40),
});

const rgb = whole(0, 255);
const sample = z.looseObject({ at: pointBody, colour: z.tuple([rgb, rgb, rgb]) });

/** How a measurement was made, so that it can be looked at, gone on with and judged again. */
export const workingBody = z.looseObject({
  /** Traced: the patches. */
  patches: maybe(svgSelector),
  /** Dots: the seed the grid was jittered with, how many were laid, and one letter a dot: y, n, g (glare), - (not judged). */
  seed: maybe(whole(0)),
  dots: maybe(whole(1, 1000)),
  answers: maybe(pattern(/^[yng-]*$/, 1000)),
  /** Mask: what was tapped, and what the brush put right. */
  green: maybe(listOf(sample, 0, 20)),
  sound: maybe(listOf(sample, 0, 20)),
  brush: maybe(
    listOf(
      z.looseObject({ as: z.enum(['green', 'sound']), radius: fraction, path: listOf(pointBody, 1, 2000) }),
      0,
      500,
    ),
  ),
  /** Mask: its own share before the check dots, and their answers in mask and outside it, as for dots. */
  maskShare: maybe(fraction),
  /** Mask: share of the zone left out as glare or deep shade. */
  leftOut: maybe(fraction),
  inMask: maybe(pattern(/^[yng-]*$/, 1000)),
  outsideMask: maybe(pattern(/^[yng-]*$/, 1000)),
});

/** Coverage measured on one photo, beside what the eye said, never in its place. */
export const measureBody = z.looseObject({
  sculpture: thingName,
  photo: thingName,
  /** The zone or the sentinel square it speaks of. */
  about: thingName,
  round: maybe(thingName),
  /** Code of trade/kinds. */
  kind: text(80),
  date: day,
  /** The part of the photo that was measured. */
  selector: svgSelector,
  coverage: coverageBody,
  working: workingBody,
  note,
});

/** CIE 1976 L*a*b*. */
export const labBody = z.looseObject({
  L: number(0, 110),
  a: number(-200, 200),
  b: number(-200, 200),
});

/** What two readings must share to be compared. */
const colourConditions = {
  illuminant: z.enum(['D65', 'D50', 'C', 'A']),
  observer: z.enum(['2', '10']),
  geometry: z.enum(['45/0', 'd/8 included', 'd/8 excluded']),
  /** Diameter of the measured spot, mm. */
  aperture: maybe(positive(200)),
};

/** An instrument's colour reading. Never from a photo. */
export const readingBody = z.looseObject({
  sculpture: thingName,
  quantity: z.literal('colour'),
  zone: maybe(thingName),
  sentinel: maybe(thingName),
  date: day,
  /** One a placing of the instrument. */
  values: listOf(labBody, 1, 100),
  ...colourConditions,
  instrument: maybe(text(200)),
  /** When and how it was last set to its white. */
  calibration: maybe(text(300)),
  /** Where it was placed, so that it can be placed there again. */
  position: maybe(text(500)),
  surface: maybe(z.enum(wetness)),
  note,
});

/** A colour a work or zone is to keep, as it was agreed. */
export const agreedColourBody = z.looseObject({
  sculpture: thingName,
  zone: maybe(thingName),
  name: text(200),
  date: day,
  by: text(200),
  value: labBody,
  ...colourConditions,
  /** Where the physical panel is kept. */
  kept: maybe(text(300)),
  note,
});
