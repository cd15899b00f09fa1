import { coverageBody } from './coverageBody';
import { day, thingName } from './entry';
import { z } from './zod';

const text = (max: number) => z.string().max(max);
const note = text(4000).optional();
const fraction = z.number().min(0).max(1);

/** A place on an upright picture: x in fractions of its width from the left, y in fractions of its height from the top. */
export const pointBody = z.tuple([fraction, fraction]);

/** Pixels of the upright picture. */
const sizeBody = z.looseObject({ width: z.int().min(1), height: z.int().min(1) });

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
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  mime: text(60),
  bytes: z.int().min(1),
  width: z.int().min(1).optional(),
  height: z.int().min(1).optional(),
  /** When the camera says it was taken, if it says so. */
  taken: text(40).optional(),
  /** Exif orientation as it lies in the file, 1 to 8; widths and heights here are those of the upright picture. */
  orientation: z.int().min(1).max(8).optional(),
  /** Lens as the camera tells it: focal length in mm, and the same on a 36 x 24 mm frame. */
  focal: z.number().positive().max(5000).optional(),
  focal35: z.number().positive().max(5000).optional(),
  gpsBlanked: z.boolean().optional(),
  /** The person chose to leave the place in the file. */
  placeKept: z.literal(true).optional(),
  /** What was wrong with the file when it was taken: kept all the same. 'not shown': the browser then at work could not. */
  flaw: z.enum(['cut short', 'size untrue', 'not shown']).optional(),
  role: z.enum(photoRoles),
  station: thingName.optional(),
  sentinel: thingName.optional(),
  zone: thingName.optional(),
  round: thingName.optional(),
  light: z.enum(lights).optional(),
  wet: z.enum(wetness).optional(),
  washed: z.enum(['before wash', 'after wash']).optional(),
  note,
});

export const elevationBody = z.looseObject({
  sculpture: thingName,
  /** Which side: "west", "from the quay". */
  side: text(100),
  photo: thingName,
  order: z.number(),
  /** Two places on its photo and how far apart they are on the work, metres. */
  scale: z.looseObject({ a: pointBody, b: pointBody, metres: z.number().positive().max(1000) }).optional(),
  /** The station its photo was taken from, where it was: later photos of it can lie under the same outlines. */
  station: thingName.optional(),
  note,
});

/** Where one zone lies on one elevation. */
export const outlineBody = z.looseObject({
  sculpture: thingName,
  elevation: thingName,
  zone: thingName,
  target,
  /** Real surface over what the outline shows flat: 1 flat, 1.3 curved, 1.6 deep folds. */
  obliquity: z.number().min(1).max(3).optional(),
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
  bearing: z.number().min(0).max(360).optional(),
  /** Metres from the work, and of the lens above the ground. */
  distance: z.number().positive().max(1000).optional(),
  height: z.number().min(0).max(100).optional(),
  /** Focal length on a 36 x 24 mm frame, mm. */
  lens: z.number().positive().max(5000).optional(),
  format: z.enum(['portrait', 'landscape']).optional(),
  /** How the spot is found again: "brass stud, third slab from the steps". */
  mark: text(300).optional(),
  light: z.enum(['open shade', 'overcast', 'any']).optional(),
  wet: z.enum(['dry', 'wet']).optional(),
  /** Photo that shows where to stand. */
  standHere: thingName.optional(),
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
  pairs: z
    .array(z.looseObject({ from: pointBody, onto: pointBody }))
    .min(1)
    .max(40),
});

const rgb = z.int().min(0).max(255);
const sample = z.looseObject({ at: pointBody, colour: z.tuple([rgb, rgb, rgb]) });

/** How a measurement was made, so that it can be looked at, gone on with and judged again. */
export const workingBody = z.looseObject({
  /** Traced: the patches. */
  patches: svgSelector.optional(),
  /** Dots: the seed the grid was jittered with, how many were laid, and one letter a dot: y, n, g (glare), - (not judged). */
  seed: z.int().min(0).optional(),
  dots: z.int().min(1).max(1000).optional(),
  answers: z
    .string()
    .max(1000)
    .regex(/^[yng-]*$/)
    .optional(),
  /** Mask: what was tapped, and what the brush put right. */
  green: z.array(sample).max(20).optional(),
  sound: z.array(sample).max(20).optional(),
  brush: z
    .array(
      z.looseObject({ as: z.enum(['green', 'sound']), radius: fraction, path: z.array(pointBody).min(1).max(2000) }),
    )
    .max(500)
    .optional(),
  /** Mask: its own share before the check dots, and their answers in mask and outside it, as for dots. */
  maskShare: fraction.optional(),
  /** Mask: share of the zone left out as glare or deep shade. */
  leftOut: fraction.optional(),
  inMask: z
    .string()
    .max(1000)
    .regex(/^[yng-]*$/)
    .optional(),
  outsideMask: z
    .string()
    .max(1000)
    .regex(/^[yng-]*$/)
    .optional(),
});

/** Coverage measured on one photo, beside what the eye said, never in its place. */
export const measureBody = z.looseObject({
  sculpture: thingName,
  photo: thingName,
  /** The zone or the sentinel square it speaks of. */
  about: thingName,
  round: thingName.optional(),
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
  L: z.number().min(0).max(110),
  a: z.number().min(-200).max(200),
  b: z.number().min(-200).max(200),
});

/** What two readings must share to be compared. */
const colourConditions = {
  illuminant: z.enum(['D65', 'D50', 'C', 'A']),
  observer: z.enum(['2', '10']),
  geometry: z.enum(['45/0', 'd/8 included', 'd/8 excluded']),
  /** Diameter of the measured spot, mm. */
  aperture: z.number().positive().max(200).optional(),
};

/** An instrument's colour reading. Never from a photo. */
export const readingBody = z.looseObject({
  sculpture: thingName,
  quantity: z.literal('colour'),
  zone: thingName.optional(),
  sentinel: thingName.optional(),
  date: day,
  /** One a placing of the instrument. */
  values: z.array(labBody).min(1).max(100),
  ...colourConditions,
  instrument: text(200).optional(),
  /** When and how it was last set to its white. */
  calibration: text(300).optional(),
  /** Where it was placed, so that it can be placed there again. */
  position: text(500).optional(),
  surface: z.enum(wetness).optional(),
  note,
});

/** A colour a work or zone is to keep, as it was agreed. */
export const agreedColourBody = z.looseObject({
  sculpture: thingName,
  zone: thingName.optional(),
  name: text(200),
  date: day,
  by: text(200),
  value: labBody,
  ...colourConditions,
  /** Where the physical panel is kept. */
  kept: text(300).optional(),
  note,
});
