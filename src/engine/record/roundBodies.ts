import { maybe, note, text, whole } from './bounds';
import { coverageBody } from './coverageBody';
import { day, thingName } from './entry';
import { z } from './zod';

export const roundBody = z.looseObject({
  sculpture: thingName,
  type: z.enum(['annual', 'autumn', 'before treatment', 'after treatment', 'incident']),
  /** The day a person confirmed; what happened when is said by this, never by an entry's `at`. */
  date: day,
  wet: z.enum(['dry', 'damp', 'wet']),
  washed: z.enum(['before wash', 'after wash']),
  /** Earlier values are hidden until this one is made. */
  ownEye: z.boolean(),
  surveyor: z.string(),
  /** Set when the round is closed. */
  ended: maybe(day),
  /** Zones drawn to be asked again. */
  askAgain: maybe(z.array(thingName)),
  /** This round is one with another begun apart. */
  partOf: maybe(thingName),
  /** Seen and written on pencil cards on `date`, and entered from them on this day by that surveyor. */
  fromPaper: maybe(z.looseObject({ entered: day, surveyor: z.string() })),
  /** Said not to be one with these. */
  apartFrom: maybe(z.array(thingName)),
  note,
});

export const beading = z.enum(['beads', 'flattened', 'sheets', 'wets']);

export const visitBody = z.looseObject({
  sculpture: thingName,
  round: thingName,
  zone: thingName,
  zoneVersion: whole(1),
  state: z.enum(['found', 'nothing', 'carried', 'not looked']),
  /** Why not looked: code of trade/reasonsNotLooked. */
  reason: maybe(text(60)),
  /** The round a carried answer was taken from. */
  carriedFrom: maybe(thingName),
  beading: maybe(beading),
  photos: maybe(z.array(thingName)),
  /** Entered from a pencil card. */
  fromPaper: maybe(z.literal(true)),
  note,
});

export const severity = z.enum(['slight', 'moderate', 'severe']);
export const activity = z.enum(['active', 'unclear', 'stable']);

export const findingBody = z.looseObject({
  sculpture: thingName,
  round: thingName,
  zone: thingName,
  /** Code of trade/kinds; an unknown code is shown, not scored, and said. */
  kind: text(80),
  origin: z.enum(['dirt', 'stain', 'metal']),
  /** Kinds measured by area, and length or presence where a share was given. */
  coverage: maybe(coverageBody),
  /** Kinds measured by count. */
  count: maybe(z.enum(['one', 'two to five', 'more'])),
  severity,
  activity,
  /** Looked for, and no longer there. */
  cleared: maybe(z.literal(true)),
  /** Taken over from an earlier round, not judged again. */
  carriedFrom: maybe(thingName),
  /** After own eye first, against the earlier value. */
  against: maybe(z.enum(['same', 'changed', 'earlier was wrong'])),
  /** Where a stain comes from, as far as seen. */
  stainFrom: maybe(thingName),
  photos: maybe(z.array(thingName)),
  note,
});

export const reratingBody = z.looseObject({
  sculpture: thingName,
  round: thingName,
  zone: thingName,
  ratings: z.array(
    z.looseObject({
      kind: text(80),
      origin: z.enum(['dirt', 'stain', 'metal']),
      coverage: coverageBody,
      first: coverageBody,
    }),
  ),
});
